/** Reads what a teacher has fixed in a tune from its file. May use solver, score, instrument, definition and diagnostic. */
@NullMarked
package org.bellowscribe.solver.pin;

import org.jspecify.annotations.NullMarked;
