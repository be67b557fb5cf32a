package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.PlayNeighbors;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.annotation.style.Meaning;
import org.bellowscribe.annotation.style.Template;
import org.bellowscribe.instrument.OtherBox;
import org.bellowscribe.solver.Step;

/** The place of the hand along the rows: at the first note and wherever the hand has moved. Strapped hands stay. */
public final class HandPlace implements Annotator {

    @Override
    public String id() {
        return "hand";
    }

    @Override
    public String summary() {
        return "The button under the index finger, above the first note and wherever the hand has moved.";
    }

    @Override
    public boolean byDefault() {
        return true;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        if (arrangement.instrument().grip().strapped()) {
            return List.of();
        }
        PlayNeighbors neighbors = PlayNeighbors.of(arrangement.tune());
        List<Mark> marks = new ArrayList<>();
        // Where the hand lies on the outer row and on the inner ones since the last mark.
        Map<Boolean, Integer> told = new HashMap<>();
        for (Step step : arrangement.pressed()) {
            boolean moved = neighbors.before(step.event().index()).stream()
                    .anyMatch(before -> step.isMovedFrom(arrangement.step(before)));
            Integer before = told.put(step.isOnInnerRow(), step.handOn());
            boolean crept = before != null && before != step.handOn();
            if (marks.isEmpty() || moved || crept) {
                told.clear();
                told.put(step.isOnInnerRow(), step.handOn());
                String words = text(arrangement, step);
                marks.add(new Mark.Words(step.event().index(), Topic.HAND, words));
            }
        }
        return marks;
    }

    // By the number of the button, or by the note that it pushes: the note is the same on boxes whose numbers differ.
    private static String text(Arrangement arrangement, Step step) {
        String numbers = Stream.concat(
                        Stream.of(0),
                        arrangement.instrument().alsoFor().stream().map(OtherBox::shift))
                .map(shift -> String.valueOf(step.handOn() + shift))
                .distinct()
                .collect(Collectors.joining("/"));
        int row = step.buttons().get(0).row();
        String note = arrangement.instrument().buttons().stream()
                .filter(button -> button.row() == row && button.number() == step.handOn())
                .map(button -> button.push() == null ? button.pull() : button.push())
                .filter(Objects::nonNull)
                .map(pitch -> arrangement.style().leftHand().name(pitch.pitchClass()))
                .findFirst()
                .orElse(numbers);
        return new Template(arrangement.style().words().hand().with("button", numbers)).with("note", note);
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return arrangement.pressed().stream()
                .limit(arrangement.instrument().grip().strapped() ? 0 : 1)
                .map(first -> new LegendEntry(
                        text(arrangement, first),
                        arrangement.style().legend().say(Meaning.HAND, "button", first.handOn())))
                .toList();
    }
}
