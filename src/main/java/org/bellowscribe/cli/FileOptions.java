package org.bellowscribe.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.bellowscribe.batch.PathPattern;
import org.bellowscribe.batch.Selection;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.batch.Wanted;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.OptionGroup;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.WholeNumber;

/** What all commands on files share: which files, where results go, how many threads. */
final class FileOptions {

    static final String PIPE = "-";
    static final CommandOption<Path> OUT = new CommandOption<>(
                    "out", "DIR", "Folder for the results, under the names of their files.", new ResultFolder())
            .in(OptionGroup.PLACE);
    static final CommandOption<Boolean> IN_PLACE = CommandOption.flag(
                    "in-place", "Put each result in place of its file, instead of --out.")
            .in(OptionGroup.PLACE);
    static final CommandOption<Integer> THREADS = new CommandOption<>(
                    "threads",
                    "N",
                    "How many files to work on at a time; as many as there are processors if not given.",
                    new WholeNumber(1, 64))
            .in(OptionGroup.RUN);
    static final CommandOption<List<PathPattern>> INCLUDE = new CommandOption<>(
                    "include",
                    "LIST",
                    "Of folders and patterns only scores like one of these patterns, with commas between: of names (a*), or with"
                            + " a slash of paths below the folder (waltzes/**).",
                    new NamePatterns())
            .in(OptionGroup.MARKED);
    static final CommandOption<List<PathPattern>> EXCLUDE = new CommandOption<>(
                    "exclude",
                    "LIST",
                    "Of folders and patterns no scores like one of these patterns, and none in folders of such names.",
                    new NamePatterns())
            .in(OptionGroup.MARKED);
    static final CommandOption<Selection.Share> SHARD = new CommandOption<>(
                    "shard",
                    "K/N",
                    "Only the Kth of N shares of the scores, by a hash of where their results go below --out; the same whatever"
                            + " else is done.",
                    new ShareReader())
            .in(OptionGroup.MARKED);
    static final CommandOption<Boolean> JSON = CommandOption.flag(
                    "json", "Print one object a line about each score, then one about the run, in place of text.")
            .in(OptionGroup.RUN);
    static final CommandOption<Boolean> QUIET = CommandOption.flag(
                    "quiet", "Print errors and warnings, but no notes, lines about tunes and totals.")
            .in(OptionGroup.RUN);

    static final CommandOption<Boolean> VERBOSE = CommandOption.flag(
                    "verbose",
                    "Print all notes; of many files those about what was assumed are only counted if not given.")
            .in(OptionGroup.RUN);

    /** Options of a command that writes no score. */
    static final List<CommandOption<?>> READING = List.of(INCLUDE, EXCLUDE, THREADS, QUIET, VERBOSE);

    /** Options of a command that writes scores. */
    static final List<CommandOption<?>> WRITING =
            List.of(OUT, IN_PLACE, INCLUDE, EXCLUDE, SHARD, THREADS, JSON, QUIET, VERBOSE);

    private FileOptions() {}

    /** Tells whether the score comes from standard input. */
    static boolean isPiped(CommandWords words) {
        return words.rest().contains(PIPE);
    }

    /** Returns the files of a line that are only read. */
    static Sources toRead(CommandWords words, Terminal terminal) throws UsageException {
        requireInput(words);
        return isPiped(words)
                ? Sources.piped(terminal.in(), terminal.out())
                : Sources.find(wanted(words, words.rest(), terminal), null);
    }

    /**
     * Returns the files of a line about marking that writes nothing.
     *
     * @param beside asked about each file
     */
    static Sources toLookAt(CommandWords words, Function<Path, Wanted.Beside> beside, Terminal terminal)
            throws UsageException {
        requireInput(words);
        return Sources.find(wanted(words, words.rest(), terminal, beside), null);
    }

    /** Returns what a line that only reads asks for. */
    static Wanted wanted(CommandWords words, List<String> inputs, Terminal terminal) {
        return wanted(words, inputs, terminal, file -> Wanted.Beside.NOTHING);
    }

    /** Returns what a line asks for, with what may be written beside the result of a file. */
    static Wanted wanted(
            CommandWords words, List<String> inputs, Terminal terminal, Function<Path, Wanted.Beside> beside) {
        Selection selection = new Selection(
                words.get(INCLUDE, List.of()), words.get(EXCLUDE, List.of()), words.get(SHARD, Selection.Share.ALL));
        return new Wanted(inputs, selection, terminal.in(), beside);
    }

    /** Requires a place for results. */
    static void requirePlace(CommandWords words) throws UsageException {
        boolean inPlace = words.has(IN_PLACE);
        if (inPlace && words.has(OUT)) {
            throw new UsageException("--out and --in-place exclude each other.");
        }
        if (!inPlace && !words.has(OUT)) {
            throw new UsageException("Where should the results go?%n  Maybe add --out and a folder.".formatted());
        }
    }

    /**
     * Returns the files of a line to mark.
     *
     * @param beside what may be written beside the result of a file
     */
    static Sources toMark(CommandWords words, Function<Path, Wanted.Beside> beside, Terminal terminal)
            throws UsageException {
        requireInput(words);
        if (isPiped(words)) {
            return piped(words, terminal);
        }
        requirePlace(words);
        return Sources.find(wanted(words, words.rest(), terminal, beside), words.get(OUT));
    }

    /** Returns the files of a line to take marks out of. */
    static Sources toStrip(CommandWords words, Terminal terminal) throws UsageException {
        requireInput(words);
        if (isPiped(words)) {
            return piped(words, terminal);
        }
        requirePlace(words);
        return Sources.findAll(wanted(words, words.rest(), terminal), words.get(OUT));
    }

    private static Sources piped(CommandWords words, Terminal terminal) throws UsageException {
        refuseWithPipe(words, OUT, IN_PLACE);
        return Sources.piped(terminal.in(), terminal.out());
    }

    /** Returns where a command speaks that writes scores: beside a score on standard output, and little if quiet. */
    static Terminal speaking(CommandWords words, Terminal given) {
        Terminal terminal = isPiped(words) ? given.withoutOut() : given;
        return words.has(QUIET) && !words.has(JSON) ? terminal.quiet() : terminal;
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

    /** Refuses a line that asks for more and for less to be told. */
    static void requireOneWayToTell(CommandWords words) throws UsageException {
        if (words.has(QUIET) && words.has(VERBOSE)) {
            throw new UsageException("--quiet and --verbose exclude each other.");
        }
        if (words.has(JSON) && words.has(VERBOSE)) {
            throw new UsageException("--json holds all notes: --verbose adds none.%n  Maybe leave it out.".formatted());
        }
    }

    /** Refuses a line without files, or with a pipe beside them. */
    static void requireInput(CommandWords words) throws UsageException {
        requireOneWayToTell(words);
        if (words.rest().isEmpty()) {
            throw new UsageException("No file or folder is named.");
        }
        if (isPiped(words) && words.rest().size() > 1) {
            throw new UsageException("The input - stands alone, without other inputs.");
        }
    }
}
