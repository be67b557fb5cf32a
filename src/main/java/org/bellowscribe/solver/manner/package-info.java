/**
 * Reads manners of playing from their files. May use solver, accompaniment, theory and diagnostic. Reader and library know
 * each other: a manner may name another one of the library on which it is based.
 */
@NullMarked
package org.bellowscribe.solver.manner;

import org.jspecify.annotations.NullMarked;
