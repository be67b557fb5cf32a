package org.bellowscribe.score;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.bellowscribe.score.RepeatSection.Ending;
import org.jspecify.annotations.Nullable;

/**
 * Finds the repeated sections. Its rules where the signs leave a choice:
 *
 * <ul>
 *   <li>a repeat without a start goes back to the start that is still open, else to the measure after the previous
 *       repeated section, else to the first measure;
 *   <li>a start that is never closed does nothing; a start inside an open section makes a section inside it;
 *   <li>endings that follow each other belong to one section; leaving one of them for the next goes back even without a
 *       repeat sign; after the last pass the tune goes on even where the last ending has a repeat sign;
 *   <li>an ending that stops before the repeat sign lasts until that sign if the next ending follows it;
 *   <li>an ending that never stops lasts until the next sign, the last one as long as the longest before it;
 *   <li>one ending alone with a repeat sign is left out in the pass after it; without one its bracket is ignored;
 *   <li>a first ending may be all there is of a section: it is played once, and the next ending follows.
 * </ul>
 */
final class RepeatFinder {

    private static final int MAX_NESTING = 8;
    private static final int MAX_TIMES = 99;
    private static final int LOOK_AHEAD = 16;

    private final List<RoadSigns> signs;
    private final List<RoadRemark> remarks;
    private final boolean startsAreWritten;
    private final Deque<Open> open = new ArrayDeque<>();
    private final List<RepeatSection> sections = new ArrayList<>();

    /** A section whose end is not reached yet. */
    private static final class Open {
        private final int start;
        private final boolean written;
        private final List<RepeatSection> inner = new ArrayList<>();
        private @Nullable EndingChain chain;

        Open(int start, boolean written) {
            this.start = start;
            this.written = written;
        }
    }

    RepeatFinder(List<RoadSigns> signs, List<RoadRemark> remarks) {
        this.signs = signs;
        this.remarks = remarks;
        startsAreWritten = signs.stream().anyMatch(RoadSigns::repeatStart);
        open.push(new Open(0, false));
    }

    /** Returns the outermost sections in score order. */
    List<RepeatSection> find() {
        for (int i = 0; i < signs.size(); i++) {
            RoadSigns here = signs.get(i);
            if (here.repeatStart()) {
                startSection(i);
            }
            if (here.endingStart() != null) {
                startEnding(i, here.endingStart());
            }
            if (here.repeatEnd() != null) {
                endRepeat(i, here.repeatEnd());
            } else if (here.endingStop()) {
                stopEnding(i);
            }
        }
        leaveEnding(signs.size() - 1);
        finishEndings();
        dropOpenSections();
        return sections;
    }

    private void startSection(int measure) {
        leaveEnding(measure - 1);
        finishEndings();
        Open top = open.getFirst();
        if (!top.written) {
            open.pop();
            open.push(new Open(measure, true));
        } else if (top.start != measure) {
            if (open.size() < MAX_NESTING) {
                open.push(new Open(measure, true));
            } else {
                remark(measure, "The repeat that starts at measure %d is too deep inside others and is ignored.");
            }
        }
    }

    private void startEnding(int measure, List<Integer> numbers) {
        EndingChain chain = open.getFirst().chain;
        if (chain != null && chain.isOpen()) {
            remark(
                    chain.openStart(),
                    "The ending that starts at measure %d is not closed; it lasts until the next one.");
            chain.close(measure - 1);
        }
        if (chain == null || !chain.accepts(measure, numbers)) {
            finishEndings();
            chain = new EndingChain();
            open.getFirst().chain = chain;
        }
        chain.open(measure, numbers);
    }

    private void stopEnding(int measure) {
        EndingChain chain = open.getFirst().chain;
        if (chain == null || !chain.isOpen()) {
            return;
        }
        if (repeatFollowsBeforeNextEnding(measure + 1)) {
            remark(measure, "The ending that stops at measure %d has no repeat; it lasts until the repeat after it.");
            return;
        }
        chain.close(measure);
        finishUnlessNextEndingFollows(measure);
    }

    private boolean repeatFollowsBeforeNextEnding(int from) {
        for (int i = from; i < Math.min(signs.size() - 1, from + LOOK_AHEAD); i++) {
            RoadSigns here = signs.get(i);
            if (here.repeatStart() || here.endingStart() != null) {
                return false;
            }
            if (here.repeatEnd() != null) {
                return signs.get(i + 1).endingStart() != null;
            }
        }
        return false;
    }

