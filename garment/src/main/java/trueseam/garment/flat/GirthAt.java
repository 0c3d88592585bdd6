package trueseam.garment.flat;

/**
 * How far round a garment is at a height.
 *
 * @param heightMm mm above the zero of its {@link BodyPart}; below it negative
 * @param girthMm mm round the body, one leg or one arm
 */
public record GirthAt(double heightMm, double girthMm) {}
