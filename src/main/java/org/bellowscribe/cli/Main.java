package org.bellowscribe.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ServiceConfigurationError;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.DefaultParser;
import org.apache.commons.cli.MissingArgumentException;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.apache.commons.cli.ParseException;
import org.apache.commons.cli.UnrecognizedOptionException;
import org.bellowscribe.diagnostic.NearestNames;

/** The command line. */
public final class Main {

    private static final Logger LIBRARIES = Logger.getLogger("");

    private Main() {}

    /** Runs the tool and ends the process with its exit code. */
    // From JDK 22 on there is a console also where nobody watches: then progress is written to it in vain.
    @SuppressWarnings("SystemConsoleNull")
    public static void main(String[] args) {
        // What a library logs is not for the user: what matters to them is a remark of ours.
        LIBRARIES.setLevel(Level.OFF);
        // The same figures and bytes on every computer, whatever its language.
        Locale.setDefault(Locale.ROOT);
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(args, new Terminal(System.in, out, err, System.console() != null)));
    }

    /**
     * Runs the tool.
     *
     * @return the exit code: 0 all done, 1 some tune not, 2 wrong use, 3 the tool broke
     */
    static int run(String[] args, Terminal terminal) {
        try {
            return dispatch(args, terminal).code();
        } catch (UsageException e) {
            terminal.err().println(e.lines());
            terminal.err().println("See: java -jar bellowscribe.jar --help");
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

    private static ExitCode dispatch(String[] args, Terminal terminal) throws UsageException {
        List<String> words = Arrays.asList(args);
        if (words.isEmpty()) {
            throw new UsageException("No command is given.");
        }
        if (words.contains("--help") || List.of("-h", "help").contains(words.get(0))) {
            terminal.out().print(Help.text());
            return ExitCode.ALL_DONE;
        }
        if (words.contains("--version")) {
            terminal.out().println("Bellowscribe " + version());
            return ExitCode.ALL_DONE;
        }
        Command command = Commands.find(words.get(0));
        return command.run(parse(command, words.subList(1, words.size())), terminal);
    }

    private static CommandLine parse(Command command, List<String> words) throws UsageException {
        Options options = command.options();
        try {
            CommandLine line = DefaultParser.builder()
                    .setAllowPartialMatching(false)
                    .get()
                    .parse(options, words.toArray(String[]::new));
            requireOnce(line);
            return line;
        } catch (UnrecognizedOptionException e) {
            String given = e.getOption().replaceFirst("^-+", "").replaceFirst("=.*", "");
            List<String> near = NearestNames.of(
                    given, options.getOptions().stream().map(Option::getLongOpt).toList());
            String advice = near.isEmpty() ? "" : "\n  Maybe --" + String.join(" or --", near) + " is meant.";
            throw new UsageException(
                    "The command %s has no option %s.%s".formatted(command.name(), e.getOption(), advice));
        } catch (MissingArgumentException e) {
            Option option = e.getOption();
            throw new UsageException("--%s needs a value (%s).".formatted(option.getLongOpt(), option.getArgName()));
        } catch (ParseException e) {
            throw new UsageException(e.getMessage() + ".");
        }
    }

    // Of an option without a value a second one changes nothing.
    private static void requireOnce(CommandLine line) throws UsageException {
        Map<String, String> values = new HashMap<>();
        for (Option option : line.getOptions()) {
            String name = option.getLongOpt();
            String earlier = option.hasArg() ? values.put(name, option.getValue()) : null;
            if (earlier != null) {
                throw new UsageException("--%s is given twice, as %s and as %s.%n  Maybe leave one of them out."
                        .formatted(name, earlier, option.getValue()));
            }
        }
    }

    private static String version() {
        String version = Main.class.getPackage().getImplementationVersion();
        return version == null ? "(not packaged)" : version;
    }
}
