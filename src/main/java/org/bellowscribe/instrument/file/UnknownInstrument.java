package org.bellowscribe.instrument.file;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.diagnostic.Place;

/** Says that the library has no instrument of a name, and which it has. */
final class UnknownInstrument {

    private static final int MOST = 6;

    private UnknownInstrument() {}

    /**
     * Returns the remark.
     *
     * @param id the name that is not there
     * @param known the names that are
     * @param place where the name stands, {@link Place#FILE} for the command line
     */
    static Diagnostic diagnostic(String id, Collection<String> known, Place place) {
        List<String> near = near(id, known);
        String all = "The library has: %s.".formatted(String.join(", ", known));
        String text = "The library has no instrument %s.".formatted(id);
        return near.isEmpty()
                ? Diagnostic.error(DiagnosticCode.UNKNOWN_NAME, place, text, all)
                : Diagnostic.error(
                        DiagnosticCode.UNKNOWN_NAME,
                        place,
                        text,
                        "Maybe %s.".formatted(String.join(" or ", near)),
                        all);
    }

    /** Returns the known names that may be meant; empty if none is near. A player writes D/G where the library writes dg. */
    static List<String> near(String id, Collection<String> known) {
        List<String> spelled = NearestNames.of(id, known);
        return spelled.isEmpty() ? beginning(id, known) : spelled;
    }

    private static List<String> beginning(String id, Collection<String> known) {
        String letters = letters(id);
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
