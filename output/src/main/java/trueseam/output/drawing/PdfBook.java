package trueseam.output.drawing;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.zip.CRC32;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import trueseam.geometry.Bounds;
import trueseam.geometry.Vec;

/**
 * A PDF in the making: pages in mm, layers, figures, one embedded typeface. Asks viewers to print without scaling. For one
 * thread; {@link #finished} gives the file once and ends the book.
 */
public final class PdfBook {

    /** The largest side of a page that every reader shows, mm: 14,400 units (ISO 32000-1, annex C). */
    public static final double LARGEST_MM = 14400 * 25.4 / 72;

    private record Sheet(PDPage page, Ink ink, PDResources resources) {}

    private final PDDocument document = new PDDocument();
    private final Typeface typeface = new Typeface(document);
    private final List<Sheet> sheets = new ArrayList<>();
    private final List<Layer> layers = new ArrayList<>();
    private final CRC32 content = new CRC32();
    private int figures;

    private PdfBook() {}

    /**
     * Begins a book.
     *
     * @param title shown by viewers as the name of the document
     * @param subject what it is for, in one sentence
     * @return an empty book
     */
    public static PdfBook titled(String title, String subject) {
        PdfBook book = new PdfBook();
        book.document.setVersion(1.7f);
        book.document.getDocumentInformation().setTitle(title);
        book.document.getDocumentInformation().setSubject(subject);
        book.document.getDocumentInformation().setCreator("Trueseam");
        book.document.getDocumentInformation().setProducer("Trueseam");
        PDDocumentCatalog catalog = book.document.getDocumentCatalog();
        catalog.setLanguage("en");
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        preferences.setDisplayDocTitle(true);
        preferences.getCOSObject().setBoolean(COSName.getPDFName("PickTrayByPDFSize"), true);
        catalog.setViewerPreferences(preferences);
        return book;
    }

    /**
     * The typeface, for measuring text before a page is begun.
     *
     * @return the typeface of the book
     */
    public Typeface typeface() {
        return typeface;
    }

    /**
     * Adds a page.
     *
     * @param widthMm its width, mm
     * @param heightMm its height, mm
     * @return the page to draw on
     */
    public Canvas page(double widthMm, double heightMm) {
        if (!(0 < widthMm && widthMm <= LARGEST_MM && 0 < heightMm && heightMm <= LARGEST_MM)) {
            throw new IllegalArgumentException("A page of " + widthMm + " by " + heightMm
                    + " mm is not possible; give sides above 0 and up to " + LARGEST_MM + " mm.");
        }
        PDPage page = new PDPage(rectangle(new Bounds(0, 0, widthMm, heightMm)));
        Sheet sheet = new Sheet(page, new Ink(), new PDResources());
        page.setResources(sheet.resources());
        document.addPage(page);
        sheets.add(sheet);
        return new Canvas(sheet.ink(), sheet.resources(), typeface, 1, Vec.ZERO);
    }

    /**
     * Adds a layer, shown at first.
     *
     * @param name what viewers call it
     * @return the layer
     */
    public Layer layer(String name) {
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        PDOptionalContentProperties properties = catalog.getOCProperties();
        if (properties == null) {
            properties = new PDOptionalContentProperties();
            catalog.setOCProperties(properties);
        }
        PDOptionalContentGroup group = new PDOptionalContentGroup(name);
        properties.addGroup(group);
        Layer layer = new Layer(layers.size() + 1, group);
        layers.add(layer);
        return layer;
    }

    /**
     * Draws something once, to be shown on pages with {@link Canvas#show}.
     *
     * @param area the area drawn on, mm; what lies outside is cut off
     * @param draw draws it
     * @return the figure
     */
    public Figure figure(Bounds area, Consumer<Canvas> draw) {
        Ink ink = new Ink();
        PDResources resources = new PDResources();
        draw.accept(new Canvas(ink, resources, typeface, 1, Vec.ZERO));
        PDFormXObject form = new PDFormXObject(stream(ink));
        form.setBBox(rectangle(area));
        form.setResources(resources);
        figures++;
        return new Figure(figures, form, area);
    }

    /**
     * The finished file. The book cannot be used afterwards.
     *
     * @return bytes of a PDF 1.7 file
     */
    public byte[] finished() {
        try (document) {
            for (Sheet sheet : sheets) {
                sheet.page().setContents(stream(sheet.ink()));
            }
            typeface.font().subset();
            // From the content and not from the clock: the same drawing gives the same file.
            document.setDocumentId(content.getValue());
            ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("The PDF cannot be written.", e);
        }
    }

    private PDStream stream(Ink ink) {
        byte[] bytes = ink.bytes();
        content.update(bytes);
        try {
            return new PDStream(document, new ByteArrayInputStream(bytes), COSName.FLATE_DECODE);
        } catch (IOException e) {
            throw new UncheckedIOException("A page of the PDF cannot be written.", e);
        }
    }

    private static PDRectangle rectangle(Bounds area) {
        return new PDRectangle(
                (float) (area.minX() * Ink.POINTS_PER_MM),
                (float) (area.minY() * Ink.POINTS_PER_MM),
                (float) (area.width() * Ink.POINTS_PER_MM),
                (float) (area.height() * Ink.POINTS_PER_MM));
    }
}
