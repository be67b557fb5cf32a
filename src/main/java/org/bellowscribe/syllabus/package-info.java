/**
 * What a pupil meets in a tune for the first time, and an order of tunes in which each brings as little new as can be: a
 * function of decided tunes. Knows no file and no clock. May use decision and what lies below it.
 */
@NullMarked
package org.bellowscribe.syllabus;

import org.jspecify.annotations.NullMarked;
