package org.bellowscribe.cli;

import java.nio.file.Path;
import java.util.List;
import org.bellowscribe.batch.Result;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.PlainText;
import org.bellowscribe.lefthand.LeftHandTally;
import org.bellowscribe.report.TuneSummary;
import org.bellowscribe.solver.Cost;

/** One line a tune, under it the order of play if there are repeats or jumps, then totals. */
final class MarkReport implements Report {

    private static final String LINE = "%-36s %8s %9s %5s %7s %6s  %s%n";
    private static final int TITLE_WIDTH = 36;
    private static final int ORDER_WIDTH = 80;

    private final Written written;
    private final boolean needsPins;
    private final boolean showsUnchanged;
    private boolean hasHead;

    /** What a run writes. */
    enum Written {
        /** It only answers questions. */
        NOTHING,
        /** Pages to look at, but no scores. */
        PAGES,
        /** Marked scores. */
        SCORES
    }

    /**
     * Creates a report.
     *
     * @param written what is written
     * @param needsPins false if the pins beside each score do not count
     * @param showsUnchanged false if tunes whose results stand already have no line
     */
    MarkReport(Written written, boolean needsPins, boolean showsUnchanged) {
        this.written = written;
        this.needsPins = needsPins;
        this.showsUnchanged = showsUnchanged;
    }

    @Override
    public boolean needsPins() {
        return needsPins;
    }

    @Override
    public void begin(Terminal terminal) {
        // The heading comes with the first line: a run that changes nothing has none.
    }

    private void head(Terminal terminal) {
        if (!hasHead) {
            terminal.out().printf(LINE, "tune", "measures", "reversals", "air", "start", "cost", "proof");
            hasHead = true;
        }
    }

    @Override
    public void each(Result result, Terminal terminal) {
        TuneSummary summary = result.summary();
        if (result.outcome() == Result.Outcome.UNCHANGED && !showsUnchanged) {
            return;
        }
        head(terminal);
        if (summary == null) {
            terminal.out().println(refused(result));
            return;
        }
        terminal.out().print(figures(summary));
        result.told().forEach(line -> terminal.out().println(line));
    }

    static String refused(Result result) {
        Diagnostic error = result.firstError();
        String code = error == null ? "" : " [" + error.code().id() + "]";
        String name = result.title().isEmpty() ? result.source().shown() : result.title();
        return "%-36s not marked%s".formatted(shorten(name), code);
    }

    static String figures(TuneSummary summary) {
        Cost cost = summary.cost();
        StringBuilder lines = new StringBuilder(LINE.formatted(
                shorten(summary.title()),
                summary.measures(),
                summary.reversals(),
                summary.airMarks(),
                summary.startPercent() + " %",
                cost.total(),
                cost.isProved() ? "least" : "least is " + cost.lowerBound() + " or more"));
        if (!summary.key().isEmpty()) {
            lines.append("  %s%n".formatted(summary.key()));
        }
        LeftHandTally leftHand = summary.leftHand();
        if (leftHand.asWanted() < leftHand.wanted()) {
            lines.append("%s%n".formatted(words(leftHand)));
        }
        if (!summary.playOrder().isEmpty()) {
            lines.append("  measures %s%n".formatted(cut(summary.playOrder())));
        }
        return lines.toString();
    }

    private static String words(LeftHandTally leftHand) {
        int twins = leftHand.onOtherButton();
        return "  left hand: %d of %d as wanted; stand-ins %d, silent %d%s"
                .formatted(
                        leftHand.asWanted(),
                        leftHand.wanted(),
                        leftHand.standIns(),
                        leftHand.silent(),
                        twins == 0 ? "" : "; on twin buttons %d".formatted(twins));
    }

    // A line that can be read at a glance; the record holds the whole order.
    private static String cut(String order) {
        if (order.length() <= ORDER_WIDTH) {
            return order;
        }
        return order.substring(0, order.lastIndexOf(", ", ORDER_WIDTH) + 2) + "...";
    }

    @Override
    public void end(List<Result> results, Refusals refusals, Terminal terminal) {
        if (written == Written.NOTHING) {
            terminal.out().println("\nNothing was written; --out DIR marks the score too.");
            return;
        }
        List<TuneSummary> marked = results.stream()
                .map(Result::summary)
                .filter(summary -> summary != null)
                .toList();
        int unchanged = (int) Report.count(results, Result.Outcome.UNCHANGED);
        terminal.out()
                .printf(
                        "%n%s marked, %s%d not marked; %s, %s; %d proved the least.%n",
                        counted(marked.size() - unchanged, "tune"),
                        unchanged == 0 ? "" : "%d unchanged, ".formatted(unchanged),
                        refusals.count(),
                        counted(marked.stream().mapToInt(TuneSummary::measures).sum(), "measure"),
                        counted(marked.stream().mapToInt(TuneSummary::airMarks).sum(), "air mark"),
                        marked.stream().filter(tune -> tune.cost().isProved()).count());
        refusals.lines("marked").forEach(terminal.out()::println);
        tellWhatNext(results, terminal);
    }

    private static String counted(int count, String thing) {
        return count == 1 ? "1 " + thing : "%d %ss".formatted(count, thing);
    }

    private void tellWhatNext(List<Result> results, Terminal terminal) {
        long movable = results.stream().filter(Result::isPlayableTransposed).count();
        if (movable > 0) {
            terminal.out()
                    .println("%d of the tunes not marked can be played with --transpose auto.".formatted(movable));
        }
        List<Path> scores = results.stream()
                .filter(result -> written == Written.SCORES
                        && result.done()
                        && !result.source().isPiped())
                .map(result -> result.source().target())
                .toList();
        if (scores.size() == 1) {
            terminal.out().println("Open the result in a notation program: " + scores.get(0));
        } else if (!scores.isEmpty()) {
            terminal.out()
                    .println("Open one of the %d results in a notation program, such as %s"
                            .formatted(scores.size(), scores.get(0)));
        }
    }

    private static String shorten(String title) {
        String line = PlainText.line(title.replaceAll("\\s+", " "));
        return line.length() <= TITLE_WIDTH ? line : line.substring(0, TITLE_WIDTH - 1) + "…";
    }
}
