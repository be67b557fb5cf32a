package org.bellowscribe.annotation;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import org.bellowscribe.annotation.style.WordLabels;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Step;

/** The words above a left hand that is practiced alone. */
final class LeftHandWords {

    private LeftHandWords() {}

    /**
     * Returns the words by 0-based index of the event: the direction at the first stroke of every section and wherever
     * the bellows have turned since the stroke before, on any pass; the air marks of the tune.
     *
     * @param more marks, of which the words are added
     */
    static Map<Integer, String> of(Arrangement arrangement, List<Mark> more) {
        WordLabels labels = arrangement.style().words();
        PlayNeighbors neighbors =
                PlayNeighbors.of(arrangement.tune(), event -> isStruck(arrangement.step(event.index())));
        SortedSet<Integer> starts = neighbors.sectionStarts();
        MergedWords words = new MergedWords(labels);
        for (Step step : arrangement.solution().steps()) {
            int event = step.event().index();
            boolean told = isStruck(step)
                    && (starts.contains(event)
                            || neighbors.before(event).stream()
                                    .anyMatch(before -> arrangement.step(before).direction() != step.direction()));
            boolean air = step.air() != AirUse.NONE;
            if (told || (air && !isStruck(step))) {
                words.add(event, new Mark.Words(event, Topic.DIRECTION, labels.direction(step.direction())));
            }
            if (air) {
                words.add(event, new Mark.Words(event, Topic.AIR, labels.air(step.air())));
            }
        }
        for (Mark mark : more) {
            if (mark instanceof Mark.Words text) {
                words.add(text.event(), text);
            }
        }
        SortedMap<Integer, String> texts = new TreeMap<>();
        words.annotations().forEach(each -> texts.put(each.noteIndex(), ((Annotation.Words) each).text()));
        return texts;
    }

    private static boolean isStruck(Step step) {
        return step.leftHand().stream().anyMatch(play -> play.button() != null);
    }
}
