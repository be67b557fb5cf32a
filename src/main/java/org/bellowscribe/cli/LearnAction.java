package org.bellowscribe.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bellowscribe.batch.LearnJob;
import org.bellowscribe.batch.Source;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.marking.MarkSettings;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.manner.MannerLibrary;

/** Learns a manner of playing from marked scores. */
final class LearnAction {

    /** The word that asks for it. */
    static final String NAME = "learn";

    private LearnAction() {}

    /**
     * Learns.
     *
     * @param inputs the scores and folders of scores
     */
    static ExitCode run(List<String> inputs, CommandWords words, Terminal terminal) throws UsageException {
        Path out = words.get(LearnOptions.OUT);
        if (inputs.isEmpty()) {
            throw new UsageException("learn needs scores that somebody has marked.");
        }
        if (out == null) {
            throw new UsageException("learn needs --out.%n  Maybe add --out my-manner.xml.".formatted());
        }
        if (Files.isDirectory(out)) {
            throw new UsageException("--out takes a file here, and %s is a folder.".formatted(out));
        }
        Manner base = words.get(LearnOptions.BASED_ON, MannerLibrary.of(MannerLibrary.DEFAULT_ID));
        Sources sources = Sources.find(FileOptions.wanted(words, inputs, terminal), null);
        refuseInput(out, sources);
        SteeringOptions.requireOneTune(words, sources.found().size());
        MarkSettings settings = MarkOptions.settings(words, base);
        LearnJob job = new LearnJob(settings, SteeringOptions.pins(words));
        LearnReport report = new LearnReport(job, base, out);
        ExitCode code = new BatchRun(words, sources, terminal).run(job, report);
        return code == ExitCode.ALL_DONE && !report.isWritten() ? ExitCode.SOME_FAILED : code;
    }

    private static void refuseInput(Path out, Sources sources) throws UsageException {
        for (Source source : sources.found()) {
            if (real(source.file()).equals(real(out))) {
                throw new UsageException("The result would take the place of the input %s.".formatted(source.shown()));
            }
        }
    }

    private static Path real(Path path) {
        return path.toAbsolutePath().normalize();
    }
}
