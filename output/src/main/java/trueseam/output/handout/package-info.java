/**
 * The handout for a class: the teacher's worked example, and a set of practice sheets in quarter scale for every student. Nothing is
 * computed here; chart, step sheet and practice sheets are put together as one PDF.
 */
package trueseam.output.handout;
