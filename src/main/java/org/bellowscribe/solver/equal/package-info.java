/**
 * Equal measures played alike: a price for those that differ, and the search above the search that weighs it. May use
 * the search only; knows no music.
 */
@NullMarked
package org.bellowscribe.solver.equal;

import org.jspecify.annotations.NullMarked;
