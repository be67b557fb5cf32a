package org.bellowscribe.annotation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What notation programs need of the marks, held against tunes made at random. */
class AnnotationRulesTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void everySelectionOfMarksKeepsTheRules(int seed) throws DiagnosedException {
        Random random = new Random(seed);
        Sketch sketch = sketch(random);
        List<String> ids = new ArrayList<>();
        for (Annotator annotator : Annotators.all()) {
            if (random.nextInt(4) > 0) {
                ids.add(annotator.id());
            }
        }
        for (Style style : StyleLibrary.all()) {
            Arrangement tune = sketch.arrangement(style);
            List<Annotation> annotations =
                    Annotators.annotate(new Arrangement(tune.tune(), tune.instrument(), tune.solution(), style), ids);
            assertInOrder(annotations);
            assertOneOfEachKindAtANote(annotations);
            assertLinesAppearFromTheTop(annotations);
            assertTextsAreSafe(annotations);
        }
    }

    private static void assertInOrder(List<Annotation> annotations) {
        for (int i = 1; i < annotations.size(); i++) {
            assertTrue(annotations.get(i - 1).noteIndex() <= annotations.get(i).noteIndex());
        }
    }

    private static void assertOneOfEachKindAtANote(List<Annotation> annotations) {
        Set<String> seen = new HashSet<>();
        for (Annotation annotation : annotations) {
            String line = annotation instanceof Annotation.Syllable syllable ? " line " + syllable.line() : "";
            // The left hand may change its sound while a note lasts.
            String moment = annotation instanceof Annotation.Symbol symbol ? " after " + symbol.offset() : "";
            String key = annotation.getClass().getSimpleName() + line + " at " + annotation.noteIndex() + moment;
            assertTrue(seen.add(key), key);
        }
    }

    private static void assertLinesAppearFromTheTop(List<Annotation> annotations) {
        Map<Integer, Set<Integer>> byNote = new HashMap<>();
        Map<Integer, String> names = new HashMap<>();
        Set<Integer> seen = new HashSet<>();
        int last = -1;
        for (Annotation annotation : annotations) {
            if (annotation instanceof Annotation.Syllable syllable) {
                Set<Integer> here = byNote.computeIfAbsent(syllable.noteIndex(), key -> new HashSet<>());
                if (seen.add(syllable.line())) {
                    assertEquals(syllable.line(), here.size(), "lines before the first of a line");
                    assertEquals(++last, syllable.line(), "lines without a gap");
                }
                here.add(syllable.line());
                assertEquals(syllable.name(), names.computeIfAbsent(syllable.line(), key -> syllable.name()));
            }
        }
    }

    // What all five programs show as written (measured, as in cli/MarksShownTest). An en dash stands where a line says
    // nothing, an em dash where air goes on; neither is the hyphen that joins syllables.
    private static void assertTextsAreSafe(List<Annotation> annotations) {
        for (Annotation annotation : annotations) {
            if (annotation instanceof Annotation.Syllable syllable) {
                assertTrue(syllable.text().matches("[A-Za-z0-9#()/=+·′″&.‹–]+"), syllable.text());
            } else if (annotation instanceof Annotation.Words words) {
                assertTrue(words.text().matches("[\\p{IsLatin}0-9#/+, ·&.':%<>()=●○—]+"), words.text());
            }
        }
    }

    private static Sketch sketch(Random random) {
        Sketch sketch = new Sketch(1 + random.nextInt(3));
        int length = 1 + random.nextInt(30);
        for (int i = 0; i < length; i++) {
            if (random.nextInt(5) == 0) {
                sketch.measure();
            }
            addEvent(sketch, random);
            if (random.nextInt(3) == 0) {
                sketch.air(AirUse.values()[random.nextInt(3)]);
            }
            if (random.nextBoolean()) {
                LeftHandSound sound = LeftHandSound.bass(PitchClass.of(random.nextInt(12)));
                sketch.left(Fraction.of(random.nextInt(2), 2), sound);
            }
            sketch.hand(3 + random.nextInt(2)).open(random.nextInt(12000));
        }
        return sketch;
    }

    private static void addEvent(Sketch sketch, Random random) {
        String button = "1." + (1 + random.nextInt(11));
        switch (random.nextInt(6)) {
            case 0 -> sketch.rest(BellowsDirection.PULL);
            case 1 -> sketch.rest(BellowsDirection.PUSH).unwritten();
            case 2 -> sketch.pull(button, "1.12").held();
            case 3 -> sketch.pull(button);
            default -> sketch.push(button);
        }
    }
}
