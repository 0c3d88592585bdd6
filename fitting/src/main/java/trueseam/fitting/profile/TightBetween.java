package trueseam.fitting.profile;

import trueseam.garment.measure.Measure;

/**
 * A stretch between two measured heights where the altered garment is tighter than the least ease by more than the tape may err
 * at both, if the body is as it is drawn in there.
 *
 * @param above the girth measured next above
 * @param below the girth measured next below
 * @param heightMm where it is tightest, mm above the zero of the part
 * @param shortMm how much it lacks there of the least ease, mm
 */
public record TightBetween(Measure above, Measure below, double heightMm, double shortMm) {}
