/**
 * Why a tune cannot be played, or not as asked: what stands in the way, with its measure and values, and each way out that
 * was tried and works. In this order: notes without a button, pins that conflict, the start that was asked for, and the
 * air. Used only by the solver.
 */
@NullMarked
package org.bellowscribe.solver.reason;

import org.jspecify.annotations.NullMarked;
