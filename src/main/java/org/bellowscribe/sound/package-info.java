/**
 * A decided tune to be heard: Standard MIDI Files of one playing, with every repeat. Decides nothing. May use {@code
 * decision}, {@code lefthand} and what lies below them.
 */
@NullMarked
package org.bellowscribe.sound;

import org.jspecify.annotations.NullMarked;
