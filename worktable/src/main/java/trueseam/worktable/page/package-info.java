/**
 * What all screens have in common. A {@link trueseam.worktable.page.Screen} names its addresses; each request is a
 * {@link trueseam.worktable.page.Visit}: it has the project, changes it with {@code change(label, field, ...)}, and answers with
 * {@code show} (a template) or {@code tell} (JSON for a script). Screens keep nothing between requests.
 */
package trueseam.worktable.page;
