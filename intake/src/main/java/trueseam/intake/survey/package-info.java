/**
 * The 2012 survey of US Army personnel (ANSUR II, public domain): 6,068 people, and how its columns become the measures
 * of a {@link trueseam.garment.body.Body}.
 *
 * <p>The survey lacks some measures of the trade and takes others elsewhere; above all its waist is at the navel. What is
 * used in a measure's place is a stand-in and says so. The mapping is written once, in {@code mapping.csv} beside this
 * package's classes. Values are millimetres as in the survey; nothing is corrected.
 */
package trueseam.intake.survey;
