/**
 * Reads patterns of the left hand from their files. May use accompaniment and definition.
 */
@NullMarked
package org.bellowscribe.accompaniment.pattern;

import org.jspecify.annotations.NullMarked;
