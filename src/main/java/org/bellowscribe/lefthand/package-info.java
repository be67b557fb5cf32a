/**
 * What follows for the left hand once a tune is solved: the strokes in order, their fingers, what they sound. May use
 * solver, accompaniment, score, instrument and theory.
 */
@NullMarked
package org.bellowscribe.lefthand;

import org.jspecify.annotations.NullMarked;
