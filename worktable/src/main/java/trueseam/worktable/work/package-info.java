/**
 * From what was typed to what comes of it: {@link trueseam.worktable.work.Workings} hands what a project holds to the engine, in the order
 * body, pattern, chart, fit, and gives each outcome or the sentence why there is none. Nothing is computed here but by calling the engine.
 */
package trueseam.worktable.work;
