/**
 * Other people's drawings out of their files: which kind of file it is, and what the user says about it. Command line and worktable read
 * every drawing here. Gives a {@link trueseam.intake.drawing.Drawing} in mm, y up; knows nothing of pieces.
 */
package trueseam.intake.file;
