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
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.model.Choices;
import org.bellowscribe.theory.Pitch;

/** Finds notes that no button gives and groups that no hand reaches. */
public final class MissingNotes {

    private final Tune tune;
    private final Instrument instrument;
    private final Choices choices;

    /**
     * Creates the search.
     */
    public MissingNotes(Tune tune, Instrument instrument) {
        this.tune = tune;
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
        return errors;
    }

    private Diagnostic noButton(Pitch pitch, SortedSet<Integer> measures) {
        int first = measures.first();
        String more = measures.size() == 1
                ? ""
                : measures.size() == 2
                        ? " (and in 1 more measure)"
                        : " (and in %d more measures)".formatted(measures.size() - 1);
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

    private String collision(Event event) {
        return ": " + new TooWide(choices, event.pitches()).words();
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
}
