/**
 * The stages in which a pupil learns a tune: right hand, bellows, left hand, both, both with fading helps, as played. Each
 * is a sheet made from the one decision of the tune; {@link org.bellowscribe.stage.Stage} names what sounds in it and what
 * is printed, {@link org.bellowscribe.stage.StageSheets} prints it. Decides nothing: the air of a stage is decided by {@code
 * marking}.
 *
 * <p>May use {@code musicxml}, {@code annotation}, {@code lefthand}, {@code decision} and what lies below them.
 */
@NullMarked
package org.bellowscribe.stage;

import org.jspecify.annotations.NullMarked;
