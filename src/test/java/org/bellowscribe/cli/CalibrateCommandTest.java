package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.InstrumentCheck;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalibrateCommandTest {

    @TempDir
    Path folder;

    private Path box() {
        return folder.resolve("my-box.xml");
    }

    private CommandRun calibrate(String instrument, String... words) {
        String[] all = new String[words.length + 5];
        System.arraycopy(
                new String[] {"calibrate", "--instrument", instrument, "--out", box().toString()}, 0, all, 0, 5);
        System.arraycopy(words, 0, all, 5, words.length);
        return CommandRun.of(all);
    }

    @Test
    void fiveTimingsMakeAnInstrumentFile() throws DiagnosedException {
        CommandRun run = calibrate(
                "dg-21", "--note", "17", "--with-bass", "4.5", "--with-chord", "5,5", "--air", "2", "--light-air", "5");
        assertEquals(0, run.code(), run.err());
        assertEquals("", run.err());
        Instrument mine = InstrumentLibrary.find(box().toString());
        Instrument base = InstrumentLibrary.find("dg-21");
        assertEquals("my-dg-21", mine.id());
        assertEquals(base.buttons(), mine.buttons());
        assertEquals(base.leftHand(), mine.leftHand());
        assertEquals(34, mine.bellows().capacity(), 0.005);
        assertEquals(34 / 4.5 - 2, mine.air().bassFlow(), 0.005);
        assertEquals(34 / 5.5 - 2, mine.air().chordFlow(), 0.005);
        assertEquals(17, mine.bellows().fullAirFlow(), 0.005);
        assertEquals(6.8, mine.bellows().lightAirFlow(), 0.005);
        assertEquals(base.bellows().reserve(), mine.bellows().reserve());
        assertEquals(0, InstrumentCheck.of(mine).size());
    }

    @Test
    void everyTimingSaysWhatItChangedAndWhatWasNotTimedStays() {
        CommandRun run = calibrate("dg-21", "--note", "17", "--with-bass", "4.5");
        assertTrue(
                run.out()
                        .contains(
                                "capacity                   40.00 -> 34.00  (half a second makes it 33.00 to 35.00): A4"
                                        + " alone lasted 17 s"),
                run.out());
        assertTrue(run.out().contains("A4 with a bass lasted 4.5 s"), run.out());
        assertTrue(run.out().contains("not timed: --with-chord; its figure stays as it was"), run.out());
    }

    @Test
    void instrumentOfAUserKeepsItsButtonsAndItsOtherFigures() throws DiagnosedException, IOException {
        String own = "samples/instruments/two-and-a-half-rows.xml";
        CommandRun run = calibrate(own, "--note", "10", "--air", "1.5");
        assertEquals(0, run.code(), run.err());
        Instrument before = InstrumentLibrary.find(own);
        Instrument after = InstrumentLibrary.find(box().toString());
        assertEquals(before.buttons(), after.buttons());
        assertEquals(before.leftHand(), after.leftHand());
        assertEquals(20, after.bellows().capacity(), 0.005);
        assertEquals(before.bellows().lightAirFlow(), after.bellows().lightAirFlow());
        assertTrue(Files.readString(box()).contains("<remark>The helper buttons give"), Files.readString(box()));
    }

    @Test
    void timingsThatCannotBeWriteNothing() {
        CommandRun run = calibrate("dg-21", "--note", "4", "--with-bass", "17");
        assertEquals(1, run.code());
        assertTrue(run.err().contains("--with-bass (17 s) must be shorter than --note (4 s)"), run.err());
        assertFalse(Files.exists(box()));
    }

    @Test
    void wrongWordsAreExplained() {
        assertWrong("calibrate needs --note.", "dg-21");
        assertWrong("--note takes seconds from 1 to 600, such as 17 or 17.5, not 0.", "dg-21", "--note", "0");
        assertWrong("--note takes seconds", "dg-21", "--note", "17s");
        assertWrong("--pitch takes a note with its octave", "dg-21", "--note", "17", "--pitch", "a");
        assertWrong("The library has no instrument dg", "dg", "--note", "17");
        assertWrong("calibrate takes options only, not tune.xml.", "dg-21", "tune.xml");
        CommandRun none = CommandRun.of("calibrate", "--note", "17", "--out", box().toString());
        assertTrue(none.err().contains("calibrate needs --instrument."), none.err());
    }

    private void assertWrong(String message, String instrument, String... words) {
        CommandRun run = calibrate(instrument, words);
        assertEquals(2, run.code(), message);
        assertTrue(run.err().contains(message), run.err());
        assertFalse(Files.exists(box()));
    }
}
