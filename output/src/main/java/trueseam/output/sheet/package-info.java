/**
 * Sheets to read at the table: paper of a printer at home, a running head and foot on every page, contents that flow downwards
 * from page to page.
 *
 * <p>Lengths are mm on the page, y up. It knows nothing of what is set.
 */
package trueseam.output.sheet;
