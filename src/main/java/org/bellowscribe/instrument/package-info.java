/**
 * The instrument: buttons, left hand, bellows and air. May use theory and diagnostic.
 */
@NullMarked
package org.bellowscribe.instrument;

import org.jspecify.annotations.NullMarked;
