package trueseam.intake.dxf;

import java.util.OptionalDouble;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.convert.Affine;

/** Something drawn, in mm, as it lies in its block or on the sheet. */
sealed interface Mark {

    /** How it is drawn. */
    Trait trait();

    /** A line. */
    record Stroke(Path path, Trait trait) implements Mark {}

    /** A point, with what the apparel convention keeps in it: depth and width of a notch in mm, its direction. */
    record Spot(Point at, OptionalDouble depthMm, OptionalDouble widthMm, OptionalDouble angleRad, Trait trait)
            implements Mark {}

    /** One line of words. */
    record Words(String text, Point at, double heightMm, Trait trait) implements Mark {}

    /** A block placed here; never stretched, only moved, turned, mirrored and made larger. */
    record Placing(String block, Affine placing, Trait trait) implements Mark {}
}
