/**
 * Reads marks back into what they say, so that those changed by hand can be kept. May use annotation and what annotation
 * may use.
 */
@NullMarked
package org.bellowscribe.annotation.edit;

import org.jspecify.annotations.NullMarked;
