/**
 * The tune as a player reads it: measures, events, harmonies, tempo and play order. May use theory and diagnostic.
 */
@NullMarked
package org.bellowscribe.score;

import org.jspecify.annotations.NullMarked;
