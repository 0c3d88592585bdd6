package trueseam.worktable.page;

/**
 * Who is signed in, as a page shows it.
 *
 * @param name what she is called
 * @param leads whether she leads classes
 * @param owns whether the studio is hers
 * @param whose whose project she looks at without changing it; empty: her own
 */
public record Signed(String name, boolean leads, boolean owns, String whose) {}
