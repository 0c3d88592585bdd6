/**
 * The Trial screen: the guided reading of the trial garment's folds, pointed at on a drawn garment, and what was pinned, sitting by
 * sitting. The answers of a reading stand in the address, so that going back is going back; what was pinned is kept in the project.
 */
package trueseam.worktable.trial;
