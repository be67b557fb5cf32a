package org.bellowscribe.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.Whereabouts;

/**
 * One playing of a measure.
 *
 * @param measure 0-based index of the measure
 * @param number what people call it
 * @param pass which playing of it this is, from 1
 * @param passes how often it is played in all
 * @param first 0-based place of its first event in the performance
 * @param events how many events begin in it
 */
record PlayedMeasure(int measure, String number, int pass, int passes, int first, int events) {

    /** Returns the measures of a tune in the order in which they sound. */
    static List<PlayedMeasure> of(Tune tune) {
        List<String> numbers = new Whereabouts(tune).measures();
        int[] events = new int[tune.measures().size()];
        tune.events().forEach(event -> events[event.measure()]++);
        Map<Integer, Integer> passes = new HashMap<>();
        tune.playOrder().measures().forEach(measure -> passes.merge(measure, 1, Integer::sum));
        Map<Integer, Integer> pass = new HashMap<>();
        List<PlayedMeasure> played = new ArrayList<>();
        int first = 0;
        for (int measure : tune.playOrder().measures()) {
            played.add(new PlayedMeasure(
                    measure,
                    numbers.get(measure),
                    pass.merge(measure, 1, Integer::sum),
                    passes.getOrDefault(measure, 1),
                    first,
                    events[measure]));
            first += events[measure];
        }
        return played;
    }

    /** Returns the place behind its last event in the performance. */
    int end() {
        return first + events;
    }

    /** Returns which playing it is in words, such as {@code 2nd time}; empty where it is played once. */
    String time() {
        return passes == 1 ? "" : ordinal(pass) + " time";
    }

    /** Returns its name, such as {@code measure 7} or {@code measure 7, 2nd time}. */
    String name() {
        return "measure " + number + (passes == 1 ? "" : ", " + time());
    }

    private static String ordinal(int count) {
        boolean teen = count / 10 % 10 == 1;
        String ending = teen ? "th" : count % 10 == 1 ? "st" : count % 10 == 2 ? "nd" : count % 10 == 3 ? "rd" : "th";
        return count + ending;
    }
}
