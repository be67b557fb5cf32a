/** The soft preferences, one a file. May use solver and what it uses. */
@NullMarked
package org.bellowscribe.solver.rule;

import org.jspecify.annotations.NullMarked;
