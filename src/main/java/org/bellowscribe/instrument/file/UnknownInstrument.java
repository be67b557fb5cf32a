package org.bellowscribe.instrument.file;

import java.util.Collection;
import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.diagnostic.Place;

/** Says that the library has no instrument of a name, and which it has. */
final class UnknownInstrument {

    private UnknownInstrument() {}

    /**
     * Returns the remark.
     *
     * @param id the name that is not there
     * @param known the names that are
     * @param place where the name stands, {@link Place#FILE} for the command line
     */
    static Diagnostic diagnostic(String id, Collection<String> known, Place place) {
        List<String> near = NearestNames.of(id, known);
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
}
