package trueseam.geometry.convert;

import trueseam.geometry.Path;

/**
 * One connected line of path data.
 *
 * @param path the line; where it is closed, its closing stroke is part of it
 * @param closed whether the data closes it on purpose (command Z)
 */
public record Subpath(Path path, boolean closed) {}
