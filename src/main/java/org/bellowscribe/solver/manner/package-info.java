/** Reads manners of playing from their files. May use solver, theory and diagnostic. */
@NullMarked
package org.bellowscribe.solver.manner;

import org.jspecify.annotations.NullMarked;
