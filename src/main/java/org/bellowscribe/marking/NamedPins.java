package org.bellowscribe.marking;

import java.util.Set;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.pin.PinFile;

/**
 * A file of pins that says its name when something is wrong with it.
 *
 * @param fileName the name of the file, without folders
 * @param pins what it holds
 */
public record NamedPins(String fileName, PinFile pins) {

    /** Codes that would say of the score what is said of its pins. */
    private static final Set<DiagnosticCode> OF_FILES = Set.of(DiagnosticCode.NOT_XML, DiagnosticCode.EMPTY_FILE);

    /**
     * Returns what it fixes in a tune.
     *
     * @throws DiagnosedException if a pin cannot be
     */
    Pins of(Task task) throws DiagnosedException {
        try {
            return pins.of(task);
        } catch (DiagnosedException e) {
            throw named(fileName, e);
        }
    }

    /** Returns what is wrong in a file of pins as a remark about the score: the place of such a remark is in the pins. */
    public static DiagnosedException named(String fileName, DiagnosedException e) {
        return new DiagnosedException(e.diagnostics().stream()
                .map(remark -> ofScore(fileName, remark))
                .toList());
    }

    private static Diagnostic ofScore(String fileName, Diagnostic remark) {
        String place = remark.place().describe();
        return new Diagnostic(
                remark.severity(),
                OF_FILES.contains(remark.code()) ? DiagnosticCode.BAD_DEFINITION : remark.code(),
                Place.FILE,
                "%s%s: %s".formatted(fileName, place.isEmpty() ? "" : ", " + place, remark.text()),
                remark.advice());
    }
}
