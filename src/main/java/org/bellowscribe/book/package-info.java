/**
 * A book file: which tunes, in what order, for which instruments, and how they are marked, book-wide with exceptions. Knows
 * no score and no option's meaning: what an option takes is for those who read its value. May use definition and
 * diagnostic.
 */
@NullMarked
package org.bellowscribe.book;

import org.jspecify.annotations.NullMarked;
