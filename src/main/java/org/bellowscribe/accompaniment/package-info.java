/**
 * What the left hand should sound, and what may stand in for it. May use score and instrument.
 */
@NullMarked
package org.bellowscribe.accompaniment;

import org.jspecify.annotations.NullMarked;
