package org.bellowscribe.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bellowscribe.solver.Step;

/**
 * At how many notes of the sheet two ways differ.
 *
 * @param notes notes of the melody, those struck together once, and rests
 * @param different how many of them differ in anything
 * @param byKind by what it is (such as {@code the button}) at how many; only what differs anywhere
 * @param events 0-based indices of their events
 */
record Differences(int notes, int different, Map<String, Integer> byKind, Set<Integer> events) {

    private static final List<String> KINDS =
            List.of("the direction of the bellows", "the button", "the finger", "the left hand", "the air button");

    static Differences of(ComparedTune tune) {
        List<Step> a = tune.a().tune().solution().steps();
        List<Step> b = tune.b().tune().solution().steps();
        Map<String, Integer> byKind = new LinkedHashMap<>();
        KINDS.forEach(kind -> byKind.put(kind, 0));
        Set<Integer> events = new LinkedHashSet<>();
        int different = 0;
        for (int i = 0; i < a.size(); i++) {
            Cell one = Cell.of(a.get(i));
            Cell other = Cell.of(b.get(i));
            for (int kind = 0; kind < KINDS.size(); kind++) {
                boolean differs = !one.all().get(kind).equals(other.all().get(kind));
                byKind.merge(KINDS.get(kind), differs ? 1 : 0, Integer::sum);
            }
            if (!one.equals(other)) {
                different++;
                events.add(a.get(i).event().index());
            }
        }
        byKind.values().removeIf(times -> times == 0);
        return new Differences(a.size(), different, byKind, events);
    }

    /** Returns one sentence. */
    String words() {
        if (different == 0) {
            return "The two ways are the same.";
        }
        List<String> kinds = new ArrayList<>();
        byKind.forEach((kind, times) -> kinds.add("%s at %d".formatted(kind, times)));
        return "The two ways differ at %d of %d notes and rests: %s."
                .formatted(different, notes, String.join(", ", kinds));
    }
}
