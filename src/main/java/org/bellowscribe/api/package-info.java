/**
 * The library: from the bytes of a score to those of its marked score and its record, for programs that use the tool inside
 * themselves. What is public here stays as it is from version to version; everything else in this jar may change. Nothing
 * here reads or writes a score's file, prints, or ends the process; any number of threads may use one object. Uses marking.
 */
@NullMarked
package org.bellowscribe.api;

import org.jspecify.annotations.NullMarked;
