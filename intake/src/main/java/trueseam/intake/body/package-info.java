/**
 * Bodies in files, CSV and JSON, both ways and without loss, and the limits by which slips of the pen are found.
 *
 * <p>Reading never fails for one bad line: the body comes back with what could be read, and each line that could not is a
 * finding with its place. Only a file that is no such table at all is refused. What is written reads back as the same
 * body, to the last bit.
 */
package trueseam.intake.body;
