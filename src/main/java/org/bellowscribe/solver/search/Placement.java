package org.bellowscribe.solver.search;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Openings of the places for the marks of a trace. */
final class Placement {

    private final Setting setting;
    private final AirPass pass;
    private final Trace trace;
    private final Openings openings;

    Placement(Setting setting, AirPass pass, Trace trace) {
        this.setting = setting;
        this.pass = pass;
        this.trace = trace;
        openings = new Openings(setting.problem(), setting.graph(), trace.option, trace.move);
    }

    /** Returns openings at which no event is charged more than the pass charged it, or null if there are none. */
    int @Nullable [] exact() {
        Map<Integer, int[]> within = new HashMap<>();
        for (int e : setting.graph().visit) {
            if (!setting.problem().zones().get(e).isFree()) {
                narrow(within, setting.graph().after(e), pass.notDearer(e, trace.end[e]));
            }
        }
        return openings.placed(within);
    }

    /** Returns some openings, in the pass's node if there are any, or null if there are none at all. */
    int @Nullable [] any() {
        if (setting.problem().isFree()) {
            return null;
        }
        int[] anywhere = openings.placed(Map.of());
        if (anywhere == null) {
            return null;
        }
        Map<Integer, int[]> within = new HashMap<>();
        for (int a = 0; a < setting.graph().anchors.size(); a++) {
            narrow(within, setting.graph().anchors.get(a), pass.frame().anchored(a));
        }
        int[] inNode = openings.placed(within);
        return inNode != null && cost(inNode) < cost(anywhere) ? inNode : anywhere;
    }

    private int cost(int[] some) {
        return setting.problem().openingCost(some);
    }

    private static void narrow(Map<Integer, int[]> within, int place, int[] range) {
        within.merge(place, range, (a, b) -> new int[] {Math.max(a[0], b[0]), Math.min(a[1], b[1])});
    }
}
