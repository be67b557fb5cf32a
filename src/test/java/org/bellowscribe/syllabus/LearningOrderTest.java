package org.bellowscribe.syllabus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LearningOrderTest {

    private static SortedSet<Thing> things(int... numbers) {
        SortedSet<Thing> things = new TreeSet<>();
        for (int number : numbers) {
            things.add(new Thing(Thing.Kind.BUTTON, 1, number, "push"));
        }
        return things;
    }

    private static List<SortedSet<Thing>> random(long seed, int tunes, int things) {
        Random random = new Random(seed);
        List<SortedSet<Thing>> all = new ArrayList<>();
        for (int tune = 0; tune < tunes; tune++) {
            SortedSet<Thing> each = new TreeSet<>();
            int share = 1 + random.nextInt(4);
            for (int thing = 0; thing < things; thing++) {
                if (random.nextInt(6) < share) {
                    each.add(new Thing(Thing.Kind.BUTTON, 1, thing, "push"));
                }
            }
            all.add(each);
        }
        return all;
    }

    private static List<Integer> free(int tunes) {
        return Collections.nCopies(tunes, 0);
    }

    @Test
    void theTuneWithTheFewestThingsBegins() {
        LearningOrder order = LearningOrder.least(List.of(things(1, 2, 3, 4), things(1, 2), things(1, 2, 3)), free(3));
        assertEquals(List.of(1, 2, 0), order.tunes());
    }

    @Test
    void theCostIsTheSumOfSquaresOfNewThings() {
        LearningOrder order = LearningOrder.least(List.of(things(1, 2, 3, 4), things(1, 2), things(1, 2, 3)), free(3));
        assertEquals(4 + 1 + 1, order.cost());
    }

    @Test
    void theFewestFirstIsNotAlwaysTheLeast() {
        // 7 alone begins with fewest, but the four others then come all at once.
        List<SortedSet<Thing>> tunes = List.of(things(7), things(1, 2), things(1, 2, 3, 4, 7, 8), things(3, 4, 8));
        assertEquals(1 + 4 + 9, LearningOrder.least(tunes, free(4)).cost());
    }

    @Test
    void whatIsNewIsToldOnce() {
        LearningOrder order = LearningOrder.least(List.of(things(1, 2, 3), things(1, 2)), free(2));
        assertEquals(List.of(things(1, 2), things(3)), order.news());
    }

    @Test
    void aFixedTuneKeepsItsPosition() {
        LearningOrder order =
                LearningOrder.least(List.of(things(1, 2, 3, 4), things(1, 2), things(1, 2, 3)), List.of(1, 0, 0));
        assertEquals(0, order.tunes().get(0));
        assertEquals(16, order.cost());
    }

    @Test
    void tunesAsListedStayAsTheyAre() {
        LearningOrder order = LearningOrder.asListed(List.of(things(1, 2, 3), things(1)));
        assertEquals(List.of(0, 1), order.tunes());
        assertEquals(9, order.cost());
    }

    @Test
    void noTunesHaveAnOrder() {
        assertEquals(List.of(), LearningOrder.least(List.of(), List.of()).tunes());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 6, 7})
    void noOrderOfAFewTunesCostsLess(int tunes) {
        for (long seed = 0; seed < 40; seed++) {
            List<SortedSet<Thing>> things = random(seed, tunes, 12);
            LearningOrder order = LearningOrder.least(things, free(tunes));
            assertEquals(bruteForce(things, free(tunes)), order.cost(), "seed " + seed);
            assertTrue(order.isProved());
        }
    }

    @Test
    void noOrderThatKeepsThePositionsCostsLess() {
        for (long seed = 0; seed < 40; seed++) {
            List<SortedSet<Thing>> things = random(seed, 6, 12);
            List<Integer> positions = List.of(0, 3, 0, 0, 6, 0);
            LearningOrder order = LearningOrder.least(things, positions);
            assertEquals(bruteForce(things, positions), order.cost(), "seed " + seed);
            assertEquals(
                    List.of(1, 4), List.of(order.tunes().get(2), order.tunes().get(5)));
        }
    }

    @Test
    void twentyTunesAreProved() {
        LearningOrder order = LearningOrder.least(random(7, 20, 60), free(20));
        assertTrue(order.isProved());
    }

    @Test
    void ofManyTunesTheBoundIsNoMoreThanTheCost() {
        LearningOrder order = LearningOrder.least(random(3, 40, 80), free(40));
        assertTrue(order.bound() <= order.cost(), order.bound() + " of " + order.cost());
        assertTrue(order.bound() > 0);
    }

    @Test
    void everyTuneOfALargeBookHasItsPlace() {
        LearningOrder order = LearningOrder.least(random(3, 90, 80), free(90));
        assertEquals(90, new TreeSet<>(order.tunes()).size());
    }

    private static long bruteForce(List<SortedSet<Thing>> tunes, List<Integer> positions) {
        return bruteForce(tunes, positions, new ArrayList<>(), new TreeSet<>());
    }

    private static long bruteForce(
            List<SortedSet<Thing>> tunes, List<Integer> positions, List<Integer> order, SortedSet<Thing> known) {
        if (order.size() == tunes.size()) {
            return 0;
        }
        long least = Long.MAX_VALUE;
        for (int tune = 0; tune < tunes.size(); tune++) {
            int place = order.size() + 1;
            boolean taken = positions.contains(place) && positions.get(tune) != place;
            if (order.contains(tune) || taken || (positions.get(tune) != 0 && positions.get(tune) != place)) {
                continue;
            }
            SortedSet<Thing> news = new TreeSet<>(tunes.get(tune));
            news.removeAll(known);
            SortedSet<Thing> after = new TreeSet<>(known);
            after.addAll(news);
            order.add(tune);
            least = Math.min(least, (long) news.size() * news.size() + bruteForce(tunes, positions, order, after));
            order.remove(order.size() - 1);
        }
        return least;
    }
}
