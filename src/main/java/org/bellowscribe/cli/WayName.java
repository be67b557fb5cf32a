package org.bellowscribe.cli;

import org.bellowscribe.marking.Way;
import org.bellowscribe.solver.Manner;
import org.jspecify.annotations.Nullable;

/**
 * A way to play, as a line names it.
 *
 * @param name what it is called
 * @param kind what is wanted
 * @param manner the manner of playing; null for that of the line
 */
record WayName(String name, Way.Kind kind, @Nullable Manner manner) {}
