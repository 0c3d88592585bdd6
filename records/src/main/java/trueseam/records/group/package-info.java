/** Classes that a teacher leads, and what their students share with her: only to look at. */
package trueseam.records.group;
