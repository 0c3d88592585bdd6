/**
 * Lengths as a dressmaker writes and reads them, and as the program keeps them.
 *
 * <p>Inside the program a length is a double of millimetres. Inches exist only here: {@link
 * trueseam.garment.length.Length#parse} reads {@code 37 1/2 in}, {@code 5/8"}, {@code 95,2 cm} exactly (one inch is 25.4
 * mm), and {@link trueseam.garment.length.LengthFormat} shows millimetres rounded half up to the step that the user has
 * chosen. Reading what was shown gives the shown length back; what the rounding took off is gone.
 */
package trueseam.garment.length;
