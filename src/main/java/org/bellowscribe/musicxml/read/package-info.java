/**
 * Reads a score into a tune, one MusicXML topic a class. May use score, theory and diagnostic.
 */
@NullMarked
package org.bellowscribe.musicxml.read;

import org.jspecify.annotations.NullMarked;
