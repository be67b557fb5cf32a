/**
 * Pitches, pitch classes, chord symbols, keys and exact musical time: pure values. May use the JDK only.
 */
@NullMarked
package org.bellowscribe.theory;

import org.jspecify.annotations.NullMarked;
