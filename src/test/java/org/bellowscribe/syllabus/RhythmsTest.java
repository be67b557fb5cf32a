package org.bellowscribe.syllabus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.theory.Fraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RhythmsTest {

    @ParameterizedTest
    @CsvSource({
        "1, quarter",
        "2, half",
        "1/2, eighth",
        "3/2, dotted quarter",
        "3/4, dotted eighth",
        "6, dotted whole",
        "1/3, triplet eighth",
        "2/3, triplet quarter",
        "7/4, double-dotted quarter",
        "5/2, 5/2 of a quarter",
        "1/4, 16th",
        "1/16, 1/16 of a quarter",
    })
    void aLengthIsNamedAsItIsWritten(String quarters, String name) {
        assertEquals(name, Rhythms.length(Fraction.parse(quarters)));
    }
}
