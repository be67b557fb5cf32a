/**
 * The decision: buttons, fingers, bellows direction, left hand and air for every event, at the least cost. May use score, instrument and accompaniment; knows no file, no clock and no randomness.
 */
@NullMarked
package org.bellowscribe.solver;

import org.jspecify.annotations.NullMarked;
