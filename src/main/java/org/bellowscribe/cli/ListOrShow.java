package org.bellowscribe.cli;

import java.util.List;
import org.apache.commons.cli.CommandLine;
import org.bellowscribe.diagnostic.NearestNames;
import org.jspecify.annotations.Nullable;

/** The words of a command about a library: alone or {@code list}, or {@code show} and one name. */
final class ListOrShow {

    private static final List<String> ACTIONS = List.of("list", "show");

    private ListOrShow() {}

    /** Returns the name to show, or null if the library is to be listed. */
    static @Nullable String shown(CommandLine line, String command, String thing) throws UsageException {
        List<String> words = line.getArgList();
        String action = words.isEmpty() ? "list" : words.get(0);
        if (!ACTIONS.contains(action)) {
            List<String> near = NearestNames.of(action, ACTIONS);
            throw new UsageException("%s does not know %s.%n  Maybe %s is meant."
                    .formatted(command, action, String.join(" or ", near.isEmpty() ? ACTIONS : near)));
        }
        boolean show = action.equals("show");
        int names = Math.max(0, words.size() - 1);
        if (names != (show ? 1 : 0)) {
            throw new UsageException(
                    "%s takes %s, but %d are given.".formatted(action, show ? "one " + thing : "nothing more", names));
        }
        return show ? words.get(1) : null;
    }
}
