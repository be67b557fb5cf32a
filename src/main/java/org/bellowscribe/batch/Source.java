package org.bellowscribe.batch;

import java.nio.file.Path;

/**
 * A file to work on.
 *
 * @param file where it is
 * @param shown how to name it to the user
 * @param target where the result goes
 */
public record Source(Path file, String shown, Path target) {}
