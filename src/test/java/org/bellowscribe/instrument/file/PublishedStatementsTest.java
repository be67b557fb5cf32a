package org.bellowscribe.instrument.file;

import static java.util.Objects.requireNonNull;
import static org.bellowscribe.instrument.file.InstrumentLines.find;
import static org.bellowscribe.instrument.file.InstrumentLines.sounds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.theory.Pitch;
import org.junit.jupiter.api.Test;

/** What players have published about buttons, tried on the library. A button with ' after it is pulled. */
class PublishedStatementsTest {

    /** S7: "Big Nick", Cajun lessons: the scale of C on a one-row. */
    @Test
    void scaleOfCOnAOneRow() {
        assertEquals("C4 D4 E4 F4 G4 A4 B4 C5", sounds(find("c-10"), "1.3 1.3' 1.4 1.4' 1.5 1.5' 1.6' 1.6"));
    }

    /** S18: "Bellows and Strings" blog, 2010: the scale of G along the G row of a D/G. */
    @Test
    void scaleOfGOnTheGRow() {
        assertEquals("G4 A4 B4 C5 D5 E5 F#5 G5", sounds(find("dg-21"), "2.3 2.3' 2.4 2.4' 2.5 2.5' 2.6' 2.6"));
    }

    /** S12: "Concertutor", cross-rowing on the Anglo: B c d e all on the push. */
    @Test
    void fourNotesOfTheAngloOnThePush() {
        assertEquals("B4 C5 D5 E5", sounds(find("anglo-cg-30"), "3.4 2.6 3.5 2.7"));
    }

    /** S12: G e d c B A G with two changes of direction (the pure G row needs six; S12 counts seven). */
    @Test
    void fallingLineOfTheAngloAcrossTheRows() {
        assertEquals("G5 E5 D5 C5 B4 A4 G4", sounds(find("anglo-cg-30"), "3.6 2.7 3.5 2.6 3.4 3.3' 3.3"));
        assertEquals("G5 E5 D5 C5 B4 A4 G4", sounds(find("anglo-cg-30"), "3.6 3.5' 3.5 3.4' 3.4 3.3' 3.3"));
        assertEquals(2, turns("3.6 2.7 3.5 2.6 3.4 3.3' 3.3"));
        assertEquals(6, turns("3.6 3.5' 3.5 3.4' 3.4 3.3' 3.3"));
    }

    /** S12: A B c d e f# all on the pull. */
    @Test
    void sixNotesOfTheAngloOnThePull() {
        assertEquals("A4 B4 C5 D5 E5 F#5", sounds(find("anglo-cg-30"), "3.3' 2.6' 3.4' 2.7' 3.5' 3.6'"));
    }

    /** S24: John Kirkpatrick, "How to Play the Anglo": pushing buttons 1, 3, 4, 5 and 6 to 9 sounds the chord of the row. */
    @Test
    void chordOfTheCRowOfTheAnglo() {
        assertEquals("C3 C4 E4 G4 C5 E5 G5 C6", sounds(find("anglo-cg-20"), "1.1 1.3 1.4 1.5 1.6 1.7 1.8 1.9"));
    }

    /** S2: organetto.it (ed. I. Salvi): on a G/C, push 6 of the G row is G4 and push 3 of the C row is middle C. */
    @Test
    void rowsOfGcMeetAroundMiddleC() {
        assertEquals("G4 C4", sounds(find("gc-21"), "1.6 2.3"));
    }

    /** S3: Rod Stradling: the G row of a D/G lies an octave above the G row of a G/C. */
    @Test
    void gRowOfDgLiesAnOctaveAboveThatOfGc() {
        assertEquals("G4", sounds(find("dg-21"), "2.3"));
        assertEquals("G3", sounds(find("gc-21"), "1.3"));
    }

    /** S9: Han Speek, "Differences between the Irish system and other 2-row boxes": the notes that sound both ways. */
    @Test
    void bothWayNotesOfTheSemitoneSystems() {
        assertEquals(Set.of("E", "B"), bothWays(find("bc-21")));
        assertEquals(Set.of("F#", "C#"), bothWays(find("c-sharp-d-21")));
    }

