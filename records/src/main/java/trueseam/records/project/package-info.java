/**
 * Projects: one garment for one person, with every state that was typed, and what was made of it. What a state holds is text in the
 * words of the room that shows it; this room does not read it.
 */
package trueseam.records.project;
