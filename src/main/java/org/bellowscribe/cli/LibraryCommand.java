package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.definition.Library;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.diagnostic.Severity;

/**
 * A command about a library: alone or with {@code list} it lists it, {@code show} shows one thing of it or of a file, and
 * {@code check} says what is wrong with a file.
 *
 * @param <T> what the library holds
 */
abstract class LibraryCommand<T> implements Command {

    private static final String LIST = "list";
    private static final String CHECK = "check";

    private final Library<T> library;

    LibraryCommand(Library<T> library) {
        this.library = library;
    }

    /** What is done with one name; an exit code, because a file can be wrong. */
    @FunctionalInterface
    interface Action {
        ExitCode run(String name, CommandWords words, Terminal terminal) throws DiagnosedException, UsageException;
    }

    /** Returns the library as text. */
    abstract String list();

    /** Returns one thing as text. */
    abstract String show(T shown);

    /** Returns how a thing is called in a sentence. */
    abstract String title(T shown);

    @Override
    public final String name() {
        return library.thing() + "s";
    }

    @Override
    public String usage() {
        return "[list | show ID|FILE | check FILE]";
    }

    @Override
    public List<CommandOption<?>> options() {
        return List.of();
    }

    /** Returns what can be done with a name, by the word that asks for it. */
    Map<String, Action> actions() {
        Map<String, Action> actions = new LinkedHashMap<>();
        actions.put("show", this::showOne);
        actions.put(CHECK, (name, words, terminal) -> tellFaults(name, faults(name), terminal));
        return actions;
    }

    @Override
    public Map<String, List<String>> firstWords() {
        Map<String, List<String>> words = new LinkedHashMap<>();
        words.put(LIST, List.of());
        actions().keySet().forEach(action -> words.put(action, action.equals(CHECK) ? List.of() : library.ids()));
        return words;
    }

    @Override
    public ExitCode run(CommandWords words, Terminal terminal) throws UsageException {
        List<String> rest = words.rest();
        String asked = rest.isEmpty() ? LIST : rest.get(0);
        Action action = actions().get(asked);
        if (action == null && !asked.equals(LIST)) {
            throw unknown(asked);
        }
        int names = Math.max(0, rest.size() - 1);
        if (names != (action == null ? 0 : 1)) {
            throw new UsageException("%s takes %s, but %d are given."
                    .formatted(asked, action == null ? "nothing more" : "one " + taken(asked), names));
        }
        if (action == null) {
            terminal.out().print(list());
            return ExitCode.ALL_DONE;
        }
        try {
            return action.run(rest.get(1), words, terminal);
        } catch (DiagnosedException e) {
            print(e.diagnostics(), rest.get(1), terminal);
            boolean unknown = e.diagnostics().get(0).code() == DiagnosticCode.UNKNOWN_NAME;
            return unknown ? ExitCode.WRONG_USE : ExitCode.SOME_FAILED;
        }
    }

    private String taken(String action) {
        return action.equals(CHECK) ? "file" : library.thing();
    }

    private UsageException unknown(String word) {
        List<String> known = new ArrayList<>(List.of(LIST));
        known.addAll(actions().keySet());
        List<String> near = NearestNames.of(word, known);
        return new UsageException("%s does not know %s.%n  Maybe %s is meant."
                .formatted(name(), word, String.join(" or ", near.isEmpty() ? known : near)));
    }

    /** Shows one thing on the terminal. */
    ExitCode showOne(String name, CommandWords words, Terminal terminal) throws DiagnosedException, UsageException {
        terminal.out().print(show(library.find(name)));
        return ExitCode.ALL_DONE;
    }

    /**
     * Returns all that is wrong with a file.
     *
     * @throws DiagnosedException if it is neither an id nor a file that can be read
     */
    List<Diagnostic> faults(String name) throws DiagnosedException {
        library.find(name);
        return List.of();
    }

    /**
     * Returns more lines about a file that can be used.
     *
     * @throws DiagnosedException if it is neither an id nor a file that can be read
     */
    List<String> more(String name) throws DiagnosedException {
        return List.of();
    }

    private ExitCode tellFaults(String name, List<Diagnostic> faults, Terminal terminal) throws DiagnosedException {
        print(faults, name, terminal);
        if (faults.stream().anyMatch(remark -> remark.severity() == Severity.ERROR)) {
            return ExitCode.SOME_FAILED;
        }
        String doubts = faults.size() == 1 ? "1 doubt" : faults.size() + " doubts";
        terminal.out().printf("%s: %s can be used; %s.%n", name, title(library.find(name)), doubts);
        more(name).forEach(terminal.out()::println);
        return ExitCode.ALL_DONE;
    }

    private static void print(List<Diagnostic> remarks, String name, Terminal terminal) {
        remarks.forEach(remark -> terminal.err().println(remark.print(name)));
    }
}
