/** The hard limits, one a file. May use solver and what it uses. */
@NullMarked
package org.bellowscribe.solver.limit;

import org.jspecify.annotations.NullMarked;
