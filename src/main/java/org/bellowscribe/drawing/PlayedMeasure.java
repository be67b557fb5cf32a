package org.bellowscribe.drawing;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.replay.Sounding;
import org.bellowscribe.score.Tune;

/**
 * A measure each time it is played.
 *
 * @param measure 0-based index of the measure
 * @param pass which playing of that measure this is, from 1
 * @param first the first place in the performance, from 0, that begins in it
 * @param end the place after the last
 * @param starts when it begins, in seconds from the start
 * @param ends when it is over; at once if no note begins in it
 */
record PlayedMeasure(int measure, int pass, int first, int end, double starts, double ends) {

    /** Returns the measures section by section, in the order of play. */
    static List<List<PlayedMeasure>> sections(Tune tune, List<Sounding> performance) {
        int[] events = new int[tune.measures().size()];
        tune.events().forEach(event -> events[event.measure()]++);
        int[] passes = new int[events.length];
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
                section.add(new PlayedMeasure(measure, ++passes[measure], place, end, time, ends));
                place = end;
                time = ends;
            }
            sections.add(section);
        }
        return sections;
    }

    /** Returns how long it takes, in seconds; 0 if nothing begins in it. */
    double seconds() {
        return ends - starts;
    }
}
