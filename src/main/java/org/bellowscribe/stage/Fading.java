package org.bellowscribe.stage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.MarkAspect;
import org.bellowscribe.annotation.MarkLines;
import org.bellowscribe.annotation.PlayNeighbors;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.guess.Guesses;
import org.bellowscribe.lefthand.Stroke;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Fraction;

/**
 * Which marks of a tune a fading sheet still has. A note that the rules of thumb guess right ({@link Guesses}) loses its
 * button, its finger and its direction: on the last sheet wherever it is, on the one before it only where nothing changes.
 * The left hand loses its letters in a measure that it plays like the measure before. Place of the hand, openings and air
 * stay on all sheets: no rule of thumb guesses them.
 */
final class Fading {

    // The counts are the same for every note of a measure: they stay.
    private static final Set<String> OTHER_LINES = Set.of("counts");

    private final Stage stage;
    private final Arrangement arrangement;
    private final SortedSet<Integer> guessed;
    private final SortedSet<Integer> changes = new TreeSet<>();
    private final SortedSet<Integer> repeated = new TreeSet<>();

    /** Looks at a tune. */
    Fading(StageTune tune, Arrangement arrangement) {
        stage = tune.stage();
        this.arrangement = arrangement;
        guessed = Guesses.of(tune.tune()).right();
        findChanges();
        findRepeated();
    }

    /** Returns true if the sheet has a mark. */
    boolean keeps(Mark mark) {
        int event = mark.event();
        if (mark instanceof Mark.Finger || mark instanceof Mark.Sign) {
            return isMarked(event);
        }
        if (mark instanceof Mark.Syllable syllable) {
            boolean left = MarkLines.aspect(syllable.line()) == MarkAspect.LEFT_HAND
                    || syllable.line().equals(MarkLines.LEFT_HAND_FINGERS);
            if (OTHER_LINES.contains(syllable.line())) {
                return true;
            }
            return left ? !repeated.contains(measure(event)) : isMarked(event);
        }
        boolean direction = mark instanceof Mark.Words words && words.topic() == Topic.DIRECTION;
        return !direction || arrangement.step(event).event().isRest() || isMarked(event);
    }

    private boolean isMarked(int event) {
        return !guessed.contains(event) || (stage == Stage.FADING && changes.contains(event));
    }

    private int measure(int event) {
        return arrangement.step(event).event().measure();
    }

    // The bellows turn, the row or the place of the hand is another, or a section begins.
    private void findChanges() {
        PlayNeighbors neighbors = PlayNeighbors.of(arrangement.tune());
        changes.addAll(neighbors.sectionStarts());
        for (Step step : arrangement.pressed()) {
            int event = step.event().index();
            boolean changed = neighbors.before(event).stream()
                    .map(arrangement::step)
                    .anyMatch(before -> before.direction() != step.direction()
                            || step.isMovedFrom(before)
                            || row(before) != row(step));
            if (changed) {
                changes.add(event);
            }
        }
    }

    private static int row(Step step) {
        return step.buttons().isEmpty() ? 0 : step.buttons().get(0).row();
    }

    private record Sound(Fraction onset, String label) {}

    // Measures that the left hand plays like the one before, on every pass.
    private void findRepeated() {
        Tune tune = arrangement.tune();
        Map<Integer, List<Sound>> sounds = new HashMap<>();
        for (Stroke stroke : Stroke.of(arrangement.solution())) {
            sounds.computeIfAbsent(stroke.step().event().measure(), any -> new ArrayList<>())
                    .add(new Sound(
                            stroke.step().event().onset().plus(stroke.offset()),
                            stroke.sound().label()));
        }
        List<Integer> order = tune.playOrder().measures();
        SortedSet<Integer> others = new TreeSet<>();
        for (int i = 0; i < order.size(); i++) {
            List<Sound> own = sounds.getOrDefault(order.get(i), List.of());
            boolean same = i > 0 && own.equals(sounds.getOrDefault(order.get(i - 1), List.of()));
            (same ? repeated : others).add(order.get(i));
        }
        repeated.removeAll(others);
    }
}
