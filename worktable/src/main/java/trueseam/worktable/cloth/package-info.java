/**
 * The Cloth screen: which cloth, how the pieces lie on it, how much to buy; pieces laid by hand, and the search for a short layout, which runs
 * while the screen is looked at.
 */
package trueseam.worktable.cloth;
