/**
 * Why the air button is pressed where it is: each press is left out, everything else is played as marked, and what comes of
 * it is told. Where nothing does, the tune is solved again without that press, and the rules tell why.
 *
 * <p>Follows the bellows with the replay, which shares no code with the search. May use {@code replay}, {@code solver} and
 * what lies below them.
 */
@NullMarked
package org.bellowscribe.cause;

import org.jspecify.annotations.NullMarked;
