/**
 * Pages to look at and listen to: a page for each marked tune and an index of them, plain files that open from disk. A
 * function of what was decided; decides nothing. What needs no script (drawings, tables, remarks) is written here; the
 * script of the pages adds choosing, sound and the engraved score.
 *
 * <p>May use {@code report}, {@code drawing}, {@code exercise}, {@code decision} and what lies below them; knows no file.
 */
@NullMarked
package org.bellowscribe.page;

import org.jspecify.annotations.NullMarked;
