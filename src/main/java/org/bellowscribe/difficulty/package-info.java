/**
 * How difficult a tune is on its box at its tempo: a sum of named terms, each with its own figure, weight and place, that a
 * teacher can argue with. A function of a decided tune and a grading; decides nothing.
 *
 * <p>What depends on the choice of buttons is that of the easiest way, by the weights, of the stretch in which even that is
 * hardest ({@link org.bellowscribe.difficulty.EasiestWay}); all else is told by the tune, the box and what the left hand is
 * asked for. So the sum never falls when the tempo rises, a note is taken from the box or more is played, before, after or at
 * the same time; weights are 0 or more. Two terms are of the marks and not bound by that, and weigh nothing unless a grading
 * says so: twin basses and air marks. Where the left hand is asked for other strokes (from 220 quarters a minute on the usual
 * patterns have half as many) its own term can fall.
 *
 * <p>May use {@code decision}, {@code lefthand} and what lies below them.
 */
@NullMarked
package org.bellowscribe.difficulty;

import org.jspecify.annotations.NullMarked;
