/**
 * One file, one job, one result; runs jobs on a worker pool and writes files atomically. May use all packages but cli.
 */
@NullMarked
package org.bellowscribe.batch;

import org.jspecify.annotations.NullMarked;
