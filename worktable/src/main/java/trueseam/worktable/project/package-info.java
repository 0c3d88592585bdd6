/**
 * What was typed, kept as it was typed: one {@link trueseam.worktable.project.Project} a garment and person, with every earlier state
 * for undoing, in the record book. Every change names the version that it was made from, so that two tabs cannot overwrite
 * each other. A change is on disk before it is answered. Nothing that can be worked out is kept.
 */
package trueseam.worktable.project;
