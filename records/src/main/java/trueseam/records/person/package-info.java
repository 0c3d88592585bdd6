/**
 * People and their measures over time. A person has a label of the owner's choosing, never needed to be her name. A project has the
 * measuring days that it was fitted to; {@link trueseam.records.person.Days#of} puts the days of all her projects and those written
 * at the person together.
 */
package trueseam.records.person;
