/**
 * Facts about cloth that a pattern is cut from: how often its figure repeats. Lengths are millimetres. Laying pieces on it is not done here.
 */
package trueseam.garment.cloth;
