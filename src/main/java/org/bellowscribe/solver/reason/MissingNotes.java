package org.bellowscribe.solver.reason;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.model.Choices;
import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/** Finds notes that no button gives and groups that no hand reaches, and the nearest way out. */
public final class MissingNotes {

    private static final int OCTAVE = 12;

    private final Tune tune;
    private final Instrument instrument;
    private final Choices choices;
    private final int moved;

    /**
     * Creates the search.
     *
     * @param moved semitones by which the tune was moved already, so that the way out is told from the sheet
     */
    public MissingNotes(Tune tune, Instrument instrument, int moved) {
        this.tune = tune;
        this.moved = moved;
        this.instrument = instrument;
        choices = new Choices(instrument);
    }

    /** Returns one error for each missing pitch and each group out of reach, in score order; empty if all is there. */
    public List<Diagnostic> diagnose() {
        Map<Pitch, TreeSet<Integer>> missing = new LinkedHashMap<>();
        List<Event> unreached = new ArrayList<>();
        for (Event event : tune.events()) {
            boolean complete = true;
            for (Pitch pitch : event.pitches()) {
                if (!choices.hasButton(pitch)) {
                    missing.computeIfAbsent(pitch, any -> new TreeSet<>()).add(event.measure());
                    complete = false;
                }
            }
            if (complete
                    && choices.of(new Moment(event, tune.seconds(event), false)).isEmpty()) {
                unreached.add(event);
            }
        }
        List<Diagnostic> errors = new ArrayList<>();
        missing.forEach((pitch, measures) -> errors.add(noButton(pitch, measures)));
        unreached.forEach(event -> errors.add(noReach(event)));
        return errors.isEmpty() ? errors : withAdvice(errors);
    }

    private Diagnostic noButton(Pitch pitch, SortedSet<Integer> measures) {
        int first = measures.first();
        String more = measures.size() == 1 ? "" : " (and in %d more measures)".formatted(measures.size() - 1);
        return Diagnostic.error(
                DiagnosticCode.NO_BUTTON,
                place(first),
                "No button of %s gives %s%s.".formatted(instrument.name(), pitch, more));
    }

    private Diagnostic noReach(Event event) {
        String text = "No hand reaches %s together in one bellows direction on %s%s."
                .formatted(event.pitches(), instrument.name(), collision(event));
        String without = without(event);
        return without.isEmpty()
                ? Diagnostic.error(DiagnosticCode.NO_REACH, place(event.measure()), text)
                : Diagnostic.error(DiagnosticCode.NO_REACH, place(event.measure()), text, without);
    }

    // The first two notes that cannot sound together, if two alone are the trouble.
    private String collision(Event event) {
        List<Pitch> pitches = event.pitches();
        for (int i = 0; i < pitches.size(); i++) {
            for (int j = i + 1; j < pitches.size(); j++) {
                if (!isPlayable(event, List.of(pitches.get(i), pitches.get(j)))) {
                    return ": %s and %s %s"
                            .formatted(pitches.get(i), pitches.get(j), apart(pitches.get(i), pitches.get(j)));
                }
            }
        }
        return "";
    }

    private String apart(Pitch one, Pitch other) {
        for (BellowsDirection direction : BellowsDirection.values()) {
            if (!choices.buttons(one, direction).isEmpty()
                    && !choices.buttons(other, direction).isEmpty()) {
                return "lie too far apart";
            }
        }
        return "sound in opposite directions";
    }

    // Which note can be left out so that the hand reaches the others.
    private String without(Event event) {
        List<String> names = new ArrayList<>();
        for (Pitch pitch : event.pitches()) {
            List<Pitch> rest = new ArrayList<>(event.pitches());
            rest.remove(pitch);
            if (isPlayable(event, rest)) {
                names.add(pitch.toString());
            }
        }
        return names.isEmpty()
                ? ""
                : "Maybe leave out %s: a hand reaches the others.".formatted(String.join(" or ", names));
    }

    private boolean isPlayable(Event event, List<Pitch> pitches) {
        List<Integer> notes = event.noteIndices()
                .subList(0, Math.min(pitches.size(), event.noteIndices().size()));
        Event fewer = new Event(event.index(), event.measure(), event.onset(), event.duration(), pitches, notes);
        return !choices.of(new Moment(fewer, tune.seconds(event), false)).isEmpty();
    }

    private Place place(int measureIndex) {
        Measure measure = tune.measures().get(measureIndex);
        return Place.measure(measureIndex + 1, measure.number(), tune.part());
    }

    // The advice stands once, at the end of the list.
    private List<Diagnostic> withAdvice(List<Diagnostic> errors) {
        String advice = advice();
        Diagnostic last = errors.get(errors.size() - 1);
        List<Diagnostic> all = new ArrayList<>(errors.subList(0, errors.size() - 1));
        List<String> both = new ArrayList<>(last.advice());
        both.add(advice);
        all.add(Diagnostic.error(last.code(), last.place(), last.text(), both.toArray(String[]::new)));
        return all;
    }

    private String advice() {
        Integer nearest = nearestTransposition();
        if (nearest == null) {
            return "Maybe choose another instrument: no transposition within an octave puts all notes on this one.";
        }
        int semitones = nearest + moved;
        return semitones == 0
                ? "Maybe leave out --transpose: every note of the sheet is on the instrument."
                : "Maybe --transpose %d: then every note is on the instrument.".formatted(semitones);
    }

    private @Nullable Integer nearestTransposition() {
        for (int distance : octaveFirst()) {
            for (int semitones : new int[] {distance, -distance}) {
                if (isPlayable(semitones)) {
                    return semitones;
                }
            }
        }
        return null;
    }

    // An octave keeps the key, so it is asked for first.
    private static int[] octaveFirst() {
        int[] distances = new int[OCTAVE];
        for (int i = 0; i < OCTAVE; i++) {
            distances[i] = i == 0 ? OCTAVE : i;
        }
        return distances;
    }

    private boolean isPlayable(int semitones) {
        for (Event event : tune.events()) {
            List<Pitch> pitches = new ArrayList<>();
            for (Pitch pitch : event.pitches()) {
                int midi = pitch.midiNumber() + semitones;
                if (midi < 0 || midi > 127) {
                    return false;
                }
                pitches.add(pitch.plus(semitones));
            }
            if (!isPlayable(event, pitches)) {
                return false;
            }
        }
        return true;
    }
}
