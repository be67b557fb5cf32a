package org.bellowscribe.score;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.score.RepeatSection.Ending;

/** Walks through the measures and takes the repeats. */
final class Road {

    private final int measures;
    private final List<RepeatSection> sections;
    private final int limit;
    private final List<Integer> walked = new ArrayList<>();

    /**
     * Creates a road.
     *
     * @param measures how many measures are written
     * @param sections the outermost repeated sections in score order
     * @param limit how many measures to walk at most
     */
    Road(int measures, List<RepeatSection> sections, int limit) {
        this.measures = measures;
        this.sections = sections;
        this.limit = limit;
    }

    /**
     * Returns the measures from one of them to the end of the tune; more than the limit if the walk was cut.
     *
     * @param start 0-based index of the first measure
     * @param repeats true to take every repeat, false to take only those that are kept after a jump and else the last
     *     ending
     */
    List<Integer> from(int start, boolean repeats) {
        walked.clear();
        walk(start, measures - 1, sections, repeats);
        return List.copyOf(walked);
    }

    private void walk(int from, int to, List<RepeatSection> inside, boolean repeats) {
        int at = from;
        for (RepeatSection section : inside) {
            if (section.end() >= at && section.start() <= to) {
                run(at, section.start() - 1);
                if (at <= section.start() && (repeats || section.afterJump())) {
                    playAll(section, repeats);
                } else {
                    playOnce(section, Math.max(at, section.start()));
                }
                at = section.end() + 1;
            }
        }
        run(at, to);
    }

    private void playAll(RepeatSection section, boolean repeats) {
        for (int pass : section.passes()) {
            if (walked.size() > limit) {
                return;
            }
            walk(section.start(), section.bodyEnd(), section.inner(), repeats);
            runEnding(section, pass);
        }
    }

    private void playOnce(RepeatSection section, int from) {
        for (Ending ending : section.endings()) {
            if (from >= ending.start() && from <= ending.end()) {
                run(from, ending.end());
                return;
            }
        }
        walk(from, section.bodyEnd(), section.inner(), false);
        List<Integer> passes = section.passes();
        runEnding(section, passes.get(passes.size() - 1));
    }

    private void runEnding(RepeatSection section, int pass) {
        for (Ending ending : section.endings()) {
            if (ending.passes().contains(pass)) {
                run(ending.start(), ending.end());
            }
        }
    }

    private void run(int from, int to) {
        for (int i = from; i <= to && walked.size() <= limit; i++) {
            walked.add(i);
        }
    }
}
