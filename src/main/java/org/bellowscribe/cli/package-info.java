/**
 * The command line: options, streams, progress and exit codes. May use batch.
 */
@NullMarked
package org.bellowscribe.cli;

import org.jspecify.annotations.NullMarked;
