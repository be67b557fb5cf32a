package org.bellowscribe.syllabus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class LevelBoundTest {

    @Test
    void squaresAreLeastWhenTheSumIsEven() {
        assertEquals(4 + 4 + 4, LevelBound.squares(new int[] {0, 0, 0}, new int[] {9, 9, 9}, 6));
    }

    @Test
    void whatIsLeftOverRaisesSomeByOne() {
        assertEquals(9 + 4 + 4, LevelBound.squares(new int[] {0, 0, 0}, new int[] {9, 9, 9}, 7));
    }

    @Test
    void noneIsMoreThanItCanBe() {
        assertEquals(1 + 9 + 4, LevelBound.squares(new int[] {0, 0, 0}, new int[] {1, 9, 9}, 6));
    }

    @Test
    void noneIsLessThanItMustBe() {
        assertEquals(16 + 1 + 1, LevelBound.squares(new int[] {4, 0, 0}, new int[] {9, 9, 9}, 6));
    }

    @Test
    void nothingToLearnCostsNothing() {
        assertEquals(0, LevelBound.squares(new int[] {0, 0}, new int[] {3, 3}, 0));
    }
}
