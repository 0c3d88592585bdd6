/**
 * The Table screen: the pieces at scale, original and altered; a handle dragged, and the whole fit follows; the tissue steps played; a tape
 * laid between two places; a seam walked. Every line, number and pose is the engine's; the script only shows and interpolates.
 */
package trueseam.worktable.table;