    private void endRepeat(int measure, RepeatEnd end) {
        EndingChain chain = open.getFirst().chain;
        if (chain != null && chain.isOpen() && !signs.get(measure).endingStop() && chain.isOverlong(measure)) {
            leaveEnding(measure);
            finishEndings();
            chain = null;
        }
        if (chain != null && chain.isOpen()) {
            chain.closeReturning(measure, end);
            finishUnlessNextEndingFollows(measure);
        } else {
            closeSection(measure, List.of(), end);
        }
    }

    private void finishUnlessNextEndingFollows(int measure) {
        EndingChain chain = open.getFirst().chain;
        if (chain == null || measure + 1 >= signs.size()) {
            return;
        }
        RoadSigns next = signs.get(measure + 1);
        if (next.repeatStart() || next.endingStart() == null || !chain.accepts(measure + 1, next.endingStart())) {
            finishEndings();
        }
    }

    private void leaveEnding(int measure) {
        EndingChain chain = open.getFirst().chain;
        if (chain != null && chain.isOpen()) {
            int end = Math.min(measure, chain.openStart() + chain.longest() - 1);
            remark(
                    chain.openStart(),
                    "The ending that starts at measure %d is not closed; it lasts until measure " + (end + 1) + ".");
            chain.close(end);
        }
    }

    private void finishEndings() {
        Open top = open.getFirst();
        EndingChain chain = top.chain;
        if (chain == null) {
            return;
        }
        top.chain = null;
        List<Ending> endings = chain.endings();
        boolean alone = endings.size() == 1;
        if (alone && !chain.returnsAnywhere()) {
            remark(
                    chain.start(),
                    "The ending that starts at measure %d has no repeat and no other ending;"
                            + " its bracket is ignored.");
        } else if (chain.start() < top.start
                || (alone && !endings.get(0).passes().contains(1))) {
            remark(
                    chain.start(),
                    "The ending that starts at measure %d does not fit its repeat;" + " its bracket is ignored.");
            closeSection(chain.lastEnd(), List.of(), RepeatEnd.TWICE);
        } else {
            remarkOddReturns(chain);
            remarkMissingNumbers(chain);
            closeSection(chain.lastEnd(), endings, new RepeatEnd(2, chain.afterJump()));
        }
    }

    private void remarkOddReturns(EndingChain chain) {
        int last = chain.endings().size() - 1;
        for (int i = 0; i < last; i++) {
            if (!chain.returns(i) && !jumps(chain.endings().get(i))) {
                remark(
                        chain.endings().get(i).start(),
                        "The ending that starts at measure %d has no repeat at its end; the player goes back all the same.");
            }
        }
        if (last > 0
                && chain.returns(last)
                && chain.endings().get(last).passes().size() == 1) {
            remark(
                    chain.endings().get(last).end(),
                    "The last ending has a repeat at the end of measure %d; after the last pass the tune goes on.");
        }
    }

    private void remarkMissingNumbers(EndingChain chain) {
        List<Integer> numbers = chain.endings().stream()
                .flatMap(ending -> ending.passes().stream())
                .sorted()
                .toList();
        if (numbers.get(numbers.size() - 1) != numbers.size()) {
            remark(
                    chain.start(),
                    "The endings from measure %d on have only the numbers " + numbers
                            + "; there is one pass for each.");
        }
    }

    private boolean jumps(Ending ending) {
        return signs.subList(ending.start(), ending.end() + 1).stream().anyMatch(each -> each.jump() != null);
    }

    private void closeSection(int end, List<Ending> endings, RepeatEnd sign) {
        Open top = open.pop();
        if (!top.written && top.start > 0 && startsAreWritten && endings.isEmpty()) {
            remark(
                    end,
                    "The repeat that ends at measure %d has no start; the player goes back to measure "
                            + (top.start + 1) + ", after the repeat before it.");
        }
        if (!top.inner.isEmpty()) {
            remark(end, "The repeat that ends at measure %d holds another repeat; both are taken each time.");
        }
        int times = Math.min(Math.max(1, sign.times()), MAX_TIMES);
        RepeatSection section =
                new RepeatSection(top.start, end, endings, times, sign.afterJump(), List.copyOf(top.inner));
        (open.isEmpty() ? sections : open.getFirst().inner).add(section);
        if (open.isEmpty()) {
            open.push(new Open(end + 1, false));
        }
    }

    private void dropOpenSections() {
        while (!open.isEmpty()) {
            Open top = open.pop();
            if (top.written) {
                remark(top.start, "The repeat that starts at measure %d is never closed; it is not repeated.");
            }
            (open.isEmpty() ? sections : open.getFirst().inner).addAll(top.inner);
        }
    }

    private void remark(int measure, String text) {
        remarks.add(new RoadRemark(measure, text.formatted(measure + 1)));
    }
}
