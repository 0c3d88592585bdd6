package trueseam.intake.pdf;

import java.util.List;
import trueseam.intake.drawing.Drawing;

/**
 * What a PDF file holds.
 *
 * @param drawing the pattern's sheet, put together of its pages
 * @param others pages that are no part of it, each by itself: a cover may show the square to check the scale with
 */
public record PdfReading(Drawing drawing, List<Drawing> others) {

    /** Does not change. */
    public PdfReading {
        others = List.copyOf(others);
    }
}
