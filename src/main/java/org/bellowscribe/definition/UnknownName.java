package org.bellowscribe.definition;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.diagnostic.Place;

/** Says that a library has nothing of a name, and which of its names may be meant. */
public final class UnknownName {

    private static final int MOST = 3;

    private UnknownName() {}

    /**
     * Returns the remark.
     *
     * @param thing what the library holds, such as {@code instrument}
     * @param id the name that is not there
     * @param known the names that are
     * @param place where the name stands, {@link Place#FILE} for the command line
     */
    public static Diagnostic diagnostic(String thing, String id, Collection<String> known, Place place) {
        List<String> near = near(id, known);
        String text = "The library has no %s %s.".formatted(thing, id);
        String all = "The command %ss list shows all.".formatted(thing);
        return near.isEmpty()
                ? Diagnostic.error(DiagnosticCode.UNKNOWN_NAME, place, text, all)
                : Diagnostic.error(DiagnosticCode.UNKNOWN_NAME, place, text, "Maybe %s.".formatted(or(near)), all);
    }

    /** Returns at most three known names that may be meant. A player writes D/G where the library writes dg. */
    static List<String> near(String id, Collection<String> known) {
        List<String> spelled = NearestNames.of(id, known);
        return spelled.isEmpty() ? beginning(letters(id), known) : spelled;
    }

    /** Returns names with the word between them. */
    static String or(List<String> names) {
        return String.join(" or ", names);
    }

    private static List<String> beginning(String letters, Collection<String> known) {
        return letters.isEmpty()
                ? List.of()
                : known.stream()
                        .filter(name -> letters(name).startsWith(letters))
                        .limit(MOST)
                        .toList();
    }

    private static String letters(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    }
}
