package org.bellowscribe.diagnostic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestNamesTest {

    private static final List<String> KNOWN = List.of("dg-21", "gc-21", "cf-21", "dg-23");

    @Test
    void findsTheNameWithOneLetterWrong() {
        assertEquals(List.of("gc-21"), NearestNames.of("gc21", KNOWN));
    }

    @Test
    void namesAllThatAreEquallyNear() {
        assertEquals(List.of("dg-21", "dg-23"), NearestNames.of("DG-22", KNOWN));
    }

    @Test
    void findsNothingForAQuiteDifferentName() {
        assertEquals(List.of(), NearestNames.of("hurdy-gurdy", KNOWN));
    }

    @Test
    void swappedLettersAreOneSlip() {
        assertEquals(List.of("mark"), NearestNames.of("makr", List.of("mark", "strip")));
    }
}
