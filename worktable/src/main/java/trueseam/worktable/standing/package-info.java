/** Earlier patterns: bringing the reports of earlier fits, and what they propose for this one, with the evidence. A page beside the Chart. */
package trueseam.worktable.standing;
