/**
 * Remarks to the user: severity, stable code, place and advice. May use the JDK only.
 */
@NullMarked
package org.bellowscribe.diagnostic;

import org.jspecify.annotations.NullMarked;
