/** The pattern file held to the shells that the drafting room draws. */
package trueseam.checks.patternfile;
