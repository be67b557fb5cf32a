/** Why the marks are as they are, what a pin costs, and what else could be played: by solving again. May use what solver may. */
@NullMarked
package org.bellowscribe.solver.explain;

import org.jspecify.annotations.NullMarked;
