package trueseam.intake.drawing;

import trueseam.geometry.Path;

/**
 * One line of a drawing.
 *
 * @param path where it runs, mm, y up; closed if its end is its start
 * @param look how it is drawn
 * @param layer the layer or group that it lies in, outermost first, joined by {@code /}; empty if none
 * @param label its own name or mark in the file, such as an id or a block and line; empty if none
 */
public record Stroke(Path path, Look look, String layer, String label) {}
