/**
 * The labels and signs of the marks, as data that a house can change. May use instrument, definition and diagnostic.
 */
@NullMarked
package org.bellowscribe.annotation.style;

import org.jspecify.annotations.NullMarked;
