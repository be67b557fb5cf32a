package org.bellowscribe.cli.option;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.DefaultParser;
import org.apache.commons.cli.MissingArgumentException;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.apache.commons.cli.ParseException;
import org.apache.commons.cli.UnrecognizedOptionException;
import org.bellowscribe.diagnostic.NearestNames;
import org.jspecify.annotations.Nullable;

/** The words behind a command, parsed: options with their values, and the rest. */
public final class CommandWords {

    private final List<String> rest;
    private final Map<String, String> texts;
    private final Map<String, Object> values;

    private CommandWords(List<String> rest, Map<String, String> texts, Map<String, Object> values) {
        this.rest = List.copyOf(rest);
        this.texts = texts;
        this.values = values;
    }

    /**
     * Parses words.
     *
     * @param command name of the command
     * @param options its options
     * @param words what stands behind it
     * @throws UsageException if an option is not known, lacks its value, does not take it, or is given twice
     */
    public static CommandWords parse(String command, List<CommandOption<?>> options, List<String> words)
            throws UsageException {
        CommandLine line = split(command, options, words);
        Map<String, String> texts = new LinkedHashMap<>();
        for (Option option : line.getOptions()) {
            // Of an option without a value a second one changes nothing.
            String value = option.hasArg() ? option.getValue() : "";
            String earlier = texts.put(option.getLongOpt(), value);
            if (earlier != null && option.hasArg()) {
                throw new UsageException("--%s is given twice, as %s and as %s.%n  Maybe leave one of them out."
                        .formatted(option.getLongOpt(), earlier, value));
            }
        }
        Map<String, Object> values = new LinkedHashMap<>();
        for (CommandOption<?> option : options) {
            String text = texts.get(option.name());
            if (text != null) {
                values.put(option.name(), read(option, text));
            }
        }
        if (line.getArgList().contains("")) {
            throw new UsageException(
                    "An empty name stands among the words of %s.%n  Maybe a variable of the shell is not set."
                            .formatted(command));
        }
        return new CommandWords(line.getArgList(), texts, values);
    }

    /**
     * Returns these words, and under them others for the options that are not given here.
     *
     * @param options the options that the others are of
     * @param others values by the names of options; of one without a value any
     * @throws UsageException if a value is not taken
     */
    public CommandWords over(List<CommandOption<?>> options, Map<String, String> others) throws UsageException {
        Map<String, String> allTexts = new LinkedHashMap<>(texts);
        Map<String, Object> allValues = new LinkedHashMap<>(values);
        for (CommandOption<?> option : options) {
            String text = others.get(option.name());
            if (text != null && !texts.containsKey(option.name())) {
                allTexts.put(option.name(), option.hasValue() ? text : "");
                allValues.put(option.name(), read(option, text));
            }
        }
        return new CommandWords(rest, allTexts, allValues);
    }

    /**
     * Returns words that do not come from a command line.
     *
     * @param values what each option's reader has made of its text, by the name of the option
     */
    public static CommandWords of(Map<String, Object> values) {
        return new CommandWords(List.of(), Map.of(), new LinkedHashMap<>(values));
    }

    private static Object read(CommandOption<?> option, String text) throws UsageException {
        if (option.hasValue() && text.isBlank()) {
            throw new UsageException(
                    "--%s needs a value (%s), and an empty one is given.%n  Maybe a variable of the shell is not set."
                            .formatted(option.name(), option.argument()));
        }
        return Objects.requireNonNull(option.reader().read(option.name(), text));
    }

    private static CommandLine split(String command, List<CommandOption<?>> options, List<String> words)
            throws UsageException {
        Options known = new Options();
        options.forEach(option -> known.addOption(option.parsed()));
        try {
            return DefaultParser.builder()
                    .setAllowPartialMatching(false)
                    .get()
                    .parse(known, words.toArray(String[]::new));
        } catch (UnrecognizedOptionException e) {
            throw unknown(command, e.getOption(), options);
        } catch (MissingArgumentException e) {
            Option option = e.getOption();
            throw new UsageException("--%s needs a value (%s).".formatted(option.getLongOpt(), option.getArgName()));
        } catch (ParseException e) {
            throw new UsageException(e.getMessage() + ".");
        }
    }

    private static UsageException unknown(String command, String word, List<CommandOption<?>> options) {
        String given = word.replaceFirst("^-+", "").replaceFirst("=.*", "");
        List<String> near =
                NearestNames.of(given, options.stream().map(CommandOption::name).toList());
        String advice = near.isEmpty() ? "" : "\n  Maybe --" + String.join(" or --", near) + " is meant.";
        return new UsageException("The command %s has no option %s.%s".formatted(command, word, advice));
    }

    /**
     * Reads the values of these words once more: files that they name may have changed.
     *
     * @param options the options of the command
     * @throws UsageException if a value is no longer taken
     */
    public CommandWords again(List<CommandOption<?>> options) throws UsageException {
        return new CommandWords(rest, Map.of(), Map.of()).over(options, texts);
    }

    /** Returns the words that are no options. */
    public List<String> rest() {
        return rest;
    }

    /** Returns true if an option is given. */
    public boolean has(CommandOption<?> option) {
        return values.containsKey(option.name());
    }

    /** Returns the value of an option as it was written, empty if it takes none; null if it is not given. */
    public @Nullable String text(CommandOption<?> option) {
        return texts.get(option.name());
    }

    /** Returns the value of an option, or null if it is not given. */
    @SuppressWarnings("unchecked") // What the reader of this option has given.
    public <T> @Nullable T get(CommandOption<T> option) {
        return (T) values.get(option.name());
    }

    /** Returns the value of an option, or another if it is not given. */
    public <T> T get(CommandOption<T> option, T usual) {
        T value = get(option);
        return value == null ? usual : value;
    }
}
