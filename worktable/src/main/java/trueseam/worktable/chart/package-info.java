/** The Chart screen: need by need what the body has, what the paper has, what differs, and what is done about it, decided in place. */
package trueseam.worktable.chart;
