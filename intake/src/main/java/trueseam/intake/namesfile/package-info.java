/**
 * The names file: what a drawing was taken for and what somebody says otherwise, as plain text that is read and changed in any editor
 * (docs/bring-in.md). One line is one fact; what stands behind a {@code #} is a remark and is not read. Every fact that
 * {@link trueseam.intake.namesfile.NamesFile#write} writes is read back by {@link trueseam.intake.namesfile.NamesFile#read}; a file that
 * is read unchanged corrects nothing. A line that cannot be read is told with file and line; nothing is guessed.
 */
package trueseam.intake.namesfile;
