package org.bellowscribe.solver;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;

/**
 * What a pupil has to do in one playing of a marked tune, with all repeats, and how even its sheet is.
 *
 * @param notes note groups that sound
 * @param seconds how long it takes
 * @param reversals changes of bellows direction
 * @param rowChanges changes between rows from note to note
 * @param shifts moves of the hand
 * @param presses times that the air button is pressed
 * @param wanted left-hand sounds that are wanted on the sheet
 * @param silent how many of them are missing
 * @param substituted how many of them sound otherwise than wanted
 * @param twins measures of the sheet that are equal to an earlier one
 * @param unlike how many of them are marked otherwise than the first of their like
 */
record MarkFigures(
        int notes,
        double seconds,
        int reversals,
        int rowChanges,
        int shifts,
        int presses,
        int wanted,
        int silent,
        int substituted,
        int twins,
        int unlike) {

    static MarkFigures of(Tune tune, List<WantedSound> wanted, Solution solution) {
        int[] played = played(tune, solution);
        int[] left = leftHand(solution);
        int[] even = twins(tune, wanted, solution);
        double seconds = tune.eventOrder().stream()
                .mapToDouble(e -> tune.seconds(tune.events().get(e)))
                .sum();
        return new MarkFigures(
                played[0], seconds, played[1], played[2], played[3], played[4], left[0], left[1], left[2], even[0],
                even[1]);
    }

    private static int[] played(Tune tune, Solution solution) {
        int[] counts = new int[5];
        Step before = null;
        for (int e : tune.eventOrder()) {
            Step step = solution.steps().get(e);
            counts[0] += step.buttons().isEmpty() ? 0 : 1;
            counts[4] += step.air() == AirUse.NONE ? 0 : 1;
            if (before != null) {
                counts[1] += before.direction() == step.direction() ? 0 : 1;
                boolean both = !before.buttons().isEmpty() && !step.buttons().isEmpty();
                counts[2] += both && !rows(before).equals(rows(step)) ? 1 : 0;
                counts[3] += step.isMovedFrom(before) ? 1 : 0;
            }
            before = step;
        }
        return counts;
    }

    private static Set<Integer> rows(Step step) {
        return step.buttons().stream().map(Button::row).collect(Collectors.toCollection(TreeSet::new));
    }

    private static int[] leftHand(Solution solution) {
        int[] counts = new int[3];
        for (Step step : solution.steps()) {
            for (LeftHandPlay play : step.leftHand()) {
                LeftHandSound sound = play.sound();
                counts[0]++;
                counts[1] += sound == null ? 1 : 0;
                counts[2] += sound != null && LeftHandFit.of(play.wanted(), play.harmony(), sound) != LeftHandFit.EXACT
                        ? 1
                        : 0;
            }
        }
        return counts;
    }

    private static int[] twins(Tune tune, List<WantedSound> wanted, Solution solution) {
        Map<String, String> marksOfFirst = new HashMap<>();
        int[] counts = new int[2];
        for (int m = 0; m < tune.measures().size(); m++) {
            List<String> music = new ArrayList<>();
            List<String> marks = new ArrayList<>();
            for (Event event : tune.events()) {
                if (event.measure() == m) {
                    music.add(music(event, wanted));
                    marks.add(marks(solution.steps().get(event.index())));
                }
            }
            String first = marksOfFirst.putIfAbsent(music.toString(), marks.toString());
            counts[0] += first == null ? 0 : 1;
            counts[1] += first == null || first.equals(marks.toString()) ? 0 : 1;
        }
        return counts;
    }

    private static String music(Event event, List<WantedSound> wanted) {
        List<String> strokes = wanted.stream()
                .filter(each -> each.event() == event.index())
                .map(each -> each.offset() + " " + each.duration() + each.kind() + each.harmonies())
                .toList();
        return event.onset() + " " + event.duration() + event.pitches() + strokes;
    }

    private static String marks(Step step) {
        List<String> left = step.leftHand().stream()
                .map(play -> String.valueOf(play.sound()))
                .toList();
        return step.direction() + " " + step.buttons() + step.handOn() + left + step.air();
    }
}
