package org.bellowscribe.score;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bellowscribe.score.RepeatSection.Ending;

/** The endings of one repeated section while they are found, one after the other without a gap. */
final class EndingChain {

    private static final int MAX_PASSES = 99;

    private final List<Ending> closed = new ArrayList<>();
    private final Set<Integer> used = new HashSet<>();
    private final Set<Integer> returning = new HashSet<>();
    private List<Integer> openPasses = List.of();
    private int openStart = -1;
    private boolean afterJump;

    /** Returns true if an ending with these numbers can follow directly: none of them is used yet. */
    boolean accepts(int measure, List<Integer> numbers) {
        return openStart < 0
                && lastEnd() + 1 == measure
                && used.size() < MAX_PASSES
                && numbers.stream().noneMatch(used::contains);
    }

    /** Opens an ending; without numbers it takes the next free one. */
    void open(int measure, List<Integer> numbers) {
        openStart = measure;
        openPasses = numbers.isEmpty()
                ? List.of(used.stream().mapToInt(Integer::intValue).max().orElse(0) + 1)
                : numbers.stream().distinct().sorted().toList();
        used.addAll(openPasses);
    }

    boolean isOpen() {
        return openStart >= 0;
    }

    int openStart() {
        return openStart;
    }

    /** Closes the open ending after a measure. */
    void close(int measure) {
        closed.add(new Ending(openStart, Math.max(openStart, measure), openPasses));
        openStart = -1;
    }

    /** Closes the open ending after a measure with a repeat at its end. */
    void closeReturning(int measure, RepeatEnd end) {
        close(measure);
        returning.add(closed.size() - 1);
        afterJump |= end.afterJump();
    }

    /** Returns true if the open ending would be longer than each before it if it lasted until a measure. */
    boolean isOverlong(int measure) {
        return !closed.isEmpty() && measure - openStart + 1 > longest();
    }

    /** Returns the length of the longest closed ending, in measures; 1 if there is none. */
    int longest() {
        return closed.stream()
                .mapToInt(ending -> ending.end() - ending.start() + 1)
                .max()
                .orElse(1);
    }

    boolean returns(int ending) {
        return returning.contains(ending);
    }

    boolean returnsAnywhere() {
        return !returning.isEmpty();
    }

    List<Ending> endings() {
        return List.copyOf(closed);
    }

    int start() {
        return closed.isEmpty() ? openStart : closed.get(0).start();
    }

    int lastEnd() {
        return closed.isEmpty() ? -1 : closed.get(closed.size() - 1).end();
    }

    boolean afterJump() {
        return afterJump;
    }
}
