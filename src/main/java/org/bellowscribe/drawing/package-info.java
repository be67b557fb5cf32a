/**
 * Pictures of a decided tune as SVG text: what the bellows do over one playing, and which buttons are used how often. For
 * print in black and white as for a page: everything is drawn in the color of the text, shades are only tints of it, and
 * what is told by a shade is told by a shape or a word too.
 *
 * <p>Decides nothing. May use {@code decision}, {@code replay} and what lies below them.
 */
@NullMarked
package org.bellowscribe.drawing;

import org.jspecify.annotations.NullMarked;
