/**
 * Studio mode: signing in, accounts, classes, and what each account has of people. Who may do what is said in {@link
 * trueseam.worktable.studio.Gate}; whose rows a request reaches, in {@link trueseam.worktable.studio.StudioSeats}; nowhere else.
 */
package trueseam.worktable.studio;
