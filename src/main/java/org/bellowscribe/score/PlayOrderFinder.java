package org.bellowscribe.score;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.bellowscribe.score.Jump.Goal;

/**
 * Finds the order of play from the signs. Its rules for jumps: the first time through every repeat is taken; a jump is
 * taken once, the last time its measure is reached; after it repeats are left out and the last ending is played (unless
 * the score says otherwise), and only then a fine or a departure to the coda is obeyed; in the coda repeats are taken
 * again. Where the score says at which times a sign holds ({@code time-only}), it holds just then. Rules for repeats and endings: see {@link RepeatFinder}.
 */
public final class PlayOrderFinder {

    private static final int MAX_MEASURES = 5000;
    private static final int END = -1;
    private static final int GO_ON = -2;

    private final List<RoadSigns> signs;
    private final List<RoadRemark> remarks = new ArrayList<>();
    private final List<Integer> order = new ArrayList<>();
    private final Set<Integer> jumpsTaken = new HashSet<>();
    // No coda: a departure without one is not taken.
    private final Set<Integer> codasEntered = new HashSet<>(Set.of(END));
    private Goal goal = Goal.OPEN;
    private boolean jumped;
    private boolean repeats = true;

    private PlayOrderFinder(List<RoadSigns> signs) {
        this.signs = signs;
    }

    /**
     * The order of play and how it was found.
     *
     * @param order order of play
     * @param remarks what was ambiguous, in the order in which it was met
     */
    public record Found(PlayOrder order, List<RoadRemark> remarks) {

        /** Copies the list. */
        public Found {
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * Finds the order of play.
     *
     * @param signs one entry for each written measure; may be empty
     */
    public static Found find(List<RoadSigns> signs) {
        return new PlayOrderFinder(signs).find();
    }

    private Found find() {
        List<RepeatSection> sections = new RepeatFinder(signs, remarks).find();
        Road road = new Road(signs.size(), sections, MAX_MEASURES);
        int from = 0;
        while (from != END && order.size() <= MAX_MEASURES) {
            from = follow(road.from(from, repeats));
        }
        remarkUnusedSigns();
        if (order.size() > MAX_MEASURES) {
            remarks.add(new RoadRemark(
                    0,
                    "The repeats would play more than %d measures; the tune is read once through without repeats."
                            .formatted(MAX_MEASURES)));
            return new Found(
                    new PlayOrder(IntStream.range(0, signs.size()).boxed().toList()), remarks);
        }
        return new Found(new PlayOrder(order), remarks);
    }

    /** Plays a walk up to the first sign that ends it; returns where to go on, -1 for nowhere. */
    private int follow(List<Integer> walk) {
        for (int i = 0; i < walk.size(); i++) {
            int measure = walk.get(i);
            order.add(measure);
            int next = signs.get(measure).mayLeave() && isTime(measure, walk, i) ? obey(measure) : GO_ON;
            if (next != GO_ON) {
                return next;
            }
        }
        return END;
    }

    // Where the score says at which times signs hold, it is obeyed.
    private boolean isTime(int measure, List<Integer> walk, int place) {
        List<Integer> times = signs.get(measure).times();
        return times.isEmpty()
                ? walk.lastIndexOf(measure) == place
                : times.contains(Collections.frequency(order, measure));
    }

    private int obey(int measure) {
        RoadSigns here = signs.get(measure);
        boolean jumped = this.jumped || !here.times().isEmpty();
        if (jumped && here.fine() && goal != Goal.CODA) {
            return END;
        }
        if (jumped && here.toCoda() != null && goal != Goal.FINE) {
            int coda = coda(measure, here.toCoda());
            if (codasEntered.add(coda)) {
                goal = Goal.OPEN;
                repeats = true;
                return coda;
            }
        }
        return here.jump() != null && (jumpsTaken.add(measure) || !here.times().isEmpty())
                ? jump(measure, here.jump())
                : GO_ON;
    }

    private int jump(int measure, Jump jump) {
        int start = jump.toStart() ? 0 : segno(measure, jump.segno());
        if (start < 0) {
            remarks.add(new RoadRemark(
                    measure,
                    "The %s at measure %d finds no segno; the player goes back to the start."
                            .formatted(jump, measure + 1)));
            start = 0;
        }
        jumped = true;
        goal = jump.goal();
        repeats = jump.withRepeats();
        remarkGoal(measure, jump);
        return start;
    }

    /**
     * Returns the measure of the segno with a label, else of the last one before the jump; -1 if there is none. A segno
     * in the measure of the jump itself is the sign of the jump, unless it is the only one.
     */
    private int segno(int jump, String label) {
        int found = signs.get(jump).segno() == null ? END : jump;
        for (int i = 0; i < signs.size(); i++) {
            String here = signs.get(i).segno();
            if (here != null && !label.isEmpty() && here.equals(label)) {
                return i;
            }
            found = here != null && i < jump ? i : found;
        }
        return found;
    }

    /** Returns the measure of the coda with a label, else of the first one after the departure; -1 if there is none. */
    private int coda(int departure, String label) {
        int found = END;
        for (int i = signs.size() - 1; i >= 0; i--) {
            String here = signs.get(i).coda();
            if (here != null && !label.isEmpty() && here.equals(label)) {
                return i;
            }
            found = here != null && i > departure ? i : found;
        }
        return found;
    }

    private void remarkGoal(int measure, Jump jump) {
        boolean fine = signs.stream().anyMatch(RoadSigns::fine);
        boolean coda = signs.stream().anyMatch(s -> s.toCoda() != null)
                && signs.stream().anyMatch(s -> s.coda() != null);
        boolean missing = switch (jump.goal()) {
            case FINE -> !fine;
            case CODA -> !coda;
            case OPEN -> !fine && !coda;
        };
        if (missing) {
            remarks.add(new RoadRemark(
                    measure,
                    "The %s at measure %d finds no %s; after it the tune is played to its end without repeats."
                            .formatted(jump, measure + 1, jump.goal() == Goal.CODA ? "departure to a coda" : "fine")));
        }
    }

    private void remarkUnusedSigns() {
        for (int i = 0; i < signs.size(); i++) {
            if (signs.get(i).fine() && !jumped) {
                remarks.add(new RoadRemark(
                        i, "The fine at measure %d is ignored because no jump leads to it.".formatted(i + 1)));
            }
        }
    }
}
