package org.bellowscribe.exercise;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LeftHandScribe;
import org.bellowscribe.annotation.OwnPart;
import org.bellowscribe.annotation.PartLook;
import org.bellowscribe.annotation.PartMeasure;
import org.bellowscribe.annotation.PartNote;
import org.bellowscribe.annotation.PartWords;
import org.bellowscribe.annotation.style.PracticeLabels;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.musicxml.OwnScore;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.NoteName;
import org.bellowscribe.theory.Spelling;

/** Prints exercises as a score: each between repeat signs, on a line of its own, with counts. */
public final class ExerciseSheet {

    private final Tune sheet;
    private final Arrangement arrangement;
    private final PracticeLabels labels;
    private final ExerciseTexts texts;
    private final List<PartMeasure> measures = new ArrayList<>();
    private final List<Integer> starts = new ArrayList<>();

    private ExerciseSheet(DecidedTune decided, Style style, List<String> marks) throws DiagnosedException {
        sheet = decided.onSheet();
        arrangement = Arrangement.of(decided, style);
        labels = style.practice();
        texts = new ExerciseTexts(arrangement, marks);
    }

    /**
     * Returns the scores of the exercises of a tune, one for each order; none if there is nothing to practice by itself.
     *
     * @param style labels and signs
     * @param marks ids of the marks of the tune's sheet
     */
    public static List<ScoreDocument> write(DecidedTune decided, Style style, List<String> marks, ExerciseChoice choice)
            throws DiagnosedException {
        List<Exercise> exercises = Exercises.of(decided, choice.times());
        List<ScoreDocument> scores = new ArrayList<>();
        for (Order order : exercises.isEmpty() ? List.<Order>of() : choice.orders()) {
            scores.add(new ExerciseSheet(decided, style, marks).write(order, exercises));
        }
        return scores;
    }

    private ScoreDocument write(Order order, List<Exercise> exercises) throws DiagnosedException {
        for (Exercise exercise : order.of(exercises)) {
            starts.add(measures.size());
            add(exercise);
        }
        String about = order == Order.BLOCKED ? labels.blocked() : labels.mixed();
        OwnPart part = new OwnPart(PartLook.MELODY, sheet.part(), measures);
        return OwnScore.write(part, starts, "%s: %s".formatted(sheet.title(), about));
    }

    private void add(Exercise exercise) {
        if (exercise instanceof Exercise.LeftHandRun run) {
            addLeftHand(run);
            return;
        }
        int first = event(exercise.events().get(0)).measure();
        int last = event(exercise.events().get(exercise.events().size() - 1)).measure();
        for (int index = first; index <= last; index++) {
            measures.add(measure(exercise, sheet.measures().get(index)));
        }
    }

    // What is not practiced is a rest: whole measures are read, and counted, as in the tune.
    private PartMeasure measure(Exercise exercise, Measure measure) {
        List<PartNote> notes = new ArrayList<>();
        List<PartWords> words = new ArrayList<>();
        for (int index : exercise.events()) {
            Event event = event(index);
            if (event.measure() != measure.index()) {
                continue;
            }
            String text = texts.above(exercise, index, starts.size());
            if (!text.isEmpty()) {
                words.add(new PartWords(event.onset(), text));
            }
            Fraction length = Fraction.min(event.duration(), measure.length().minus(event.onset()));
            if (!event.isRest()) {
                notes.add(note(event, length));
            }
        }
        return new PartMeasure(measure, notes, words);
    }

    private PartNote note(Event event, Fraction length) {
        int fifths = sheet.measureOf(event).key().fifths();
        List<NoteName> names = event.pitches().stream()
                .map(pitch -> Spelling.of(pitch.pitchClass(), fifths).from(pitch.midiNumber()))
                .toList();
        return new PartNote(event.onset(), length, names, texts.below(event.index()), texts.fingers(event.index()));
    }

    // Strokes without pitch: the letters tell what to press, and the staff needs no other clef.
    private void addLeftHand(Exercise.LeftHandRun run) {
        OwnPart part = LeftHandScribe.alone(withoutAir(), sheet, false);
        int first = event(run.events().get(0)).measure();
        int last = event(run.events().get(run.events().size() - 1)).measure();
        for (int index = first; index <= last; index++) {
            PartMeasure measure = part.measures().get(index);
            List<PartNote> notes = measure.notes().stream()
                    .map(note ->
                            new PartNote(note.onset(), note.duration(), List.of(), note.syllables(), note.fingers()))
                    .toList();
            List<PartWords> words = new ArrayList<>(measure.words());
            if (index == first) {
                words.removeIf(each -> each.onset().equals(Fraction.ZERO));
                words.add(
                        0,
                        new PartWords(
                                Fraction.ZERO, texts.above(run, run.events().get(0), starts.size())));
            }
            measures.add(new PartMeasure(measure.measure(), notes, words));
        }
    }

    // The air marks are those of both hands.
    private Arrangement withoutAir() {
        Solution whole = arrangement.solution();
        List<Step> steps = whole.steps().stream().map(Step::withoutAir).toList();
        Solution solution = new Solution(steps, whole.again(), whole.cost(), whole.unlike());
        return new Arrangement(
                arrangement.tune(), arrangement.instrument(), solution, arrangement.style(), arrangement.above());
    }

    private Event event(int index) {
        return sheet.events().get(index);
    }
}
