/**
 * Options of commands: each is declared once, as a name, an argument, a help text and a reader of its value with its
 * limits; a command line is parsed once. Uses definition and diagnostic only.
 */
@NullMarked
package org.bellowscribe.cli.option;

import org.jspecify.annotations.NullMarked;
