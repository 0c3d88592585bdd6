package trueseam.garment.flat;

import trueseam.garment.measure.Measure;

/**
 * A marked level of a pattern.
 *
 * @param measure the measure that is compared with it
 * @param at where it lies and how far round the pattern is there
 */
public record FlatLevel(Measure measure, GirthAt at) {}
