/** The record book's people: one page a person with her days, how her measures went, and two of her fittings side by side. */
package trueseam.worktable.people;
