package org.bellowscribe.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.bellowscribe.batch.CompareJob;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.batch.Wanted;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.WholeNumber;
import org.bellowscribe.compare.Lots;
import org.bellowscribe.marking.Way;

/** Lays two ways to play the same tunes side by side. */
final class CompareCommand implements Command {

    /** A page of more would be slow to open, and nobody judges more in one go. */
    static final int MOST = 300;

    private static final int LARGEST_SEED = 999_999;

    private static final CommandOption<List<WayName>> BETWEEN = new CommandOption<>(
            "between",
            "WAY,WAY",
            "The two ways: a manner (id or file); other-way, the cheapest of the clearly different ones; by-hand, the marks"
                    + " of the sheet.",
            new WayNames());
    private static final CommandOption<Integer> BLIND = new CommandOption<>(
            "blind",
            "SEED",
            "Do not tell which way is which: draw it, and the order of the tunes, by this number; key.csv tells.",
            new WholeNumber(0, LARGEST_SEED));

    @Override
    public String name() {
        return "compare";
    }

    @Override
    public String summary() {
        return "Lays two ways to play the same tunes side by side on a page that takes choices and remarks.";
    }

    @Override
    public String usage() {
        return "INPUT... --between WAY,WAY --out DIR";
    }

    @Override
    public List<CommandOption<?>> options() {
        List<CommandOption<?>> options = new ArrayList<>(List.of(BETWEEN, BLIND, MarkOptions.MANNER));
        options.addAll(MarkOptions.HOW_MARKED);
        options.addAll(LineOptions.ALL);
        options.add(FileOptions.OUT);
        options.addAll(FileOptions.READING);
        return options;
    }

    @Override
    public ExitCode run(CommandWords words, Terminal terminal) throws UsageException {
        List<Way> ways = ways(words);
        FileOptions.requireInput(words);
        if (FileOptions.isPiped(words)) {
            throw new UsageException("compare needs files: it writes a page and two scores for each.%n".formatted()
                    + "  Maybe name the file instead of -.");
        }
        Path out = words.get(FileOptions.OUT);
        if (out == null) {
            throw new UsageException("Where should the page go?%n  Maybe add --out and a folder.".formatted());
        }
        Sources sources =
                Sources.find(FileOptions.wanted(words, words.rest(), terminal, file -> Wanted.Beside.NOTHING), out);
        if (sources.found().size() > MOST) {
            throw new UsageException("These are %d tunes, and a page takes %d.%n  Maybe compare them in several pages."
                    .formatted(sources.found().size(), MOST));
        }
        Integer seed = words.get(BLIND);
        Lots lots = seed == null ? null : new Lots(seed);
        CompareJob job = new CompareJob(ways, out, lots);
        CompareReport report = new CompareReport(job, out, lots);
        ExitCode code = new BatchRun(words, sources, terminal).run(job, report);
        return code == ExitCode.ALL_DONE && !report.isWritten() ? ExitCode.SOME_FAILED : code;
    }

    private static List<Way> ways(CommandWords words) throws UsageException {
        if (!words.has(BETWEEN)) {
            throw new UsageException("Which two ways are to be compared?%n".formatted()
                    + "  Maybe add --between along-the-row,across-the-rows.");
        }
        List<Way> ways = new ArrayList<>();
        for (WayName name : Objects.requireNonNull(words.get(BETWEEN))) {
            ways.add(new Way(
                    name.name(),
                    name.manner() == null ? MarkOptions.settings(words) : MarkOptions.settings(words, name.manner()),
                    name.kind()));
        }
        return ways;
    }
}
