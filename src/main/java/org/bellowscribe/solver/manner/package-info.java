/** Reads manners of playing from their files. May use solver, accompaniment, theory and diagnostic. */
@NullMarked
package org.bellowscribe.solver.manner;

import org.jspecify.annotations.NullMarked;
