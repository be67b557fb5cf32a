/**
 * The marks that come with the tool, one a file. May use annotation and what annotation may use.
 */
@NullMarked
package org.bellowscribe.annotation.mark;

import org.jspecify.annotations.NullMarked;
