package org.bellowscribe.solver.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.equal.EqualGroups;
import org.bellowscribe.solver.search.Problem;
import org.jspecify.annotations.Nullable;

/**
 * Which measures of a tune are equal: the same notes and rests at the same times, with the same wanted of the left hand;
 * and which marks count as the same: buttons, bellows direction, left hand and air.
 */
final class EqualMeasures {

    private final Tune tune;
    private final Model model;

    EqualMeasures(Tune tune, Model model) {
        this.tune = tune;
        this.model = model;
    }

    /**
     * Returns the groups of equal measures with what their marks are.
     *
     * @param unit what one point costs in the problem
     */
    EqualGroups groups(int unit) {
        Set<Problem.Edge> edges = new HashSet<>(model.edges);
        Map<String, List<int[]>> groups = new LinkedHashMap<>();
        for (List<Event> measure : measures()) {
            boolean sounds = measure.stream().anyMatch(event -> !event.isRest());
            boolean flows = true;
            for (int i = 1; i < measure.size(); i++) {
                flows &= edges.contains(new Problem.Edge(
                        measure.get(i - 1).index(), measure.get(i).index()));
            }
            if (sounds && flows) {
                groups.computeIfAbsent(content(measure), any -> new ArrayList<>())
                        .add(measure.stream().mapToInt(Event::index).toArray());
            }
        }
        List<List<int[]>> equal =
                groups.values().stream().filter(group -> group.size() > 1).toList();
        return new EqualGroups(equal, signs(equal), SecondOrder.ofUnlikeMeasure(model.rules.unlikeMeasure(), unit));
    }

    private List<List<Event>> measures() {
        Map<Integer, List<Event>> byMeasure = new LinkedHashMap<>();
        for (Event event : tune.events()) {
            byMeasure.computeIfAbsent(event.measure(), any -> new ArrayList<>()).add(event);
        }
        return List.copyOf(byMeasure.values());
    }

    private String content(List<Event> measure) {
        StringBuilder content = new StringBuilder();
        for (Event event : measure) {
            content.append(event.onset()).append(' ').append(event.duration()).append(event.pitches());
            for (WantedSound wanted : model.wanted.get(event.index())) {
                content.append(wanted.offset())
                        .append(' ')
                        .append(wanted.duration())
                        .append(wanted.kind())
                        .append(wanted.harmonies());
            }
            content.append('\n');
        }
        return content.toString();
    }

    /** What a choice and an action look like on the sheet. */
    private record Sign(
            BellowsDirection direction, List<Button> buttons, List<@Nullable LeftHandSound> left, AirUse air) {}

    private int[][][] signs(List<List<int[]>> groups) {
        Map<@Nullable Sign, Integer> known = new HashMap<>();
        int[][][] signs = new int[model.choices.size()][][];
        for (List<int[]> group : groups) {
            for (int[] measure : group) {
                for (int e : measure) {
                    signs[e] = signs(e, known);
                }
            }
        }
        return signs;
    }

    private int[][] signs(int e, Map<@Nullable Sign, Integer> known) {
        List<Choice> choices = model.choices.get(e);
        int[][] signs = new int[choices.size()][];
        for (int c = 0; c < signs.length; c++) {
            List<Action> actions = model.actions(e, choices.get(c).direction());
            signs[c] = new int[actions.size()];
            for (int m = 0; m < signs[c].length; m++) {
                signs[c][m] = known.computeIfAbsent(sign(choices.get(c), actions.get(m)), any -> known.size());
            }
        }
        return signs;
    }

    // A rest shows its direction only if something happens in it: null if nothing does.
    private static @Nullable Sign sign(Choice choice, Action action) {
        List<@Nullable LeftHandSound> left = new ArrayList<>();
        boolean idle = choice.buttons().isEmpty() && action.air() == AirUse.NONE;
        for (LeftHandPlay play : action.leftHand()) {
            left.add(play.sound());
            idle &= play.button() == null;
        }
        return idle ? null : new Sign(choice.direction(), choice.buttons(), left, action.air());
    }
}
