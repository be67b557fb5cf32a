/**
 * Opens, reads and writes MusicXML; the only package that sees ProxyMusic and raw text. May use score, annotation and diagnostic.
 */
@NullMarked
package org.bellowscribe.musicxml;

import org.jspecify.annotations.NullMarked;
