/**
 * What a player would guess of a decided tune without being told, by stated rules of thumb. May use {@code decision} and
 * what lies below it.
 */
@NullMarked
package org.bellowscribe.guess;

import org.jspecify.annotations.NullMarked;
