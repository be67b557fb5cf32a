package org.bellowscribe.solver.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RowOfKeyTest {

    @ParameterizedTest(name = "{0} has the home of {1} sharps on row {2}: {3}")
    @CsvSource({
        "dg-21, 2, 1, the outer row is that of D",
        "dg-21, 1, 2, the inner row is that of G",
        "dg-21, 0, 2, C lies a fifth from G",
        "dg-21, 3, 1, A lies a fifth from D",
        "dg-21, -1, 0, F is two fifths from G",
        "dg-21, 4, 0, E is two fifths from D",
        "adg-31, 3, 1, the outer of three rows is that of A",
        "adg-31, 2, 2, the middle of three rows is that of D",
        "adg-31, 0, 3, C lies a fifth from the inner row only",
        "d-10, 2, 1, a single row",
        "d-10, 1, 1, a single row a fifth away",
        "d-10, 0, 0, a single row two fifths away",
        "bc-21, 0, 2, the inner row is that of C",
        "bc-21, 1, 2, G lies a fifth from C",
        "bc-21, 2, 0, D is played over both rows",
        "anglo-cg-30, 0, 2, the row of C goes through both hands",
        "anglo-cg-30, 1, 3, and that of G",
        "club-cf-31, -1, 2, the helper row has no key"
    })
    void signatureDecides(String instrument, int sharps, int row, String why) throws DiagnosedException {
        RowOfKey home = new RowOfKey(InstrumentLibrary.find(instrument));
        assertEquals(row, home.of(new Key(sharps, Mode.MAJOR)), why);
    }

    @ParameterizedTest
    @CsvSource({"1, MINOR, 2", "1, DORIAN, 2", "2, MINOR, 1", "2, MIXOLYDIAN, 1"})
    void minorAndModesLieWhereTheirNotesAre(int sharps, Mode mode, int row) throws DiagnosedException {
        assertEquals(row, new RowOfKey(InstrumentLibrary.find("dg-21")).of(new Key(sharps, mode)));
    }
}
