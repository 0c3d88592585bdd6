package trueseam.output.drawing;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;

/** A layer that the reader of the file can show or hide (optional content, ISO 32000-1, 8.11). Made by {@link PdfBook#layer}. */
public final class Layer {

    private final COSName key;
    private final PDOptionalContentGroup group;

    Layer(int number, PDOptionalContentGroup group) {
        this.key = COSName.getPDFName("L" + number);
        this.group = group;
    }

    /**
     * The name shown.
     *
     * @return for example {@code altered}
     */
    public String name() {
        return group.getName();
    }

    COSName key() {
        return key;
    }

    PDOptionalContentGroup group() {
        return group;
    }
}
