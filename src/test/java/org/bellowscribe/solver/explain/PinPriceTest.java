package org.bellowscribe.solver.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Task;
import org.junit.jupiter.api.Test;

class PinPriceTest {

    private static List<PinPrice> prices(Pin... pins) {
        Task task = Lesson.task(pins);
        return PinPrice.of(task, Lesson.solve(task));
    }

    @Test
    void pinThatAgreesCostsNothing() {
        BellowsDirection free = Lesson.solve(Lesson.task()).steps().get(2).direction();
        List<PinPrice> prices = prices(Pin.at(2).direction(free), Pin.at(3).air(AirUse.NONE));
        assertEquals(
                List.of(0, 0),
                prices.stream().map(price -> price.comparison().points()).toList());
        assertEquals("", prices.get(0).comparison().describe());
    }

    @Test
    void priceIsTheDifferenceThatThePinMakes() {
        Solution free = Lesson.solve(Lesson.task());
        Pin against = Pin.at(2).direction(free.steps().get(2).direction().opposite());
        PinPrice price = prices(against).get(0);
        assertEquals(
                Lesson.solve(Lesson.task(against)).cost().total() - free.cost().total(),
                price.comparison().points());
        assertTrue(price.comparison().points() > 0);
        assertTrue(price.comparison().proved());
    }

    @Test
    void pressOfTheAirButtonIsChargedByItsRule() {
        Pin[] pins = Lesson.solve(Lesson.task()).steps().stream()
                .filter(step -> step.air() == AirUse.NONE)
                .limit(2)
                .map(step -> Pin.at(step.event().index()).air(AirUse.FULL))
                .toArray(Pin[]::new);
        assertEquals(2, pins.length);
        for (Pin pin : pins) {
            PinPrice price = prices(pin).get(0);
            assertTrue(price.comparison().describe().contains("air press +"), price.toString());
        }
    }
}
