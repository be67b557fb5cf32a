package org.bellowscribe.score;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;

/**
 * A tune as a player reads it: one line of melody with its harmonies, its tempo and the order of play.
 *
 * @param title title, or the file's name without its ending
 * @param part id of the part that holds the melody
 * @param measures every written measure of the part, in score order
 * @param events the note groups and rests that are played at least once, in score order; {@code index} counts from 0
 * @param harmonies chord symbols in score order; empty if the score has none
 * @param tempo tempo
 * @param playOrder order of play
 * @param diagnostics remarks made while reading (notes and warnings only)
 */
public record Tune(
        String title,
        String part,
        List<Measure> measures,
        List<Event> events,
        List<Harmony> harmonies,
        Tempo tempo,
        PlayOrder playOrder,
        List<Diagnostic> diagnostics) {

    /** Copies the lists. */
    public Tune {
        measures = List.copyOf(measures);
        events = List.copyOf(events);
        harmonies = List.copyOf(harmonies);
        diagnostics = List.copyOf(diagnostics);
    }

    /** Returns the events in the order in which they sound, through every repeat and ending; indices into events. */
    public List<Integer> eventOrder() {
        List<List<Integer>> byMeasure = new ArrayList<>();
        measures.forEach(measure -> byMeasure.add(new ArrayList<>()));
        events.forEach(event -> byMeasure.get(event.measure()).add(event.index()));
        List<Integer> order = new ArrayList<>();
        playOrder.measures().forEach(measure -> order.addAll(byMeasure.get(measure)));
        return order;
    }

    /** Returns the tune at another tempo. */
    public Tune at(Tempo other) {
        return new Tune(title, part, measures, events, harmonies, other, playOrder, diagnostics);
    }

    /** Returns how long an event sounds, in seconds. */
    public double seconds(Event event) {
        return tempo.seconds(event.duration());
    }

    /** Returns the measure in which an event starts. */
    public Measure measureOf(Event event) {
        return measures.get(event.measure());
    }
}
