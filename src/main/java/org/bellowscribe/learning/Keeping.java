package org.bellowscribe.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.Task;

/**
 * Which marks of a tune can be kept together. If not all, they are taken measure by measure, and a measure that does not go
 * with those before it is taken without its air, or else left out.
 *
 * @param tune the tune with the marks that can be kept
 * @param leftOut what had to be left out, in words
 */
record Keeping(TaughtTune tune, List<String> leftOut) {

    Keeping {
        leftOut = List.copyOf(leftOut);
    }

    static Keeping of(TaughtTune given) {
        Task task = Marking.bounded(given.task());
        if (isPlayable(task, given.marks())) {
            return new Keeping(given, List.of());
        }
        List<String> names = new Whereabouts(task.tune()).measures();
        Map<Integer, List<Pin>> byMeasure = new TreeMap<>();
        for (Pin pin : given.marks().list()) {
            int measure = task.tune().events().get(pin.event()).measure();
            byMeasure.computeIfAbsent(measure, any -> new ArrayList<>()).add(pin);
        }
        List<Pin> kept = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        for (Map.Entry<Integer, List<Pin>> measure : byMeasure.entrySet()) {
            String name = "%s, measure %s".formatted(given.name(), names.get(measure.getKey()));
            if (addIfPlayable(task, kept, measure.getValue())) {
                continue;
            }
            boolean withoutAir = addIfPlayable(
                    task,
                    kept,
                    measure.getValue().stream().map(Keeping::withoutAir).toList());
            leftOut.add(withoutAir ? name + ": its air only" : name);
        }
        return new Keeping(new TaughtTune(given.name(), given.task(), new Pins(kept)), leftOut);
    }

    private static boolean addIfPlayable(Task task, List<Pin> kept, List<Pin> more) {
        List<Pin> all = new ArrayList<>(kept);
        all.addAll(more);
        boolean playable = isPlayable(task, new Pins(all));
        if (playable) {
            kept.addAll(more);
        }
        return playable;
    }

    private static Pin withoutAir(Pin pin) {
        return new Pin(pin.event(), pin.direction(), pin.buttons(), pin.fingers(), pin.handOn(), pin.leftHand(), null);
    }

    private static boolean isPlayable(Task task, Pins pins) {
        return Solver.attempt(task.with(pins)) != null;
    }
}
