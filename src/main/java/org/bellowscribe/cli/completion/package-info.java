/**
 * The declared options as other programs read them: completion for four shells, and a manual page. Uses cli.option only; what
 * commands there are it is told.
 */
@NullMarked
package org.bellowscribe.cli.completion;

import org.jspecify.annotations.NullMarked;
