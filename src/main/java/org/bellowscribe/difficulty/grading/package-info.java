/** The terms of difficulty, their weights and the names of the grades, as data that a teacher can change. */
@NullMarked
package org.bellowscribe.difficulty.grading;

import org.jspecify.annotations.NullMarked;
