package org.bellowscribe.learning;

import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Task;

/**
 * A tune with marks that somebody made.
 *
 * @param name how to name it to the user
 * @param task the tune with nothing fixed; its manner is not used
 * @param marks what was marked; what it leaves open says nothing
 */
public record TaughtTune(String name, Task task, Pins marks) {}
