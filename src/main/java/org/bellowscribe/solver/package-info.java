/**
 * The decision: buttons, fingers, bellows direction, left hand and air for every event, at the least cost. What stands here
 * is the contract: the {@link org.bellowscribe.solver.Task}, its {@link org.bellowscribe.solver.Outcome}, and the shapes of
 * rules and limits, which are plug-ins. May use score, instrument and accompaniment; knows no file, no clock and no
 * randomness.
 *
 * <p>The way of a tune through the rooms:
 *
 * <pre>
 *   Task --- model ---&gt; Problem --- search ---&gt; Answer --- equal ---&gt; Alike --- model ---&gt; Solution
 *              |                                                                            |
 *        rule, limit                                        explain (solves again) &lt;--------+
 *              +--- nothing to play, no answer ---&gt; reason (solves again)
 * </pre>
 *
 * <p>A room may use the contract and rooms further left; {@code search} knows only itself, {@code equal} only
 * {@code search}. {@link org.bellowscribe.solver.Solver} and {@link org.bellowscribe.solver.Reach} are the doors: what
 * callers ask, and the only classes of this package that look into its rooms. {@code manner} and {@code pin} read files.
 *
 * <p>{@link org.bellowscribe.solver.Rule} and its shapes form the one circle of classes here: a sealed interface names what
 * it permits.
 */
@NullMarked
package org.bellowscribe.solver;

import org.jspecify.annotations.NullMarked;
