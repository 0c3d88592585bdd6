package trueseam.intake.pdf;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Look;
import trueseam.intake.drawing.Stroke;

/** Follows what a page draws. One page, one thread. */
final class PageLines extends PDFGraphicsStreamEngine {

    private static final int MOST_STROKES = 200_000;

    private final double unitMm;
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Caption> captions = new ArrayList<>();
    private final Deque<String> layers = new ArrayDeque<>();
    private final List<List<Segment>> lines = new ArrayList<>();
    private List<Segment> line = new ArrayList<>();
    private Point start = Point.ORIGIN;
    private Point at = Point.ORIGIN;
    private final StringBuilder word = new StringBuilder();
    private Point wordAt = Point.ORIGIN;
    private double wordMm;
    private int pictures;

    PageLines(PDPage page) {
        super(page);
        this.unitMm = page.getUserUnit() * 25.4 / 72;
    }

    List<Stroke> strokes() {
        return strokes;
    }

    List<Caption> captions() {
        return captions;
    }

    int pictures() {
        return pictures;
    }

    private Point mm(double x, double y) {
        return new Point(x * unitMm, y * unitMm);
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        moveTo((float) p0.getX(), (float) p0.getY());
        lineTo((float) p1.getX(), (float) p1.getY());
        lineTo((float) p2.getX(), (float) p2.getY());
        lineTo((float) p3.getX(), (float) p3.getY());
        closePath();
    }

    @Override
    public void moveTo(float x, float y) {
        finish();
        at = mm(x, y);
        start = at;
    }

    @Override
    public void lineTo(float x, float y) {
        Point to = mm(x, y);
        if (!to.isNear(at, 1e-9)) {
            line.add(new Line(at, to));
            at = to;
        }
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        Point to = mm(x3, y3);
        Point a = mm(x1, y1);
        Point b = mm(x2, y2);
        if (!(to.isNear(at, 1e-9) && a.isNear(at, 1e-9) && b.isNear(at, 1e-9))) {
            line.add(new Cubic(at, a, b, to));
            at = to;
        }
    }

    @Override
    public Point2D getCurrentPoint() {
        return new Point2D.Double(at.x() / unitMm, at.y() / unitMm);
    }

    @Override
    public void closePath() {
        if (!line.isEmpty() && !at.isNear(start, 1e-9)) {
            line.add(new Line(at, start));
        }
        at = start;
        finish();
    }

    private void finish() {
        if (!line.isEmpty()) {
            lines.add(line);
            line = new ArrayList<>();
        }
    }

    @Override
    public void endPath() {
        finish();
        lines.clear();
    }

    @Override
    public void strokePath() {
        draw(getGraphicsState().getStrokingColor(), true);
    }

    @Override
    public void fillPath(int windingRule) {
        draw(getGraphicsState().getNonStrokingColor(), false);
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        strokePath();
    }

    private void draw(PDColor colour, boolean stroked) {
        finish();
        Look look = look(colour, stroked);
        String layer = String.join("/", (Iterable<String>) layers::descendingIterator);
        for (List<Segment> segments : lines) {
            if (strokes.size() >= MOST_STROKES) {
                throw new TooManyLinesException();
            }
            strokes.add(new Stroke(Path.of(segments), look, layer, ""));
        }
        lines.clear();
    }

    /** Raised out of the page's instructions, where only the number of lines is known. */
    static final class TooManyLinesException extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private Look look(PDColor colour, boolean stroked) {
        Matrix matrix = getGraphicsState().getCurrentTransformationMatrix();
        double scale = Math.sqrt(Math.abs(matrix.getScalingFactorX() * matrix.getScalingFactorY())) * unitMm;
        List<Double> dashes = new ArrayList<>();
        double width = 0;
        if (stroked) {
            width = getGraphicsState().getLineWidth() * scale;
            for (float dash : getGraphicsState().getLineDashPattern().getDashArray()) {
                dashes.add(Math.round(dash * scale * 1000) / 1000.0);
            }
        }
        return new Look(rgb(colour), Math.round(width * 1000) / 1000.0, dashes);
    }

    private static String rgb(PDColor colour) {
        try {
            return String.format(Locale.ROOT, "#%06x", colour.toRGB() & 0xffffff);
        } catch (IOException | RuntimeException e) {
            return "#000000"; // a colour space of the file's own that cannot be read: the line is still a line
        }
    }

    @Override
    public void drawImage(PDImage image) {
        pictures++;
    }

    @Override
    public void clip(int windingRule) {
        // What is cut off by a window is often the next page of the pattern: it is kept.
    }

    @Override
    public void shadingFill(COSName shadingName) {
        pictures++;
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
        String name = "";
        if (COSName.OC.equals(tag) && properties != null) {
            PDPropertyList list = PDPropertyList.create(properties);
            if (list instanceof PDOptionalContentGroup group && group.getName() != null) {
                name = group.getName();
            }
        }
        layers.push(name);
        super.beginMarkedContentSequence(tag, properties);
    }

    @Override
    public void endMarkedContentSequence() {
        if (!layers.isEmpty()) {
            layers.pop();
        }
        super.endMarkedContentSequence();
    }

    @Override
    protected void showText(byte[] string) throws IOException {
        word.setLength(0);
        super.showText(string);
        String text = word.toString().replaceAll("\\s+", " ").strip();
        if (!text.isEmpty()) {
            captions.add(new Caption(
                    text,
                    wordAt,
                    wordMm,
                    String.join("/", (Iterable<String>) layers::descendingIterator),
                    rgb(getGraphicsState().getNonStrokingColor())));
        }
    }

    @Override
    protected void showGlyph(Matrix textRendering, PDFont font, int code, Vector displacement) throws IOException {
        if (word.isEmpty()) {
            wordAt = mm(textRendering.getTranslateX(), textRendering.getTranslateY());
            wordMm = Math.abs(textRendering.getScalingFactorY()) * unitMm;
        }
        String said = font.toUnicode(code);
        word.append(said == null ? "" : said);
    }
}
