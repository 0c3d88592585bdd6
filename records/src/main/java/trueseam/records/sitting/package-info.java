/**
 * Sittings with the trial garment: what was seen and pinned. {@link trueseam.records.sitting.Evidence} is the same over all garments of
 * a person: what comes back in several is a standing alteration.
 */
package trueseam.records.sitting;
