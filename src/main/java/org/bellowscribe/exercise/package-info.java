/**
 * Exercises made from a decided tune: the measure of each air mark alone, the hardest spots as chunks of a few notes, the
 * left hand alone where it moves most. {@link org.bellowscribe.exercise.Exercises} finds them, {@link
 * org.bellowscribe.exercise.ExerciseSheet} prints them; nothing of the playing is decided.
 *
 * <p>The practice rules behind them are from research on motor learning: sequences are learned in chunks of a few elements
 * (Verwey 2010), parts and the whole are practiced in turn (Fontana 2009), cues fade (Winstein 1994). They promise nothing.
 *
 * <p>May use {@code musicxml}, {@code annotation}, {@code lefthand}, {@code decision} and what lies below them.
 */
@NullMarked
package org.bellowscribe.exercise;

import org.jspecify.annotations.NullMarked;
