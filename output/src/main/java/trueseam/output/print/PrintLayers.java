package trueseam.output.print;

import trueseam.output.drawing.Layer;
import trueseam.output.drawing.PdfBook;

/**
 * The layers of a print.
 *
 * @param original the outline as bought
 * @param altered the outline as altered
 * @param allowance cutting lines and what is written beside them
 * @param marks everything inside
 */
record PrintLayers(Layer original, Layer altered, Layer allowance, Layer marks) {

    static PrintLayers of(PdfBook book) {
        return new PrintLayers(
                book.layer("original"), book.layer("altered"), book.layer("allowance"), book.layer("marks"));
    }
}
