/**
 * The Print screen: on what paper, whole pieces or strips, which lines; how the pages go together and what is on each; and everything
 * there is to take away, from the full-size print to the report.
 */
package trueseam.worktable.print;
