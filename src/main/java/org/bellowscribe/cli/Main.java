package org.bellowscribe.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.ServiceConfigurationError;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;

/** The command line. */
public final class Main {

    private Main() {}

    /** Runs the tool and ends the process with its exit code. */
    public static void main(String[] args) {
        // The same figures and bytes on every computer, whatever its language.
        Locale.setDefault(Locale.ROOT);
        System.exit(run(args, Terminal.ofProcess(System.getenv())));
    }

    /**
     * Runs the tool.
     *
     * @return the exit code: 0 all done, 1 some tune not, 2 wrong use, 3 the tool broke
     */
    static int run(String[] args, Terminal terminal) {
        try {
            return written(dispatch(args, terminal), terminal).code();
        } catch (UsageException e) {
            terminal.err().println(e.lines());
            terminal.err().println("See: bellowscribe %s--help".formatted(commandOf(args)));
            return ExitCode.WRONG_USE.code();
        } catch (ServiceConfigurationError e) {
            terminal.err().println("A plug-in on the class path cannot be used: " + e.getMessage() + ".");
            terminal.err()
                    .println("  Maybe its class is not in its jar, or has no public constructor without parameters.");
            return ExitCode.WRONG_USE.code();
        } catch (RuntimeException e) {
            terminal.err().println("The tool broke: " + e);
            e.printStackTrace(terminal.err());
            terminal.err().println("Please report this with the command line.");
            return ExitCode.BROKEN.code();
        }
    }

    /** Returns the command of a line with a space behind it; empty if there is none of that name. */
    private static String commandOf(String[] args) {
        boolean known = args.length > 0
                && Commands.ALL.stream().anyMatch(command -> command.name().equals(args[0]));
        return known ? args[0] + " " : "";
    }

    // What was printed may be all that was asked for.
    private static ExitCode written(ExitCode code, Terminal terminal) {
        if (!terminal.out().checkError()) {
            return code;
        }
        Diagnostic lost = Diagnostic.error(
                DiagnosticCode.UNWRITABLE,
                Place.FILE,
                "It cannot be written.",
                "Maybe the disk is full, or the program that reads it has ended.");
        terminal.err().println(lost.print("standard output"));
        return code == ExitCode.ALL_DONE ? ExitCode.SOME_FAILED : code;
    }

    private static ExitCode dispatch(String[] args, Terminal terminal) throws UsageException {
        List<String> words = Arrays.asList(args);
        if (words.isEmpty()) {
            throw new UsageException("No command is given.");
        }
        boolean asksForHelp = words.contains("--help") || words.contains("-h");
        if (List.of("--help", "-h", "help").contains(words.get(0))) {
            terminal.out().print(Help.text());
            return ExitCode.ALL_DONE;
        }
        if (words.contains("--version")) {
            terminal.out().println("Bellowscribe " + ToolVersion.name());
            return ExitCode.ALL_DONE;
        }
        Command command = Commands.find(words.get(0));
        if (asksForHelp) {
            terminal.out().print(Help.of(command));
            return ExitCode.ALL_DONE;
        }
        // What a library logs is not for the user: what matters to them is a remark of ours. Help needs no libraries.
        Logger.getLogger("").setLevel(Level.OFF);
        return command.run(
                CommandWords.parse(command.name(), command.options(), words.subList(1, words.size())), terminal);
    }
}
