package org.bellowscribe.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.batch.AtomicFile;
import org.bellowscribe.batch.LearnJob;
import org.bellowscribe.batch.Result;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.learning.Learned;
import org.bellowscribe.learning.Learner;
import org.bellowscribe.learning.TaughtTune;
import org.bellowscribe.report.LearnedText;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.manner.MannerWriter;

/** Learns when all scores are read, says what was learned, and writes the manner. */
final class LearnReport implements Report {

    private static final String CAUTION =
            "Points learned from marks are not advice for a hand that hurts: stop, and ask a teacher or a health professional.";

    private final LearnJob job;
    private final Manner base;
    private final Path out;
    private boolean written;

    /**
     * Creates a report.
     *
     * @param base the manner to start from
     * @param out the file to write
     */
    LearnReport(LearnJob job, Manner base, Path out) {
        this.job = job;
        this.base = base;
        this.out = out;
    }

    /** Returns true if the file was written. */
    boolean isWritten() {
        return written;
    }

    @Override
    public boolean needsPins() {
        return true;
    }

    @Override
    public void begin(Terminal terminal) {
        // What is read is told together, at the end.
    }

    @Override
    public void each(Result result, Terminal terminal) {
        // What is read is told together, at the end.
    }

    @Override
    public void end(List<Result> results, Refusals refusals, Terminal terminal) {
        List<TaughtTune> tunes = job.taught(results);
        if (tunes.isEmpty()) {
            terminal.err().println("Nothing to learn from: no file with marks could be read.");
            return;
        }
        Learned learned = Learner.learn(tunes, base);
        LearnedText.lines(learned).forEach(terminal.out()::println);
        try {
            AtomicFile.write(out, text(learned, tunes.size()).getBytes(StandardCharsets.UTF_8));
            written = true;
            terminal.out().println(out + " written. Use it: mark ... --manner " + out);
        } catch (DiagnosedException e) {
            e.diagnostics().forEach(remark -> terminal.err().println(remark.print(out.toString())));
        }
    }

    private String text(Learned learned, int tunes) {
        Manner found = learned.manner();
        String name = String.valueOf(out.getFileName()).replaceFirst("\\.[^.]*$", "");
        List<String> remarks = new ArrayList<>(found.remarks());
        if (!remarks.contains(CAUTION)) {
            remarks.add(CAUTION);
        }
        String summary = "Learned from %s, starting from %s."
                .formatted(tunes == 1 ? "one marked tune" : tunes + " marked tunes", base.id());
        return MannerWriter.write(
                new Manner(MannerWriter.id(name), summary, remarks, found.byRule(), found.patterns()), base);
    }
}
