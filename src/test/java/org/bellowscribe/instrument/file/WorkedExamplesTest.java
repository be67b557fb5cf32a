package org.bellowscribe.instrument.file;

import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.theory.Pitch;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

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
    private static final int CHANGES = 11;

    /** The form of each instrument that the passages need. */
    private static final Map<String, String> IDS = Map.ofEntries(
            entry("Anglo C/G 30 (20 = C and G rows)", "anglo-cg-30"),
            entry("G/C 21 accidentals on buttons 1", "gc-21-accidentals"),
            entry("D/G 21 accidentals on buttons 1", "dg-21-accidentals"),
            entry("C/F 21 accidentals on buttons 1", "cf-21-accidentals"),
            entry("A/D 21 accidentals on buttons 1", "ad-21-accidentals"),
            entry("C#/D 21", "c-sharp-d-21"),
            entry("G/C/F 31", "gcf-31-accidentals"));

    /** Returns the passages with a button and a direction for every note. */
    static List<List<String>> passages() {
        return PublishedTable.lines("worked-examples.csv").stream()
                .filter(line -> line.get(DIRECTIONS).matches("(push|pull)( (push|pull))*"))
                .filter(line -> !line.get(BUTTONS).isEmpty())
                .toList();
    }

    static List<Arguments> named() {
        return passages().stream()
                .map(line -> Arguments.of(Named.of(line.get(0) + ", " + line.get(SOURCE), line)))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("named")
    void passageSoundsOnItsButtons(List<String> passage) {
        assertEquals(passage.get(NOTES), notes(passage));
    }

    @ParameterizedTest
    @MethodSource("named")
    void bellowsTurnAsOftenAsIsWritten(List<String> passage) {
        String[] directions = passage.get(DIRECTIONS).split(" ", -1);
        int changes = 0;
        for (int i = 1; i < directions.length; i++) {
            changes += directions[i].equals(directions[i - 1]) ? 0 : 1;
        }
        String written = passage.get(CHANGES);
        assertTrue(written.isEmpty() || written.equals(String.valueOf(changes)), written + " written, " + changes);
    }

    @Test
    void thereAreEnoughPassages() {
        assertTrue(passages().size() >= 15, () -> passages().size() + " passages");
    }

    /**
     * W045: Bertram Levy, tutor blog, n.d., http://bertramlevy.com/concertina-tutor/blog: C and E one way only, D and G
     * both ways, F# on the pull.
     */
    @Test
    void notesOfTheAngloThatSoundBothWays() {
        assertEquals(
                "C4 push, E4 push, D4 both, G4 both, F#4 pull",
                Stream.of("C4", "E4", "D4", "G4", "F#4")
                        .map(note -> note + " " + ways("anglo-cg-30", note))
                        .collect(Collectors.joining(", ")));
    }

    private static String ways(String id, String note) {
        Pitch pitch = Pitch.parse(note);
        List<Button> buttons = InstrumentLines.find(id).buttons();
        boolean push = buttons.stream().anyMatch(button -> pitch.equals(button.push()));
        boolean pull = buttons.stream().anyMatch(button -> pitch.equals(button.pull()));
        return push && pull ? "both" : push ? "push" : pull ? "pull" : "nowhere";
    }

    /** W061: "Bellows and Strings" blog, 1 May 2010: the highest note of The Seven Stars is G5, pulled on 1.8. */
    @Test
    void highestNoteOfTheSevenStars() {
        assertEquals("G5", InstrumentLines.sounds(InstrumentLines.find("dg-21-accidentals"), "1.8'"));
    }

    /**
     * W043 and W065: tunes2play4fun (Newfoundland lesson site), c. 2022, "Twinkle, Twinkle Little Star": a bass and a
     * chord for every beat, each there in the direction of the melody. The same buttons on G/C and A/D.
     */
    @ParameterizedTest
    @CsvSource({
        "gc-21-accidentals, C c C c F f C c F f C c G g C c",
        "ad-21-accidentals, D d D d G g D d G g D d A a D d"
    })
    void leftHandOfTheLessonIsThereInTheDirectionOfTheMelody(String id, String marks) {
        String directions = "push push push push pull pull push push pull pull push push pull pull push push";
        List<String> lines = InstrumentLines.leftHand(InstrumentLines.find(id));
        String[] mark = marks.split(" ", -1);
        String[] direction = directions.split(" ", -1);
        for (int i = 0; i < mark.length; i++) {
            int field = direction[i].equals("push") ? 1 : 2;
            String wanted = mark[i];
            assertTrue(
                    lines.stream().anyMatch(line -> line.split(" ", -1)[field].equals(wanted)),
                    wanted + " on the " + direction[i]);
        }
    }

    /**
     * W001: Rowan on Mudcat, 10 Jul 2006, and W047: John Kirkpatrick, "How to Play the Anglo" 2, The Concertina
     * Newsletter 10 (1973): fingers of the C row and of the G row. The two homes put the left little finger on column 1
     * and on column 2; the library takes column 1 for home and column 2 for a stretch, so both can be played.
     */
    @ParameterizedTest
    @CsvSource({"W001, 2.3 2.4 2.5 2.6, 3 2 1 1", "W047, 2.2 3.3 3.4 3.5 3.6 3.7 3.8 3.9, 4 3 2 1 1 2 3 4"})
    void publishedFingersReachTheirButtons(String id, String places, String fingers) {
        Instrument anglo = InstrumentLines.find("anglo-cg-30");
        String[] finger = fingers.split(" ", -1);
        String[] place = places.split(" ", -1);
        for (int i = 0; i < place.length; i++) {
            String wanted = place[i];
            Button button = anglo.buttons().stream()
                    .filter(each -> each.id().equals(wanted))
                    .findFirst()
                    .orElseThrow();
            assertTrue(anglo.grip().fingers(button, 1).contains(Integer.valueOf(finger[i])), id + " " + wanted);
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
