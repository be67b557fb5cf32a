package org.bellowscribe.annotation;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bellowscribe.theory.PitchClass;

/**
 * A part of a score that may be the written-out left hand of an earlier run: all that it strikes has one text below it.
 *
 * @param id id of the part
 * @param groups what is struck, in the order of the score
 */
public record LetteredPart(String id, List<Group> groups) {

    /** Copies the list. */
    public LetteredPart {
        groups = List.copyOf(groups);
    }

    /**
     * Notes struck together.
     *
     * @param notes their names without octave
     * @param text the text below them
     */
    public record Group(SortedSet<PitchClass> notes, String text) {

        /** Copies the set. */
        public Group {
            notes = new TreeSet<>(notes);
        }
    }
}