    /** S22: Rick Mohr, "Melodeon: improving an imperfect world?": only D pushing; only E, C and C# pulling. */
    @Test
    void naturalNotesOfDgThatSoundOneWayOnly() {
        Set<String> push = names(find("dg-21-accidentals"), BellowsDirection.PUSH);
        Set<String> pull = names(find("dg-21-accidentals"), BellowsDirection.PULL);
        Set<String> home = Set.of("D", "E", "F#", "G", "A", "B", "C", "C#");
        assertEquals(
                Set.of("D"), home.stream().filter(name -> !pull.contains(name)).collect(Collectors.toSet()));
        assertEquals(
                Set.of("E", "C", "C#"),
                home.stream().filter(name -> !push.contains(name)).collect(Collectors.toSet()));
    }

    /** The same in the version with low notes: its button 1 pull, the fifth of S1, adds a pulled D. */
    @Test
    void lowNotesOfDgAddAPulledD() {
        assertEquals("D4", sounds(find("dg-21"), "2.1'"));
        assertTrue(names(find("dg-21"), BellowsDirection.PULL).contains("D"));
    }

    /** S18: in "The Sloe" the B is pushed on the G row because the G chord is wanted: both are there on the push only. */
    @Test
    void bOverTheGChordIsButtonFourOfTheGRow() {
        Instrument box = find("dg-21");
        List<String> places = box.buttons().stream()
                .filter(button -> Pitch.parse("B4").equals(button.push()))
                .map(Button::id)
                .toList();
        assertEquals(List.of("2.4"), places);
        assertEquals("1.3 g d", InstrumentLines.leftHand(box).get(2));
        assertTrue(InstrumentLines.leftHand(box).stream().noneMatch(line -> line.endsWith(" g")));
    }

    /** S18: Bm is the B bass with the d chord, both pushed; Am is the A bass with the c chord, both pulled. */
    @Test
    void minorChordsOutOfABassAndAnotherChord() {
        List<String> lines = InstrumentLines.leftHand(find("dg-21"));
        assertTrue(lines.contains("2.2 B E") && lines.contains("1.1 d a"), lines::toString);
        assertTrue(lines.contains("1.2 D A") && lines.contains("2.3 c c"), lines::toString);
    }

    /** G. Coover, concertina.net topic 20322: "Oh! Susanna" (Foster, 1848) needs three buttons of one row. */
    @Test
    void ohSusannaLiesOnButtonsThreeToFive() {
        assertEquals(
                "C4 D4 E4 G4 G4 A4 G4 E4 C4 D4 E4 E4 D4 C4 D4",
                sounds(find("c-10"), "1.3 1.3' 1.4 1.5 1.5 1.5' 1.5 1.4 1.3 1.3' 1.4 1.4 1.3' 1.3 1.3'"));
        assertEquals(
                "F4 F4 A4 A4 A4 G4 G4 E4 C4 D4", sounds(find("c-10"), "1.4' 1.4' 1.5' 1.5' 1.5' 1.5 1.5 1.4 1.3 1.3'"));
    }

    /** The same on a one-row in D: the numbers stay, the notes are two semitones higher. */
    @Test
    void ohSusannaHasTheSameButtonsOnTheDRow() {
        assertEquals(
                "D4 E4 F#4 A4 A4 B4 A4 F#4 D4 E4 F#4 F#4 E4 D4 E4",
                sounds(find("d-10"), "1.3 1.3' 1.4 1.5 1.5 1.5' 1.5 1.4 1.3 1.3' 1.4 1.4 1.3' 1.3 1.3'"));
    }

    /** From memory: four stops, low, two middle, high. */
    @Test
    void fourStopsOfAOneRow() {
        assertEquals(List.of(-1, 0, 0, 1), find("g-10").air().voices());
    }

    private static int turns(String places) {
        String[] buttons = places.split(" ", -1);
        int turns = 0;
        for (int i = 1; i < buttons.length; i++) {
            turns += buttons[i].endsWith("'") == buttons[i - 1].endsWith("'") ? 0 : 1;
        }
        return turns;
    }

    private static Set<String> bothWays(Instrument instrument) {
        Set<String> names = names(instrument, BellowsDirection.PUSH);
        names.retainAll(names(instrument, BellowsDirection.PULL));
        return names;
    }

    private static Set<String> names(Instrument instrument, BellowsDirection direction) {
        return instrument.buttons().stream()
                .map(button -> button.pitch(direction))
                .filter(Objects::nonNull)
                .map(pitch -> requireNonNull(pitch).pitchClass().toString())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
