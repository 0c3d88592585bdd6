/** The Ease screen: garment and body by height, with the least ease between them, before and after; where it will be tight. */
package trueseam.worktable.ease;
