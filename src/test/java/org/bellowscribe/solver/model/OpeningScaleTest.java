package org.bellowscribe.solver.model;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.solver.search.Zones;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OpeningScaleTest {

    private static OpeningScale scale(double capacity) {
        return new OpeningScale(new Bellows(capacity, 0.08, 7, 20));
    }

    @Test
    void percentAreRoundedToTheNearest() {
        assertEquals(20, scale(40).percent(7_800));
        assertEquals(19, scale(40).percent(7_799));
        assertEquals(100, scale(40).percent(40_000));
    }

    @Test
    void zonesBeginWhereThePointsChange() {
        Zones zones = scale(40).zones(percent -> percent < 20 ? 3 : percent > 80 ? 5 : 0);
        assertArrayEquals(new int[] {0, 7_800, 32_200}, zones.from());
        assertArrayEquals(new int[] {3, 0, 5}, zones.points());
    }

    @ParameterizedTest
    @ValueSource(doubles = {40, 20, 33.333, 7.777})
    void zonesCostWhatThePercentageDoes(double capacity) {
        OpeningScale scale = scale(capacity);
        Zones zones = scale.zones(percent -> percent * percent % 7);
        for (int opening = 0; opening <= capacity * 1000; opening++) {
            int percent = scale.percent(opening);
            assertEquals(percent * percent % 7, zones.at(opening));
        }
    }
}
