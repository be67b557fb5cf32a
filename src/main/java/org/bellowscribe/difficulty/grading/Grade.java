package org.bellowscribe.difficulty.grading;

/**
 * A grade.
 *
 * @param number 1 for the easiest, 9 for the hardest
 * @param name a few words for people
 * @param from points from which it begins
 */
public record Grade(int number, String name, double from) {}
