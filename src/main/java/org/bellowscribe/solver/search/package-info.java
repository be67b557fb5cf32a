/**
 * The search: finds the cheapest assignment of an integer {@link org.bellowscribe.solver.search.Problem} and proves it.
 * Knows no music, no file, no clock and no randomness; may use the JDK only.
 */
@NullMarked
package org.bellowscribe.solver.search;

import org.jspecify.annotations.NullMarked;
