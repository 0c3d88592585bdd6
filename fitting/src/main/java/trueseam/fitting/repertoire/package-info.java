/**
 * The repertoire: every alteration by its name, with what calls for it, what it moves, how its amount is shared, what must stay and
 * where that is published; and the steps that carry it out. Execution, step sheet, the list of alterations and the documents all come
 * from the entries here.
 *
 * <p>To add one: write a class with an {@link trueseam.fitting.repertoire.Entry} and name it in
 * {@link trueseam.fitting.repertoire.Repertoire}.
 */
package trueseam.fitting.repertoire;
