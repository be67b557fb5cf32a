package org.bellowscribe.instrument.file;

import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Passages that players and teachers have published with their buttons, tried on the library. Each line of the table
 * names its source.
 */
class WorkedExamplesTest {

    private static final int SOURCE = 3;
    private static final int INSTRUMENT = 4;
    private static final int NOTES = 7;
    private static final int BUTTONS = 8;
    private static final int DIRECTIONS = 9;

    /** The form of each instrument that the passages need. */
    private static final Map<String, String> IDS = Map.ofEntries(
            entry("Anglo C/G 30 (20 = C and G rows)", "anglo-cg-30"),
            entry("G/C 21 accidentals on buttons 1", "gc-21-accidentals"),
            entry("D/G 21 accidentals on buttons 1", "dg-21-accidentals"),
            entry("C/F 21 accidentals on buttons 1", "cf-21-accidentals"),
            entry("A/D 21 accidentals on buttons 1", "ad-21-accidentals"),
            entry("C#/D 21", "c-sharp-d-21"),
            entry("G/C/F 31", "gcf-31-accidentals"));

    @Test
    void everyPassageSoundsOnItsButtons() {
        List<List<String>> passages = PublishedTable.lines("worked-examples.csv").stream()
                .filter(line -> line.get(DIRECTIONS).matches("(push|pull)( (push|pull))*"))
                .filter(line -> !line.get(BUTTONS).isEmpty())
                .toList();
        assertTrue(passages.size() >= 15, () -> passages.size() + " passages");
        for (List<String> passage : passages) {
            assertEquals(passage.get(NOTES), notes(passage), () -> passage.get(0) + " " + passage.get(SOURCE));
        }
    }

    private static String notes(List<String> passage) {
        String id = IDS.get(passage.get(INSTRUMENT));
        assertTrue(id != null, () -> "no instrument for " + passage.get(INSTRUMENT));
        String[] places = passage.get(BUTTONS).split(" ", -1);
        String[] directions = passage.get(DIRECTIONS).split(" ", -1);
        StringBuilder notes = new StringBuilder();
        for (int i = 0; i < places.length; i++) {
            String mark = directions[i].equals("pull") ? "'" : "";
            String sounds = InstrumentLines.sounds(
                    InstrumentLines.find(String.valueOf(id)), places[i].replace("+", mark + " ") + mark);
            notes.append(i == 0 ? "" : " ").append(sounds.replace(' ', '+'));
        }
        return notes.toString();
    }
}
