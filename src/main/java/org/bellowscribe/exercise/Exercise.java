package org.bellowscribe.exercise;

import java.util.List;

/** Something to practice by itself, taken from a tune. */
public sealed interface Exercise {

    /** Returns the 0-based indices of its events, in score order. */
    List<Integer> events();

    /**
     * A measure in which the air button is pressed.
     *
     * @param events what begins in the measure
     */
    record AirMeasure(List<Integer> events) implements Exercise {
        /** Copies the list. */
        public AirMeasure {
            events = List.copyOf(events);
        }
    }

    /**
     * Three to five notes around a hard change, and the note that follows.
     *
     * @param events the notes
     * @param hardest the hardest change among them
     * @param percent the tempo from which to start, in percent of that of the tune: at it the hardest change has as long
     *     as it takes
     * @param estimated true if nobody has timed that change
     */
    record Chunk(List<Integer> events, Change hardest, int percent, boolean estimated) implements Exercise {
        /** Copies the list. */
        public Chunk {
            events = List.copyOf(events);
        }
    }

    /**
     * The left hand alone where it moves most.
     *
     * @param events what begins in the measures
     */
    record LeftHandRun(List<Integer> events) implements Exercise {
        /** Copies the list. */
        public LeftHandRun {
            events = List.copyOf(events);
        }
    }
}
