package org.bellowscribe.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.FilePath;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.diagnostic.NearestNames;

/** Begins and checks book files. */
final class BookCommand implements Command {

    static final CommandOption<Path> OUT = new CommandOption<>(
            "out",
            "FILE",
            "With new: write into this file, which must not be there yet, instead of the terminal.",
            new FilePath());

    private static final String NEW = "new";
    private static final String CHECK = "check";

    @Override
    public String name() {
        return "book";
    }

    @Override
    public String summary() {
        return "new proposes a book file for a folder of scores: titles, keys, and the instrument that plays most of it."
                + " check says what is wrong in a book file. The command mark makes the editions of a book file.";
    }

    @Override
    public String usage() {
        return "new FOLDER [--out FILE] | check FILE";
    }

    @Override
    public List<CommandOption<?>> options() {
        List<CommandOption<?>> options = new ArrayList<>(List.of(ProposalRun.INSTRUMENT, OUT, BookCheckRun.JSON));
        options.addAll(FileOptions.READING);
        return options;
    }

    @Override
    public Map<String, List<String>> firstWords() {
        Map<String, List<String>> words = new LinkedHashMap<>();
        words.put(NEW, List.of());
        words.put(CHECK, List.of());
        return words;
    }

    @Override
    public ExitCode run(CommandWords words, Terminal terminal) throws UsageException {
        List<String> rest = words.rest();
        String asked = rest.isEmpty() ? "" : rest.get(0);
        if (!asked.equals(NEW) && !asked.equals(CHECK)) {
            List<String> near = NearestNames.of(asked, List.of(NEW, CHECK));
            throw new UsageException("book does not know %s.%n  Maybe %s is meant."
                    .formatted(
                            asked.isEmpty() ? "what to do" : asked,
                            String.join(" or ", near.isEmpty() ? List.of(NEW, CHECK) : near)));
        }
        if (rest.size() != 2) {
            throw new UsageException("%s takes one %s, but %d are given."
                    .formatted(asked, asked.equals(NEW) ? "folder of scores" : "book file", rest.size() - 1));
        }
        FileOptions.requireOneWayToTell(words);
        return asked.equals(NEW) ? propose(rest.get(1), words, terminal) : check(rest.get(1), words, terminal);
    }

    private static void refuse(CommandWords words, String goesWith, String given, CommandOption<?>... options)
            throws UsageException {
        for (CommandOption<?> option : options) {
            if (words.has(option)) {
                throw new UsageException("--%s goes with %s, not with %s.".formatted(option.name(), goesWith, given));
            }
        }
    }

    private static ExitCode propose(String folder, CommandWords words, Terminal terminal) throws UsageException {
        refuse(words, CHECK, NEW, BookCheckRun.JSON);
        if (!Files.isDirectory(FilePath.of(folder))) {
            throw new UsageException("There is no folder %s.".formatted(folder));
        }
        Path out = words.get(OUT);
        if (out != null && Files.exists(out)) {
            throw new UsageException(
                    "%s is there already, and a proposal never takes the place of what you wrote.%n  Maybe name another file."
                            .formatted(out));
        }
        return new ProposalRun(FilePath.of(folder), out, words, terminal).run();
    }

    private static ExitCode check(String file, CommandWords words, Terminal terminal) throws UsageException {
        refuse(words, NEW, CHECK, ProposalRun.INSTRUMENT, OUT);
        return new BookCheckRun(file, words, terminal).run();
    }
}
