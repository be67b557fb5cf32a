package org.bellowscribe.difficulty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.bellowscribe.difficulty.grading.Grading;
import org.bellowscribe.difficulty.grading.GradingLibrary;
import org.bellowscribe.difficulty.grading.Term;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.model.Choices;
import org.junit.jupiter.api.Test;

/** The easiest way of short passages on a D/G box, against all ways there are. */
class EasiestWayTest {

    private static final Instrument BOX = Deciding.box("dg-21");
    private static final Grading GRADING = GradingLibrary.usual();
    private static final double EXACT = 1e-9;
    private static final List<String> NOTES = List.of("D4", "E4", "F#4", "G4", "A4", "B4", "C5", "D5", "E5", "A4+C5");

    private static List<Playing.Played<Event>> notes(Tune tune) {
        List<Playing.Played<Event>> notes = new ArrayList<>();
        double now = 0;
        for (Event event : tune.events()) {
            double length = tune.seconds(event);
            notes.add(new Playing.Played<>(now, length, event));
            now += length;
        }
        return notes;
    }

    private static double points(Instrument box, Tune tune) {
        Map<Term, Figure> figures = new EasiestWay(box, notes(tune), GRADING).figures();
        return figures.entrySet().stream()
                .mapToDouble(
                        each -> GRADING.weight(each.getKey()) * each.getValue().value())
                .sum();
    }

    private static Tune tune(Random random, int count) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append(NOTES.get(random.nextInt(NOTES.size()))).append(random.nextBoolean() ? "*1/2 " : "*1 ");
        }
        return TuneText.of(text.toString().strip(), 200);
    }

    /** Tries every way after the other. */
    private static double bruteForce(List<Playing.Played<Event>> notes, List<Way> chosen, Choices choices) {
        int count = chosen.size();
        if (count == notes.size()) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        Event event = notes.get(count).what();
        for (Way way : Way.of(choices.of(new org.bellowscribe.solver.Moment(event, 1, false)))) {
            double points = GRADING.weight(Term.STRETCHES) * way.stretches();
            if (count > 0) {
                points += step(notes, count, chosen.get(count - 1), way);
            }
            chosen.add(way);
            least = Math.min(least, points + bruteForce(notes, chosen, choices));
            chosen.remove(count);
        }
        return least;
    }

    private static double step(List<Playing.Played<Event>> notes, int now, Way from, Way to) {
        double gap = gap(notes, now);
        double speed = Moment.bySpeed(gap);
        double points = 0;
        if (from.direction() != to.direction()) {
            boolean held = from.buttons().stream().anyMatch(to.buttons()::contains);
            points += GRADING.weight(held ? Term.HELD_REVERSALS : Term.REVERSALS) * speed;
            if (now > 1 && now + 1 < notes.size()) {
                double slowest = Math.max(gap, Math.max(gap(notes, now - 1), gap(notes, now + 1)));
                points += GRADING.weight(Term.QUICK_TURNS) * Moment.bySpeed(slowest);
            }
        }
        List<Integer> rows = to.buttons().stream().map(Button::row).toList();
        if (from.buttons().stream().noneMatch(button -> rows.contains(button.row()))) {
            points += GRADING.weight(Term.ROW_CHANGES) * speed;
        }
        return points + (Math.abs(from.halves() - to.halves()) > 1 ? GRADING.weight(Term.SHIFTS) * speed : 0);
    }

    private static double gap(List<Playing.Played<Event>> notes, int note) {
        return notes.get(note).seconds() - notes.get(note - 1).seconds();
    }

    @Test
    void noWayCountsLessThanTheEasiest() {
        Choices choices = new Choices(BOX);
        for (int seed = 0; seed < 20; seed++) {
            Tune tune = tune(new Random(seed), 4);
            double least = bruteForce(notes(tune), new ArrayList<>(), choices);
            assertEquals(least / Figure.STRETCH, points(BOX, tune), EXACT, "seed " + seed);
        }
    }

    @Test
    void withoutAnyOfItsButtonsNoPassageIsEasier() {
        for (int seed = 0; seed < 20; seed++) {
            Tune tune = tune(new Random(seed), 60);
            double whole = points(BOX, tune);
            for (Button button : BOX.buttons()) {
                Instrument poorer = Deciding.without(BOX, button);
                Choices left = new Choices(poorer);
                if (tune.events().stream()
                        .noneMatch(event -> left.of(new org.bellowscribe.solver.Moment(event, 1, false))
                                .isEmpty())) {
                    assertTrue(whole <= points(poorer, tune) + EXACT, seed + " without " + button.id());
                }
            }
        }
    }

    @Test
    void notesThatLieBothWaysArePlayedWithoutAReversal() {
        // G4 is pulled on the row of D, A4 and F#4 on the row of G.
        Tune tune = TuneText.of("A4*1/2 G4*1/2 A4*1/2 F#4*1/2", 200);
        Map<Term, Figure> figures = new EasiestWay(BOX, notes(tune), GRADING).figures();
        assertEquals(0, figures.getOrDefault(Term.REVERSALS, Figure.NONE).value(), EXACT);
    }
}
