/** Figures for a spreadsheet: CSV as RFC 4180 has it, numbers as decimals in the user's unit. */
package trueseam.output.csv;
