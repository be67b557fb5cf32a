package org.bellowscribe.cli.option;

import org.apache.commons.cli.Option;

/**
 * One option of a command.
 *
 * @param name its name without hyphens
 * @param argument what stands for its value in the help, such as {@code ID|FILE}; empty if it takes none
 * @param description sentences on what it is for, without its limits
 * @param reader how its value is read
 * @param group what it is about
 * @param <T> what its value is
 */
public record CommandOption<T>(
        String name, String argument, String description, ValueReader<T> reader, OptionGroup group) {

    /** Creates an option of one command only. */
    public CommandOption(String name, String argument, String description, ValueReader<T> reader) {
        this(name, argument, description, reader, OptionGroup.OTHER);
    }

    /** Returns the same option in a group. */
    public CommandOption<T> in(OptionGroup other) {
        return new CommandOption<>(name, argument, description, reader, other);
    }

    /** Creates an option that is there or not. */
    public static CommandOption<Boolean> flag(String name, String description) {
        return new CommandOption<>(name, "", description, (option, text) -> true);
    }

    /** Creates an option that takes whatever text is given. */
    public static CommandOption<String> text(String name, String argument, String description) {
        return new CommandOption<>(name, argument, description, (option, text) -> text);
    }

    /** Creates an option that takes one of a few words, which stand for its value in the help. */
    public static <T> CommandOption<T> choice(String name, String description, Choice<T> choice) {
        return new CommandOption<>(name, choice.argument(), description, choice);
    }

    /** Returns true if it takes a value. */
    public boolean hasValue() {
        return !argument.isEmpty();
    }

    /** Returns what the help says of it, with its limits. */
    public String help() {
        return reader.limits().isEmpty() ? description : "%s Takes %s.".formatted(description, reader.limits());
    }

    /** Returns it as it stands on a command line: {@code --out DIR}. */
    public String label() {
        return "--" + name + (hasValue() ? " " + argument : "");
    }

    Option parsed() {
        return Option.builder()
                .longOpt(name)
                .hasArg(hasValue())
                .argName(argument)
                .desc(help())
                .get();
    }
}
