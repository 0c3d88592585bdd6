/** The Person screen: who she is and what the tape reads on her, with a figure that shows how it runs. */
package trueseam.worktable.person;
