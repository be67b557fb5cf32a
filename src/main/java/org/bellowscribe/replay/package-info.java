/**
 * An independent checker that plays a solution through every pass. May use score,
 * instrument and the result types of solver; shares no code with the search.
 */
@NullMarked
package org.bellowscribe.replay;

import org.jspecify.annotations.NullMarked;
