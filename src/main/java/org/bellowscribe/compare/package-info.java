/**
 * A page on which two ways to play the same tunes are compared: plain files that open from disk, without network. Says what
 * differs, and never which is better: that is for those who look at it. May use {@code page} and what lies
 * below them.
 */
@NullMarked
package org.bellowscribe.compare;

import org.jspecify.annotations.NullMarked;
