/**
 * Plane geometry in the words of a cutting table: points, movements, lines and curves. It knows nothing of sewing.
 *
 * <p>Lengths are double millimetres, angles radians counted anticlockwise; x runs to the right, y up. Every value is
 * immutable and may be shared between threads. A {@link trueseam.geometry.Motion} can only turn and shift: nothing in
 * this room can stretch a line that is moved.
 *
 * <p>Required: finite coordinates no larger than {@link trueseam.geometry.Point#LIMIT_MM}. Guaranteed: each
 * approximation says how near it is. Not here: units other than millimetres, files, drawing.
 */
package trueseam.geometry;
