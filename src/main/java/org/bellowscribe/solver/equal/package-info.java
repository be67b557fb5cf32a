/**
 * Equal measures played alike: a price for those that differ, and the search above the search that weighs it. May use
 * the search only; knows no music.
 *
 * <h2>Words</h2>
 *
 * <ul>
 *   <li><b>group</b>: measures that are written the same; <b>outlier</b>: a measure of it that is played otherwise than
 *       most; each costs the price;
 *   <li><b>kind</b>: a way to mark an event, whatever lies behind it; measures with the same kinds look the same on the
 *       sheet;
 *   <li><b>pattern</b>: the kinds that most measures of a group have;
 *   <li><b>block</b>: a part of all answers, told by the kinds that the common marks of each group may have; narrowed step
 *       by step, blocks are the partition that branch and bound makes;
 *   <li><b>relaxation, subproblem, multiplier</b>: as in the literature on Lagrangian relaxation.
 * </ul>
 *
 * <h2>From above</h2>
 *
 * For given patterns {@link org.bellowscribe.solver.equal.PatternProblem} is exact: each measure keeps to its pattern or pays
 * the price. Patterns are taken from every answer that is found on the way.
 *
 * <h2>From below</h2>
 *
 * A {@link org.bellowscribe.solver.equal.Relaxation} lets the measures go their own ways in the tune's subproblem, where each
 * kind has a multiplier, and lets each group choose as a whole in a subproblem of its own, where it gets the multipliers
 * back. Both together cost no more than the best answer. Multipliers climb along the slope of that bound (subgradient).
 * They come to a halt where one of two measures wants the air and it is the same which: there
 * {@link org.bellowscribe.solver.equal.AlikeSearch} parts the block in two, at one event one kind of marks or any other; the
 * price of leaving what a block allows is shared between tune and group by a multiplier of its own. It ends when the two
 * bounds lie within two parts in a hundred, or when the work is used up. Of two
 * answers of as many whole points the one with fewer outliers is kept, then the cheaper.
 */
@NullMarked
package org.bellowscribe.solver.equal;

import org.jspecify.annotations.NullMarked;
