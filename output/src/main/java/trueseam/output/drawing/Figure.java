package trueseam.output.drawing;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import trueseam.geometry.Bounds;

/** A drawing made once and shown on any number of pages, always in its own size. Made by {@link PdfBook#figure}. */
public final class Figure {

    private final COSName key;
    private final PDFormXObject form;
    private final Bounds area;

    Figure(int number, PDFormXObject form, Bounds area) {
        this.key = COSName.getPDFName("X" + number);
        this.form = form;
        this.area = area;
    }

    /**
     * The area that it may draw on; what lies outside is cut off.
     *
     * @return mm, in the figure's own coordinates
     */
    public Bounds area() {
        return area;
    }

    COSName key() {
        return key;
    }

    PDFormXObject form() {
        return form;
    }
}
