/**
 * What can go wrong with the record book, each as one clear sentence: nothing was half-written. The library's own words stay in the
 * cause.
 */
package trueseam.records.trouble;
