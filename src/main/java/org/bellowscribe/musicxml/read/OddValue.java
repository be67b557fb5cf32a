package org.bellowscribe.musicxml.read;

import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;

/**
 * A value of the file that has not the form it should have.
 *
 * @param name element, or {@code element@attribute}
 * @param value the value as written, cut to a readable length
 * @param place where
 */
record OddValue(String name, String value, Place place) {

    private static final int MAX_SHOWN = 40;

    OddValue {
        value = value.length() <= MAX_SHOWN ? value : value.substring(0, MAX_SHOWN) + "...";
    }

    /** Returns the remark that refuses the tune. */
    Diagnostic refusal() {
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
