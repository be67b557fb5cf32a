package org.bellowscribe.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.drawing.ButtonUse;
import org.bellowscribe.report.TuneSummary;
import org.bellowscribe.score.Tune;

/** Writes the page of a tune. */
public final class TunePages {

    /** Stands in every page; what has it not is none of ours. */
    public static final String OURS = PageFrame.OURS;

    private TunePages() {}

    /** Returns what the page hands to the shared script; a script itself, in a file beside the page. */
    public static String script(TunePage page) {
        return TuneScript.of(page);
    }

    /**
     * Returns the page.
     *
     * @param root the way from its folder to that of the index, such as {@code ../}
     * @param script name of the file with its script, in its own folder
     */
    public static String html(TunePage page, String root, String script) {
        DecidedTune tune = page.tune();
        String head = PageFrame.script(Html.link(script))
                + PageFrame.script(root + SharedFiles.SCRIPT)
                + PageFrame.script(root + SharedFiles.ENGRAVER);
        StringBuilder body = new StringBuilder(
                "<body class=\"tune\">\n<a class=\"skip\" href=\"#words\">Skip to the marks in words</a>\n");
        body.append("<header><nav><a href=\"%sindex.html\">All tunes</a></nav>\n".formatted(root));
        body.append("<h1 dir=\"auto\">%s</h1>\n".formatted(Html.text(tune.tune().title())));
        body.append("<p class=\"facts\">%s</p></header>\n<main>\n".formatted(facts(tune)));
        body.append("""
                <section id="sheet" aria-labelledby="h-sheet" hidden><h2 id="h-sheet">Score</h2><p class="key">Choose a note in the score, the curve, the buttons or the words; Play begins there.</p><div id="score" role="group" tabindex="0" aria-label="Score; left and right arrow choose a note"><p>The score is being engraved.</p></div></section>
                <div class="side">
                <section id="now" aria-labelledby="h-now" hidden><h2 id="h-now">This note</h2><p id="where"></p><p id="what"></p><div id="why"></div></section>
                """);
        KeySection keys = new KeySection(tune.instrument(), ButtonUse.of(tune));
        body.append(section("buttons", "Buttons", "<p>%s</p>\n%s".formatted(keys.summary(), keys.html())));
        body.append("</div>\n<div class=\"rest\">\n");
        sections(page).forEach(body::append);
        body.append("</div>\n");
        body.append("</main>\n").append(PlayerBar.HTML).append(footer()).append("</body>\n");
        return PageFrame.around(
                tune.tune().title() + ": marks for " + tune.instrument().name(), root, head, body.toString());
    }

    private static List<String> sections(TunePage page) {
        DecidedTune tune = page.tune();
        List<String> sections = new ArrayList<>();
        add(sections, "bellows", "Bellows", new BellowsSection(tune).html());
        add(sections, "words", "Every mark in words", new StepSection(tune, page.style()).html());
        add(sections, "reasons", "Why not otherwise", new ExplainSection(tune.tune()).html(page.explained()));
        add(sections, "practise", "What to practise", new PractiseSection(page).html());
        add(sections, "new", "New in this tune", list(page.news()));
        add(sections, "notable", "Worth a look", new AboutSection(tune).html());
        add(sections, "costs", "What it costs", CostSection.of(tune.solution().cost()));
        add(
                sections,
                "remarks",
                "Remarks",
                RemarkSection.of(page.remarks(), tune.tune().measures().size()));
        return sections;
    }

    private static String list(List<String> lines) {
        return lines.isEmpty()
                ? ""
                : lines.stream().map(Html::text).collect(Collectors.joining("</li>\n<li>", "<ul><li>", "</li></ul>\n"));
    }

    private static void add(List<String> sections, String id, String title, String content) {
        if (!content.isEmpty()) {
            sections.add(section(id, title, content));
        }
    }

    private static String section(String id, String title, String content) {
        return "<section id=\"%1$s\" aria-labelledby=\"h-%1$s\"><h2 id=\"h-%1$s\">%2$s</h2>\n%3$s</section>\n"
                .formatted(id, title, content);
    }

    private static String facts(DecidedTune decided) {
        Tune tune = decided.tune();
        TuneSummary summary = TuneSummary.of(decided);
        List<String> facts = new ArrayList<>();
        facts.add(decided.instrument().name());
        facts.add("played " + decided.manner().replace('-', ' '));
        facts.add("%d quarters a minute".formatted(Math.round(tune.tempo().quartersPerMinute())));
        facts.add(counted(summary.reversals(), "reversal"));
        facts.add(counted(summary.airMarks(), "air mark"));
        facts.add("%d %% open at the start".formatted(summary.startPercent()));
        facts.add(summary.playOrder().isEmpty() ? "" : "measures " + summary.playOrder());
        facts.add(summary.key());
        return String.join(
                " ",
                facts.stream()
                        .filter(fact -> !fact.isEmpty())
                        .map(fact -> "<span>" + Html.text(fact) + "</span>")
                        .toList());
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static String footer() {
        return "<footer><p>Marks are a proposal. Never force the bellows open or closed without a note or the air button. If"
                + " playing hurts, stop and ask a teacher or a health professional.</p></footer>\n";
    }
}
