/**
 * A decided tune in words, measure by measure: for blind players, for screen readers and braille lines, for reading over
 * the telephone. A function of a decided tune and a style; decides nothing.
 *
 * <p>May use {@code annotation} and what lies below it.
 */
@NullMarked
package org.bellowscribe.words;

import org.jspecify.annotations.NullMarked;
