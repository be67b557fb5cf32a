/**
 * A tune of which everything is decided: the one thing that marks, sheets, records, reports and sounds are made from. It
 * only holds what was decided and decides nothing.
 *
 * <p>May use {@code solver}, {@code cause} and what lies below it.
 */
@NullMarked
package org.bellowscribe.decision;

import org.jspecify.annotations.NullMarked;
