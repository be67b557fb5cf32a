package org.bellowscribe.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Test;

class LearnerTest {

    private static final Manner ACROSS = MannerLibrary.of("across-the-rows");

    /** From the marks of another manner, once for all tests. */
    private static final Learned LEARNED = Learner.learn(MarkedBook.samples(ACROSS, 3), MarkedBook.USUAL, 0);

    @Test
    void marksOfAnotherMannerComeOutUnderThePointsLearnedFromThem() {
        Agreement before = LEARNED.seen().before();
        Agreement after = LEARNED.seen().after();
        assertTrue(before.buttons().percent() < 85, before::toString);
        assertTrue(after.buttons().percent() > 95, after::toString);
        assertTrue(after.directions().percent() > 95, after::toString);
    }

    @Test
    void marksThatComeOutAlreadyMoveNothing() {
        List<TaughtTune> tunes = MarkedBook.samples(MarkedBook.USUAL, 2);
        Learned learned = Learner.learn(tunes, MarkedBook.USUAL, 2);
        assertEquals(List.of(), learned.moves());
        assertEquals(List.of(), learned.unmet());
        assertEquals(100, learned.leftOut().after().buttons().percent());
        assertEquals(2, learned.parts());
    }

    @Test
    void marksOfButtonsAloneLeaveFingeringAirAndLeftHandAsTheyWere() {
        TaughtTune whole = MarkedBook.samples(ACROSS, 1).get(0);
        Pins buttons = new Pins(whole.marks().list().stream()
                .map(pin -> {
                    Pin only = Pin.at(pin.event());
                    for (int i = 0; i < pin.buttons().size(); i++) {
                        only = only.button(i, pin.buttons().get(i));
                    }
                    return only;
                })
                .toList());
        TaughtTune tune = new TaughtTune(whole.name(), whole.task(), buttons);
        Learned learned = Learner.learn(List.of(tune), MarkedBook.USUAL, 0);
        Set<String> moved = new TreeSet<>();
        learned.moves().forEach(move -> moved.add(move.ruleCase().rule()));
        assertFalse(moved.isEmpty());
        assertTrue(HeldRules.of(List.of(tune)).contains("same-finger"));
        assertTrue(HeldRules.of(List.of(tune)).contains("air-press"));
        assertFalse(HeldRules.of(List.of(tune)).contains("row-change"));
        moved.retainAll(HeldRules.of(List.of(tune)));
        assertEquals(Set.of(), moved);
    }

    @Test
    void everyMovedPointNamesWhatMovedIt() {
        Learned.Move move = LEARNED.moves().stream()
                .filter(each -> each.ruleCase().rule().equals("row-change"))
                .findFirst()
                .orElseThrow();
        assertTrue(move.to() < move.from(), move::toString);
        assertTrue(move.moved().get(0).matches(".*\\.musicxml(, measure \\d+| as a whole)"), move::toString);
    }

    @Test
    void aMarkThatCannotBePlayedWithTheOthersIsLeftOutAndNamed() {
        TaughtTune tune = MarkedBook.samples(MarkedBook.USUAL, 1).get(0);
        int event = 12;
        Pin played = tune.marks().list().get(event);
        Pins both = tune.marks().plus(Pin.at(event).direction(other(played)));
        Keeping kept = Keeping.of(new TaughtTune("a.musicxml", tune.task(), both));
        int measure = tune.task().tune().events().get(event).measure();
        String name = new Whereabouts(tune.task().tune()).measures().get(measure);
        assertEquals(List.of("a.musicxml, measure " + name), kept.leftOut());
        assertTrue(kept.tune().marks().list().stream()
                .noneMatch(pin -> tune.task().tune().events().get(pin.event()).measure() == measure));
    }

    private static BellowsDirection other(Pin pin) {
        return pin.direction() == BellowsDirection.PUSH ? BellowsDirection.PULL : BellowsDirection.PUSH;
    }
}
