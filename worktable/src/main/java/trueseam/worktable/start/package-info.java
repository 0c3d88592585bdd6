/** The list of projects, and going back and forth among a project's states. */
package trueseam.worktable.start;
