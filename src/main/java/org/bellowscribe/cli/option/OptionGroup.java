package org.bellowscribe.cli.option;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What an option is about: the headings under which a command with many options lists them, in their order. */
public enum OptionGroup {
    /** Which scores, and what in them. */
    MARKED("What is marked"),
    /** What decides how a tune is played. */
    PLAYED("How it is played"),
    /** What stands on the sheet. */
    PRINTED("What is printed"),
    /** What is told of a tune, or written for it, besides the sheet. */
    BESIDES("What is told and written besides"),
    /** Where results are put. */
    PLACE("Where it goes"),
    /** How the run goes on and what it prints. */
    RUN("The run"),
    /** What belongs to one command only. */
    OTHER("Options");

    /** As many options fit on a screen without headings. */
    private static final int FLAT = 24;

    private final String heading;

    OptionGroup(String heading) {
        this.heading = heading;
    }

    /** Returns the words that stand above its options. */
    public String heading() {
        return heading;
    }

    /** Returns options in the order of their groups, within one in their own. */
    public static List<CommandOption<?>> inOrder(List<CommandOption<?>> options) {
        Map<OptionGroup, List<CommandOption<?>>> groups = new EnumMap<>(OptionGroup.class);
        options.forEach(option ->
                groups.computeIfAbsent(option.group(), any -> new ArrayList<>()).add(option));
        return groups.values().stream().flatMap(List::stream).toList();
    }

    /** Returns the options of a command under their headings; all under one if they are few, or none if there are none. */
    public static Map<String, List<CommandOption<?>>> headed(List<CommandOption<?>> options) {
        Map<String, List<CommandOption<?>>> headed = new LinkedHashMap<>();
        for (CommandOption<?> option : options) {
            OptionGroup group = options.size() > FLAT ? option.group() : OTHER;
            headed.computeIfAbsent(group.heading(), any -> new ArrayList<>()).add(option);
        }
        return Collections.unmodifiableMap(headed);
    }
}
