/**
 * Reading the reports of earlier fits ({@code report.json}) back: what was altered, for whom, on which pattern, when.
 *
 * <p>Only what the evidence for standing alterations needs is read; everything else in the file is passed over.
 */
package trueseam.intake.report;
