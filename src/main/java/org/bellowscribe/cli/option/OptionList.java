package org.bellowscribe.cli.option;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How the options of a command are listed. */
public final class OptionList {

    /** As many options fit on a screen without headings. */
    private static final int FLAT = 24;

    private OptionList() {}

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
            OptionGroup group = options.size() > FLAT ? option.group() : OptionGroup.OTHER;
            headed.computeIfAbsent(group.heading(), any -> new ArrayList<>()).add(option);
        }
        return Collections.unmodifiableMap(headed);
    }
}
