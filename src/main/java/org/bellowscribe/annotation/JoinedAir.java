package org.bellowscribe.annotation;

import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bellowscribe.annotation.style.WordLabels;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;

/**
 * The air button held over notes that follow each other: one mark with a dash at each further note, as a crescendo in
 * words is drawn. Nothing else may stand there: where the bellows turn, say, or a section begins, the word is
 * said anew; so it is in each measure, as a system may begin with it.
 */
final class JoinedAir {

    private static final Set<Topic> HEAD = Set.of(Topic.DIRECTION, Topic.AIR);

    private final MergedWords words;
    private final WordLabels labels;
    private final List<Event> events;
    private final PlayNeighbors neighbors;

    private JoinedAir(MergedWords words, WordLabels labels, Tune tune) {
        this.words = words;
        this.labels = labels;
        events = tune.events();
        neighbors = PlayNeighbors.of(tune, event -> true);
    }

    /** Joins words for the air button at neighbors. */
    static void join(MergedWords words, WordLabels labels, Tune tune) {
        if (!labels.airGoesOn().isEmpty()) {
            new JoinedAir(words, labels, tune).join();
        }
    }

    private void join() {
        SortedSet<Integer> tails = new TreeSet<>();
        for (int i = 1; i < events.size(); i++) {
            if (goesOn(events.get(i - 1), events.get(i))) {
                tails.add(events.get(i).firstNoteIndex());
            }
        }
        for (int note : tails) {
            words.remove(Topic.AIR, note);
            words.add(note, Topic.AIR, Set.of(labels.airGoesOn()));
        }
    }

    private boolean goesOn(Event event, Event next) {
        if (event.isGap() || next.isGap() || event.measure() != next.measure()) {
            return false;
        }
        int from = event.firstNoteIndex();
        int to = next.firstNoteIndex();
        Set<String> air = words.about(Topic.AIR, from);
        return isPress(air)
                && air.equals(words.about(Topic.AIR, to))
                && HEAD.containsAll(words.topics(from))
                && words.topics(to).size() == 1
                && neighbors.before(next.index()).equals(Set.of(event.index()));
    }

    // What a hand has fixed bears its sign and stands alone.
    private boolean isPress(Set<String> air) {
        return air.equals(Set.of(labels.air(AirUse.FULL))) || air.equals(Set.of(labels.air(AirUse.LIGHT)));
    }
}
