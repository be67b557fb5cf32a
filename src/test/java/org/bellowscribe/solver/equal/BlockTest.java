package org.bellowscribe.solver.equal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Three equal measures of two events; each event has two options with one move each, signs 7 and 8. */
class BlockTest {

    private static final List<int[]> GROUP = List.of(new int[] {0, 1}, new int[] {2, 3}, new int[] {4, 5});
    private static final EqualGroups TWINS = new EqualGroups(List.of(GROUP), signs(), 3);
    private static final Block ALL = new Block(TWINS, new Kinds(TWINS));

    private static int[][][] signs() {
        int[][][] signs = new int[6][][];
        for (int e = 0; e < signs.length; e++) {
            signs[e] = new int[][] {{7}, {8}};
        }
        return signs;
    }

    private static Marks played(int... option) {
        return new Marks(option, new int[option.length]);
    }

    @Test
    void everythingIsAllowedAtFirst() {
        assertNull(ALL.of(0));
        assertFalse(ALL.isNarrow(0));
        assertFalse(ALL.isLeft(0, GROUP.get(1), played(0, 1, 1, 0, 0, 1)));
    }

    @Test
    void isPartedWhereTheMeasuresAreDifferentIntoTheCommonestKindAndTheOthers() {
        List<Block> parts = ALL.parts(played(0, 1, 0, 0, 0, 1));
        boolean[][] commonest = parts.get(0).of(0);
        boolean[][] others = parts.get(1).of(0);
        assertNotNull(commonest);
        assertNotNull(others);
        assertArrayEquals(new boolean[] {true, true}, commonest[0]);
        assertArrayEquals(new boolean[] {false, true}, commonest[1]);
        assertArrayEquals(new boolean[] {true, false}, others[1]);
    }

    @Test
    void measureThatIsPlayedOtherwiseHasLeftWhatIsAllowed() {
        Marks marks = played(0, 1, 0, 0, 0, 1);
        Block commonest = ALL.parts(marks).get(0);
        assertFalse(commonest.isLeft(0, GROUP.get(0), marks));
        assertTrue(commonest.isLeft(0, GROUP.get(1), marks));
    }

    @Test
    void alikeMeasuresArePartedUntilOneWayIsLeft() {
        Marks marks = played(0, 1, 0, 1, 0, 1);
        Block first = ALL.parts(marks).get(0);
        assertFalse(first.isSettled(0));
        Block second = first.parts(marks).get(0);
        assertTrue(second.isSettled(0));
        assertEquals(List.of(), second.parts(marks));
    }
}
