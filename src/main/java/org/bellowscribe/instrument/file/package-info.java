/**
 * Instrument files, and the library of instruments that comes with the tool. May use instrument, definition, theory and
 * diagnostic.
 */
@NullMarked
package org.bellowscribe.instrument.file;

import org.jspecify.annotations.NullMarked;
