package org.bellowscribe.musicxml.read;

import java.math.BigDecimal;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;

/**
 * A value of the file that has not the form it should have, or that no button can sound.
 *
 * @param name element, or {@code element@attribute}
 * @param value the value as written, cut to a readable length
 * @param place where
 * @param unsounded what of a pitch no button sounds, as a sentence; empty for a value that cannot be read
 */
record OddValue(String name, String value, Place place, String unsounded) {

    private static final int MAX_SHOWN = 40;

    /** Creates a value that cannot be read. */
    OddValue(String name, String value, Place place) {
        this(name, value, place, "");
    }

    /**
     * Returns a pitch between two semitones.
     *
     * @param pitch step and octave
     * @param alter how far it is raised, in semitones; lowered if negative
     */
    static OddValue between(String pitch, BigDecimal alter, Place place) {
        return new OddValue(
                "alter",
                alter.toPlainString(),
                place,
                "No button sounds quarter tones: %s is %s by %s semitones."
                        .formatted(
                                pitch,
                                alter.signum() < 0 ? "lowered" : "raised",
                                alter.abs().stripTrailingZeros().toPlainString()));
    }

    OddValue {
        value = value.length() <= MAX_SHOWN ? value : value.substring(0, MAX_SHOWN) + "...";
    }

    /** Returns the remark that refuses the tune. */
    Diagnostic refusal() {
        if (!unsounded.isEmpty()) {
            return Diagnostic.error(
                    DiagnosticCode.NO_BUTTON, place, unsounded, "Maybe write the nearest whole semitone.");
        }
        return Diagnostic.error(
                DiagnosticCode.BAD_VALUE,
                place,
                "The value \"%s\" of <%s> cannot be read.".formatted(value, name),
                "Maybe correct it in the program that wrote the file and export again.");
    }

    /** Returns the remark that the value is passed over. */
    Diagnostic warning() {
        return Diagnostic.warning(
                DiagnosticCode.ODD_VALUE,
                place,
                "The value \"%s\" of <%s> is not allowed there and is passed over.".formatted(value, name));
    }
}
