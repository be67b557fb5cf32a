/**
 * How difficult a decided tune is: a sum of named terms, each with its own figure, weight and place, that a teacher can
 * argue with. A function of a decided tune and a grading; decides nothing.
 *
 * <p>Every figure is that of the hardest stretch of the tune at its tempo and counts only what is played there. So it never
 * falls when the tempo rises or more is played, before, after or at the same time; weights are 0 or more, so neither does
 * the sum.
 *
 * <p>May use {@code decision}, {@code lefthand} and what lies below them.
 */
@NullMarked
package org.bellowscribe.difficulty;

import org.jspecify.annotations.NullMarked;
