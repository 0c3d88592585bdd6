/** Who looked at or changed whose measures. It names no measures. */
package trueseam.records.access;
