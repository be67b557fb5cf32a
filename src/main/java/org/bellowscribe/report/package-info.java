/**
 * What became of a tune, for people and programs. May use solver, replay, fit, lefthand, score and
 * instrument.
 */
@NullMarked
package org.bellowscribe.report;

import org.jspecify.annotations.NullMarked;
