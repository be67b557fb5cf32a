package org.bellowscribe.replay;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.Whereabouts;

/**
 * A measure each time it is played.
 *
 * @param measure 0-based index of the measure
 * @param number what people call it
 * @param pass which playing of that measure this is, from 1
 * @param passes how often it is played in all
 * @param first the first place in the performance, from 0, that begins in it
 * @param end the place after the last
 * @param starts when it begins, in seconds from the start
 * @param ends when it is over; at once if no note begins in it
 */
public record PlayedMeasure(
        int measure, String number, int pass, int passes, int first, int end, double starts, double ends) {

    /** Returns the measures of a tune section by section, in the order of play. */
    public static List<List<PlayedMeasure>> sections(Tune tune, List<Sounding> performance) {
        List<String> numbers = new Whereabouts(tune).measures();
        int[] events = new int[tune.measures().size()];
        tune.events().forEach(event -> events[event.measure()]++);
        int[] passes = new int[events.length];
        tune.playOrder().measures().forEach(measure -> passes[measure]++);
        int[] pass = new int[events.length];
        List<List<PlayedMeasure>> sections = new ArrayList<>();
        int place = 0;
        double time = 0;
        for (List<Integer> run : tune.playOrder().runs()) {
            List<PlayedMeasure> section = new ArrayList<>();
            for (int measure : run) {
                int end = place + events[measure];
                double ends = time;
                for (Sounding sounding : performance.subList(place, end)) {
                    ends += sounding.seconds();
                }
                section.add(new PlayedMeasure(
                        measure, numbers.get(measure), ++pass[measure], passes[measure], place, end, time, ends));
                place = end;
                time = ends;
            }
            sections.add(section);
        }
        return sections;
    }

    /** Returns the measures of a tune in the order of play. */
    public static List<PlayedMeasure> of(Tune tune, List<Sounding> performance) {
        return sections(tune, performance).stream().flatMap(Collection::stream).toList();
    }

    /** Returns how long it takes, in seconds; 0 if nothing begins in it. */
    public double seconds() {
        return ends - starts;
    }

    /** Returns which playing it is in words, such as {@code 2nd time}; empty where it is played once. */
    public String time() {
        return passes == 1 ? "" : ordinal(pass) + " time";
    }

    private static String ordinal(int count) {
        boolean teen = count / 10 % 10 == 1;
        String ending = teen ? "th" : count % 10 == 1 ? "st" : count % 10 == 2 ? "nd" : count % 10 == 3 ? "rd" : "th";
        return count + ending;
    }
}
