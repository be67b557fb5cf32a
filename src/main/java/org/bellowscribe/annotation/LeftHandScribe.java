package org.bellowscribe.annotation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.annotation.style.LeftHandLabels;
import org.bellowscribe.lefthand.LeftHandFingers;
import org.bellowscribe.lefthand.Stroke;
import org.bellowscribe.lefthand.Voicing;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.NoteName;
import org.jspecify.annotations.Nullable;

/** Writes out what the left hand plays. */
public final class LeftHandScribe {

    private final Arrangement arrangement;
    private final Tune sheet;
    private final @Nullable LeftHandFingers fingers;

    private LeftHandScribe(Arrangement arrangement, Tune sheet, boolean withFingers) {
        this.arrangement = arrangement;
        this.sheet = sheet;
        fingers = withFingers ? LeftHandFingers.of(arrangement.tune(), arrangement.solution()) : null;
    }

    /**
     * Returns the part.
     *
     * @param sheet the tune as the sheet has it, whose keys are written; the tune of the arrangement unless the sheet keeps
     *     its notes in another key
     * @param withFingers true to write fingers
     */
    public static OwnPart part(Arrangement arrangement, Tune sheet, boolean withFingers) {
        return new LeftHandScribe(arrangement, sheet, withFingers).part(Map.of());
    }

    /**
     * Returns the part for practicing without the melody: with the directions at its strokes and the air marks of the
     * tune.
     *
     * @param sheet the tune as the sheet has it
     * @param withFingers true to write fingers
     */
    public static OwnPart alone(Arrangement arrangement, Tune sheet, boolean withFingers) {
        return alone(arrangement, sheet, withFingers, List.of());
    }

    /**
     * Returns the part for practicing without the melody, with more words above it.
     *
     * @param sheet the tune as the sheet has it
     * @param withFingers true to write fingers
     * @param more marks, of which the words are written
     */
    public static OwnPart alone(Arrangement arrangement, Tune sheet, boolean withFingers, List<Mark> more) {
        LeftHandScribe scribe = new LeftHandScribe(arrangement, sheet, withFingers);
        return scribe.part(LeftHandWords.of(arrangement, more));
    }

    private OwnPart part(Map<Integer, String> words) {
        List<List<PartNote>> notes = new ArrayList<>();
        List<List<PartWords>> texts = new ArrayList<>();
        sheet.measures().forEach(measure -> {
            notes.add(new ArrayList<>());
            texts.add(new ArrayList<>());
        });
        Map<PartMoment, List<Stroke>> moments = moments();
        moments.forEach((moment, strokes) -> notes.get(moment.measure()).add(note(moment, strokes)));
        words.forEach((event, text) -> {
            PartMoment moment = PartMoment.of(sheet, sheet.events().get(event), Fraction.ZERO);
            texts.get(moment.measure()).add(new PartWords(moment.onset(), text));
        });
        List<PartMeasure> measures = new ArrayList<>();
        for (Measure measure : sheet.measures()) {
            measures.add(
                    new PartMeasure(measure, cut(notes.get(measure.index()), measure), texts.get(measure.index())));
        }
        return new OwnPart(sheet.part(), measures);
    }

    private Map<PartMoment, List<Stroke>> moments() {
        Map<PartMoment, List<Stroke>> moments = new LinkedHashMap<>();
        for (Stroke stroke : Stroke.of(arrangement.solution())) {
            PartMoment moment = PartMoment.of(sheet, stroke.step().event(), stroke.offset());
            moments.computeIfAbsent(moment, any -> new ArrayList<>()).add(stroke);
        }
        return moments;
    }

    private PartNote note(PartMoment moment, List<Stroke> strokes) {
        LeftHandLabels labels = arrangement.style().leftHand();
        int fifths = sheet.measures().get(moment.measure()).key().fifths();
        List<NoteName> notes = new ArrayList<>();
        List<String> letters = new ArrayList<>();
        List<Integer> digits = new ArrayList<>();
        Fraction duration = strokes.get(0).duration();
        for (Stroke stroke : strokes) {
            Voicing.notes(stroke.sound(), -arrangement.above(), fifths).stream()
                    .filter(note -> !notes.contains(note))
                    .forEach(notes::add);
            letters.add(labels.label(stroke.sound()));
            duration = Fraction.min(duration, stroke.duration());
            if (fingers != null) {
                digits.add(fingers.finger(stroke.step(), stroke.play()));
            }
        }
        notes.sort(Comparator.comparingInt(NoteName::midiNumber));
        return new PartNote(moment.onset(), duration, notes, String.join(labels.together(), letters), digits);
    }

    /** Ends each note where the next one or the bar line comes. */
    private static List<PartNote> cut(List<PartNote> notes, Measure measure) {
        List<PartNote> sorted = new ArrayList<>(notes);
        sorted.sort(Comparator.comparing(PartNote::onset));
        List<PartNote> cut = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            PartNote note = sorted.get(i);
            Fraction next = i + 1 < sorted.size() ? sorted.get(i + 1).onset() : measure.length();
            Fraction room = Fraction.min(next, measure.length()).minus(note.onset());
            Fraction duration = Fraction.min(note.duration(), room);
            if (duration.isPositive()) {
                cut.add(new PartNote(note.onset(), duration, note.notes(), note.label(), note.fingers()));
            }
        }
        return cut;
    }
}
