package org.bellowscribe.exercise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.lefthand.Stroke;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Step;
import org.jspecify.annotations.Nullable;

/** Finds what to practice in a decided tune. */
public final class Exercises {

    private static final int CHUNKS = 3;
    /** Notes before a hard change; with the two of the change and the next a chunk has four notes, at the most five. */
    private static final int BEFORE = 1;

    private static final int STROKES = 4;
    private static final int FEWEST_STROKES = 3;
    private static final int RUN = 4;
    private static final int LEAST_PERCENT = 25;
    private static final int FULL = 100;

    private record Spot(int place, double lack) {}

    private final DecidedTune decided;
    private final Tune tune;
    private final List<Step> steps;
    private final ChangeTimes times;

    private Exercises(DecidedTune decided, ChangeTimes times) {
        this.decided = decided;
        this.times = times;
        tune = decided.tune();
        steps = decided.solution().steps();
    }

    /**
     * Returns the exercises of a tune: measures with air, then chunks from the hardest on, then the left hand.
     *
     * @param times how long changes of the hand take
     */
    public static List<Exercise> of(DecidedTune decided, ChangeTimes times) {
        Exercises exercises = new Exercises(decided, times);
        List<Exercise> all = new ArrayList<>(exercises.airMeasures());
        all.addAll(exercises.chunks());
        Exercise run = exercises.leftHandRun();
        if (run != null) {
            all.add(run);
        }
        return all;
    }

    private List<Exercise> airMeasures() {
        SortedSet<Integer> measures = new TreeSet<>();
        steps.stream()
                .filter(step -> step.air() != AirUse.NONE)
                .forEach(step -> measures.add(step.event().measure()));
        List<Exercise> found = new ArrayList<>();
        measures.forEach(measure -> found.add(new Exercise.AirMeasure(eventsOf(measure))));
        return found;
    }

    private List<Integer> eventsOf(int measure) {
        return tune.events().stream()
                .filter(event -> event.measure() == measure)
                .map(Event::index)
                .toList();
    }

    /** Returns the hardest spots: where the tune leaves least of the time that a change takes; none twice. */
    private List<Exercise> chunks() {
        List<Spot> spots = new ArrayList<>();
        for (int i = 1; i < steps.size(); i++) {
            if (follows(i)) {
                spots.add(new Spot(i, lack(i)));
            }
        }
        spots.sort(Comparator.comparingDouble(Spot::lack).reversed().thenComparingInt(Spot::place));
        List<Exercise> chunks = new ArrayList<>();
        Set<Integer> used = new HashSet<>();
        Set<List<Object>> played = new HashSet<>();
        for (Spot spot : spots) {
            List<Integer> events = around(spot.place());
            boolean fresh = events.stream().noneMatch(used::contains) && played.add(look(events));
            if (chunks.size() < CHUNKS && events.size() > FEWEST_STROKES && fresh) {
                chunks.add(chunk(events));
                used.addAll(events);
            }
        }
        return chunks;
    }

    // A note that is struck right after another, in writing and in playing.
    private boolean follows(int i) {
        Step before = steps.get(i - 1);
        Step step = steps.get(i);
        boolean struck = !before.buttons().isEmpty()
                && !step.buttons().isEmpty()
                && !step.event().heldOver();
        int measure = step.event().measure();
        boolean straight =
                before.event().measure() == measure || tune.playOrder().isStraight(measure);
        return struck && straight;
    }

    private double lack(int i) {
        Step before = steps.get(i - 1);
        return times.of(Change.between(before, steps.get(i))) / tune.seconds(before.event());
    }

    private List<Integer> around(int place) {
        int from = place - 1;
        for (int i = 0; i < BEFORE && from >= 1 && follows(from); i++) {
            from--;
        }
        int to = place;
        while (to - from < STROKES && to + 1 < steps.size() && follows(to + 1)) {
            to++;
        }
        while (to - from < FEWEST_STROKES && from >= 1 && follows(from)) {
            from--;
        }
        List<Integer> events = new ArrayList<>();
        for (int i = from; i <= to; i++) {
            events.add(i);
        }
        return events;
    }

    private List<Object> look(List<Integer> events) {
        List<Object> look = new ArrayList<>();
        for (int event : events) {
            Step step = steps.get(event);
            look.add(List.of(step.buttons(), step.direction(), step.event().duration()));
        }
        return look;
    }

    private Exercise chunk(List<Integer> events) {
        int hardest = events.get(1);
        for (int event : events.subList(1, events.size())) {
            hardest = lack(event) > lack(hardest) ? event : hardest;
        }
        int percent = (int) Math.floor(FULL / Math.max(1, lack(hardest)));
        Change change = Change.between(steps.get(hardest - 1), steps.get(hardest));
        boolean estimated = times.estimated().contains(change);
        return new Exercise.Chunk(events, change, Math.max(LEAST_PERCENT, percent), estimated);
    }

    /** Returns the four measures on end in which the left hand changes its button most often; null if it is silent. */
    private @Nullable Exercise leftHandRun() {
        int[] changes = new int[tune.measures().size() + RUN];
        Stroke before = null;
        for (Stroke stroke : Stroke.of(decided.solution())) {
            int measure = tune.events().get(stroke.event()).measure();
            changes[measure] += before != null && before.button().equals(stroke.button()) ? 0 : 1;
            before = stroke;
        }
        int best = -1;
        int most = 0;
        for (int measure = 0; measure + RUN <= tune.measures().size(); measure++) {
            int sum = 0;
            for (int i = 0; i < RUN; i++) {
                sum += changes[measure + i];
            }
            if (sum > most) {
                most = sum;
                best = measure;
            }
        }
        if (best < 0) {
            return null;
        }
        List<Integer> events = new ArrayList<>();
        for (int i = 0; i < RUN; i++) {
            events.addAll(eventsOf(best + i));
        }
        return new Exercise.LeftHandRun(events);
    }
}
