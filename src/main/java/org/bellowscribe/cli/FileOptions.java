package org.bellowscribe.cli;

import java.nio.file.Path;
import java.util.List;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.FilePath;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.WholeNumber;

/** What all commands on files share: which files, where results go, how many threads. */
final class FileOptions {

    static final String PIPE = "-";
    static final CommandOption<Path> OUT = new CommandOption<>(
            "out", "DIR", "Folder for the results, under the names of their files.", new FilePath());
    static final CommandOption<Boolean> IN_PLACE =
            CommandOption.flag("in-place", "Put each result in place of its file, instead of --out.");
    static final CommandOption<Integer> THREADS = new CommandOption<>(
            "threads",
            "N",
            "How many files to work on at a time; as many as there are processors if not given.",
            new WholeNumber(1, 64));
    static final CommandOption<Boolean> QUIET = CommandOption.flag("quiet", "Print errors and warnings, but no notes.");

    static final CommandOption<Boolean> VERBOSE = CommandOption.flag(
            "verbose", "Print all notes; of many files those about what was assumed are only counted if not given.");

    /** Options of a command that writes no score. */
    static final List<CommandOption<?>> READING = List.of(THREADS, QUIET, VERBOSE);

    /** Options of a command that writes scores. */
    static final List<CommandOption<?>> WRITING = List.of(OUT, IN_PLACE, THREADS, QUIET, VERBOSE);

    private FileOptions() {}

    /** Tells whether the score comes from standard input. */
    static boolean isPiped(CommandWords words) {
        return words.rest().contains(PIPE);
    }

    /** Returns the files of a line that are only read. */
    static Sources toRead(CommandWords words, Terminal terminal) throws UsageException {
        requireInput(words);
        return isPiped(words) ? Sources.piped(terminal.in(), terminal.out()) : Sources.find(words.rest(), null, false);
    }

    /**
     * Returns the files of a line.
     *
     * @param beside how the names of the files end that are written beside each result
     * @param alternatives how many other ways to play a tune may be written, or {@link Sources#ALL_THERE_ARE}
     */
    static Sources toWrite(CommandWords words, List<String> beside, int alternatives, Terminal terminal)
            throws UsageException {
        requireInput(words);
        if (isPiped(words)) {
            refuseWithPipe(words, OUT, IN_PLACE);
            return Sources.piped(terminal.in(), terminal.out());
        }
        boolean inPlace = words.has(IN_PLACE);
        if (inPlace && words.has(OUT)) {
            throw new UsageException("--out and --in-place exclude each other.");
        }
        if (!inPlace && !words.has(OUT)) {
            throw new UsageException("Where should the results go?%n  Maybe add --out and a folder.".formatted());
        }
        return Sources.find(words.rest(), words.get(OUT), beside, alternatives);
    }

    /** Refuses options that need files if the score comes from standard input. */
    static void refuseWithPipe(CommandWords words, CommandOption<?>... needFiles) throws UsageException {
        for (CommandOption<?> option : needFiles) {
            if (isPiped(words) && words.has(option)) {
                throw new UsageException("--%s needs files: the result of the input - goes to standard output.%n"
                                .formatted(option.name())
                        + "  Maybe name the file instead of -, or leave out --%s.".formatted(option.name()));
            }
        }
    }

    /** Refuses a line without files, or with a pipe beside them. */
    static void requireInput(CommandWords words) throws UsageException {
        if (words.has(QUIET) && words.has(VERBOSE)) {
            throw new UsageException("--quiet and --verbose exclude each other.");
        }
        if (words.rest().isEmpty()) {
            throw new UsageException("No file or folder is named.");
        }
        if (isPiped(words) && words.rest().size() > 1) {
            throw new UsageException("The input - stands alone, without other inputs.");
        }
    }
}
