package org.bellowscribe.annotation.mark;

import static org.bellowscribe.instrument.BellowsDirection.PULL;
import static org.bellowscribe.instrument.BellowsDirection.PUSH;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Sketch;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;

class LeftHandTest {

    private static final LeftHandSound G_BASS = LeftHandSound.bass(PitchClass.parse("G"));
    private static final LeftHandSound G_MAJOR = LeftHandSound.chord(PitchClass.parse("G"), Third.MAJOR);

    @Test
    void aBassIsACapitalLetterAndAChordASmallOne() {
        Sketch sketch = new Sketch(1)
                .push("1.3")
                .bass("G")
                .push("1.3")
                .chord("G", Third.MAJOR)
                .push("1.3")
                .chord("E", Third.MINOR);
        assertEquals("G g em", line(sketch));
    }

    @Test
    void onlyNotesWithASoundHaveALetter() {
        Sketch sketch = new Sketch(1)
                .push("1.3")
                .bass("G")
                .push("1.4")
                .push("1.5")
                .silent()
                .push("1.3");
        assertEquals("G", line(sketch));
    }

    @Test
    void soundsOneAfterTheOtherDuringANoteAreSeparated() {
        Sketch sketch = new Sketch(1).push("1.3").bass("G").left(Fraction.of(1, 2), G_MAJOR);
        assertEquals("G·g", line(sketch));
    }

    @Test
    void soundsStruckTogetherAreJoined() {
        assertEquals("G+g", line(new Sketch(1).push("1.3").bass("G").chord("G", Third.MAJOR)));
    }

    @Test
    void aSoundAfterTheNoteHasBegunHasASeparatorBeforeIt() {
        assertEquals("·g", line(new Sketch(1).push("1.3").left(Fraction.of(1, 2), G_MAJOR)));
    }

    @Test
    void aSoundInARestGoesToTheNoteBeforeIt() {
        Sketch sketch = new Sketch(1)
                .push("1.3")
                .bass("G")
                .rest(PUSH)
                .chord("G", Third.MAJOR)
                .rest(PUSH)
                .chord("G", Third.MAJOR);
        assertEquals("G·g·g", line(sketch));
    }

    @Test
    void aSoundInARestThatBeginsAMeasureIsWrittenAbove() {
        Sketch sketch = new Sketch(1).push("1.3").measure().rest(PUSH).bass("G").push("1.3");
        assertEquals(List.of("1: left G"), words(sketch));
    }

    @Test
    void aSoundInARestAfterATurnIsWrittenAboveWithTheDirection() {
        Sketch sketch = new Sketch(1).push("1.3").bass("G").rest(PULL).bass("D");
        assertEquals(List.of("1: pull", "1: left D"), words(sketch));
        assertEquals("G", line(sketch));
    }

    private static Sketch waltzInARest() {
        Sketch sketch = new Sketch(1).push("1.3").measure().rest(PUSH).bass("G");
        for (int stroke = 1; stroke < 9; stroke++) {
            sketch.left(Fraction.of(stroke, 1), stroke % 3 == 0 ? G_BASS : G_MAJOR);
        }
        return sketch;
    }

    @Test
    void manySoundsInARestAreCutWhereTheyOnlyGoOnAlike() {
        assertEquals(List.of("1: left G·g·g·G·g…"), words(waltzInARest()));
        Sketch turned = new Sketch(1).pull("1.3").rest(PUSH).bass("G");
        for (int stroke = 1; stroke < 9; stroke++) {
            turned.left(Fraction.of(stroke, 1), stroke % 3 == 0 ? G_BASS : G_MAJOR);
        }
        assertEquals(List.of("1: push", "1: left G·g…"), words(turned));
    }

    @Test
    void soundsInARestThatChangeAreAllWritten() {
        Sketch changing = waltzInARest().left(Fraction.of(9, 1), LeftHandSound.bass(PitchClass.parse("C")));
        assertEquals(List.of("1: left G·g·g·G·g·g·G·g·g·C"), words(changing));
    }

    @Test
    void theLegendExplainsTheLettersThatOccur() {
        Sketch sketch = new Sketch(1)
                .push("1.3")
                .bass("G")
                .left(Fraction.of(1, 2), G_MAJOR)
                .push("1.3")
                .left(Fraction.of(1, 2), G_MAJOR)
                .push("1.3")
                .bass("E")
                .chord("E", Third.MINOR);
        assertEquals(
                List.of(
                        "E: bass E",
                        "g: chord of G",
                        "em: chord of E minor",
                        "G·g: one after the other while the note sounds",
                        "·g: after the note has begun",
                        "E+em: both together"),
                Texts.legend(new LeftHand(), sketch.arrangement()));
    }

    private static String line(Sketch sketch) {
        return Texts.line(new LeftHand(), sketch.arrangement(), "left-hand");
    }

    private static List<String> words(Sketch sketch) {
        return Texts.words(new LeftHand(), sketch.arrangement());
    }
}
