/**
 * What to write on the sheet, as data, and the plug-ins that decide it. May use solver, lefthand, score and
 * instrument.
 */
@NullMarked
package org.bellowscribe.annotation;

import org.jspecify.annotations.NullMarked;
