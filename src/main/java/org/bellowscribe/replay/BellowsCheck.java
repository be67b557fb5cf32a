package org.bellowscribe.replay;

import java.util.List;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;

/** Follows the bellows along the order of play: unbroken, within their range, and back to the start if so claimed. */
final class BellowsCheck {

    private static final double THOUSANDTHS = 1000;
    private static final double NOTHING = 1e-6;

    private final Tune tune;
    private final Instrument instrument;
    private final Solution solution;
    private final Findings findings;
    private final List<Integer> order;
    private final int[] timesPlayed;

    BellowsCheck(Tune tune, Instrument instrument, Solution solution, Findings findings) {
        this.tune = tune;
        this.instrument = instrument;
        this.solution = solution;
        this.findings = findings;
        order = tune.eventOrder();
        timesPlayed = new int[solution.steps().size()];
        order.forEach(event -> timesPlayed[event]++);
    }

    void check() {
        for (int i = 0; i < order.size(); i++) {
            Step step = step(order.get(i));
            checkRange(step, step.openingBefore());
            checkRange(step, step.openingAfter());
            if (i > 0) {
                checkNeighbors(step(order.get(i - 1)), step);
            }
        }
        solution.steps().forEach(this::checkHeld);
        if (solution.again() && !order.isEmpty()) {
            checkClosing();
        }
    }

    private void checkRange(Step step, int opening) {
        double lowest = instrument.bellows().lowest() * THOUSANDTHS;
        double highest = instrument.bellows().highest() * THOUSANDTHS;
        findings.require(
                opening >= lowest - NOTHING && opening <= highest + NOTHING,
                step.event(),
                "bellows-range",
                "The opening is %d thousandths; it must be from %.1f to %.1f.",
                opening,
                lowest,
                highest);
    }

    private void checkNeighbors(Step before, Step step) {
        findings.require(
                before.openingAfter() == step.openingBefore(),
                step.event(),
                "opening-chain",
                "The opening is %d thousandths, but coming from measure %d it is %d.",
                step.openingBefore(),
                before.event().measure() + 1,
                before.openingAfter());
    }

    private void checkHeld(Step step) {
        if (!step.held()) {
            return;
        }
        boolean any = false;
        boolean always = true;
        for (int i = 1; i < order.size(); i++) {
            if (order.get(i) == step.event().index()) {
                any = true;
                always &= isHeld(step(order.get(i - 1)), step);
            }
        }
        findings.require(
                any && always,
                step.event(),
                "held",
                "No button of %s stays down through a reversal on every pass.",
                step.buttons().stream().map(Button::id).toList());
    }

    private static boolean isHeld(Step before, Step step) {
        return before.direction() != step.direction() && step.buttons().stream().anyMatch(before.buttons()::contains);
    }

    private void checkClosing() {
        int start = step(order.get(0)).openingBefore();
        int end = step(order.get(order.size() - 1)).openingAfter();
        int margin = margin();
        findings.require(
                Math.abs(end - start) <= margin,
                "play-again",
                "The bellows end at %d and began at %d thousandths; they may differ by %d.",
                end,
                start,
                margin);
    }

    /**
     * Returns by how much the end may miss the start: nothing, but where other measures are repeated the own air of a
     * pick-up before them, which no repeat can balance. An ending after the repeats can be balanced, and must be.
     */
    private int margin() {
        boolean repeats = false;
        for (int times : timesPlayed) {
            repeats |= times > 1;
        }
        if (!repeats) {
            return 0;
        }
        int margin = 0;
        for (int i = 0; i < order.size() && isPickUp(step(order.get(i)).event()); i++) {
            margin += air(order.get(i));
        }
        return margin;
    }

    private boolean isPickUp(Event event) {
        Measure measure = tune.measureOf(event);
        return timesPlayed[event.index()] == 1 && measure.beatOffset().isPositive();
    }

    private int air(int event) {
        return Math.abs(step(event).openingAfter() - step(event).openingBefore());
    }

    private Step step(int event) {
        return solution.steps().get(event);
    }
}
