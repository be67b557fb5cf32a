package org.bellowscribe.compare;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bellowscribe.page.PageFrame;
import org.bellowscribe.page.SharedFiles;
import org.jspecify.annotations.Nullable;

/** The page on which two ways are compared, and the two files that it needs beside it. */
public final class ComparePage {

    /** What the page is called. */
    public static final String NAME = "compare.html";

    /** What the script with the scores is called. */
    public static final String SCORES = "compare-scores.js";

    private static final String TITLE = "Two ways to play";
    private static final String SCRIPT = "shared/compare.js";
    private static final String STYLE = "shared/compare.css";

    private ComparePage() {}

    /**
     * Returns the page.
     *
     * @param tunes the tunes in the order in which to show them
     * @param lots by which order and letters were drawn, so that the page does not tell what the ways are called; null if it
     *     does
     */
    public static String of(List<ComparedTune> tunes, @Nullable Lots lots) {
        Elements sections = new Elements();
        TuneSection section = new TuneSection(sections, lots == null);
        for (int i = 0; i < tunes.size(); i++) {
            section.write(i + 1, tunes.get(i));
        }
        // Choices are kept for this very page, not for another of the same name.
        String run = Integer.toHexString(sections.toString().hashCode());
        Elements html = new Elements();
        html.begin("body", "class", "compare", "data-seed", lots == null ? "" : lots.seed(), "data-run", run);
        html.begin("header").leaf("h1", TITLE).end().begin("main");
        html.begin("section");
        introduce(html, lots != null);
        contents(html, tunes);
        html.begin("p").begin("label").empty("input", "type", "checkbox", "id", "only-different");
        html.words(" Note by note: only measures that differ").end().end();
        html.end();
        html.begin("form", "id", "choices", "autocomplete", "off").add(sections).end();
        save(html);
        html.end().end();
        return PageFrame.around(TITLE, "", head(), html.toString());
    }

    private static String head() {
        return "<link rel=\"stylesheet\" href=\"%s\">\n".formatted(STYLE)
                + PageFrame.script(SCORES)
                + PageFrame.script(SharedFiles.SCRIPT)
                + PageFrame.script(SCRIPT)
                + PageFrame.script(SharedFiles.ENGRAVER);
    }

    /** Returns the script with all scores, which hands them to that of the page. */
    public static String scores(List<ComparedTune> tunes) {
        List<String> scores = new ArrayList<>();
        for (ComparedTune tune : tunes) {
            scores.add(score(tune.file(), "A", tune.a()));
            scores.add(score(tune.file(), "B", tune.b()));
        }
        return "window.bellowscribeScores={" + String.join(",\n", scores) + "};\n";
    }

    private static String score(String file, String letter, ComparedTune.Side side) {
        return "\"%s\":\"%s\""
                .formatted(
                        ComparedTune.before(file, letter), Base64.getEncoder().encodeToString(side.engraved()));
    }

    private static void introduce(Elements html, boolean blind) {
        html.leaf(
                "p",
                "Every tune is played in two ways, A and B. Play both, or read them, and choose; a remark says why. Nothing"
                        + " leaves this computer: at the end you save a file.");
        if (blind) {
            html.leaf("p", "What A and B are is drawn anew for each tune, and not told here.");
        }
        html.leaf(
                "p",
                "If a way of playing hurts, stop, choose the other or neither, and ask a teacher or a health professional."
                        + " Never force the bellows.");
        html.begin("noscript")
                .leaf("p", "Without JavaScript the page shows everything but saves no choices.")
                .end();
    }

    private static void contents(Elements html, List<ComparedTune> tunes) {
        html.begin("nav", "aria-label", "Tunes").begin("ol");
        for (int i = 0; i < tunes.size(); i++) {
            html.begin("li")
                    .leaf("a", tunes.get(i).title(), "href", "#tune-" + (i + 1))
                    .end();
        }
        html.end().end();
    }

    private static void save(Elements html) {
        html.begin("div", "id", "save", "hidden", "");
        html.begin("label").words("Your name or a sign, if you like ");
        html.empty("input", "type", "text", "id", "judge", "maxlength", "200").end();
        html.leaf("button", "Save choices as CSV", "type", "button", "id", "save-button");
        html.leaf("p", "", "id", "state", "role", "status");
        html.end();
    }

    /** Returns the bytes of each file that the page shares with others, by its place below the folder of the page. */
    public static Map<String, byte[]> shared() {
        Map<String, byte[]> files = new LinkedHashMap<>(SharedFiles.all());
        files.put(SCRIPT, file("compare.js"));
        files.put(STYLE, file("compare.css"));
        return files;
    }

    private static byte[] file(String name) {
        try (InputStream stream = Objects.requireNonNull(ComparePage.class.getResourceAsStream(name), name)) {
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
