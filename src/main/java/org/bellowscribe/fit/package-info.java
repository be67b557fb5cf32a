/**
 * Which instrument and which key suit a tune. May use solver, accompaniment, score, instrument, theory and diagnostic.
 */
@NullMarked
package org.bellowscribe.fit;

import org.jspecify.annotations.NullMarked;
