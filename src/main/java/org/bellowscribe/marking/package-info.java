/**
 * The way of one tune: {@link org.bellowscribe.marking.TuneReader read} (score, pins, marks of an earlier run), {@link
 * org.bellowscribe.marking.TuneDecider decided} (key, solution, replay), {@link org.bellowscribe.marking.TuneMarker
 * marked} (the bytes of the sheet). Each step has only what the one before handed over.
 *
 * <p>Knows no files: bytes come in and bytes go out. May use {@code musicxml}, the outputs ({@code annotation}, {@code
 * lefthand}, {@code report}, {@code sound}) and what lies below them.
 */
@NullMarked
package org.bellowscribe.marking;

import org.jspecify.annotations.NullMarked;
