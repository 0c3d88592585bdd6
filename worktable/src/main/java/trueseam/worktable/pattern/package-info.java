/** The Pattern screen: which pattern is fitted, in what size, and why in that one. */
package trueseam.worktable.pattern;
