package trueseam.intake.pdf;

import java.awt.geom.Area;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import trueseam.geometry.Bounds;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Look;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.tiles.Inked;
import trueseam.intake.tiles.Page;

/** Follows what a page draws. One page, one thread. */
final class PageLines extends PDFGraphicsStreamEngine {

    private static final int MOST_STROKES = 200_000;

    /** Forms that show forms can make a short file draw without end. */
    private static final int MOST_OPERATORS = 20_000_000;

    private final PageSpace space;
    private final List<Inked> strokes = new ArrayList<>();
    private final PageWords words = new PageWords();
    private final Layering layers = new Layering();
    private final List<List<Segment>> lines = new ArrayList<>();
    private List<Segment> line = new ArrayList<>();
    private Point start = Point.ORIGIN;
    private Point at = Point.ORIGIN;
    private float atX;
    private float atY;
    private float startX;
    private float startY;
    private boolean clipping;
    private Area clip = new Area();
    private Bounds window = Bounds.of(Point.ORIGIN, Point.ORIGIN);
    private long operators;
    private int pictures;

    PageLines(PDPage page) {
        super(page);
        this.space = PageSpace.of(page);
    }

    List<Inked> strokes() {
        return strokes;
    }

    /** Everything of the page, as far as it could be followed. */
    Page page(int number) {
        return new Page(
                number,
                space.paperWidth(),
                space.paperHeight(),
                strokes,
                words.seen(true),
                words.seen(false),
                pictures);
    }

    int pictures() {
        return pictures;
    }

    private Point mm(double x, double y) {
        return space.mm(x, y);
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
        atX = x;
        atY = y;
        startX = x;
        startY = y;
    }

    @Override
    public void lineTo(float x, float y) {
        Point to = mm(x, y);
        atX = x;
        atY = y;
        if (!to.isNear(at, 1e-9)) {
            line.add(new Line(at, to));
            at = to;
        }
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        Point to = mm(x3, y3);
        atX = x3;
        atY = y3;
        Point a = mm(x1, y1);
        Point b = mm(x2, y2);
        if (!(to.isNear(at, 1e-9) && a.isNear(at, 1e-9) && b.isNear(at, 1e-9))) {
            line.add(new Cubic(at, a, b, to));
            at = to;
        }
    }

    @Override
    public Point2D getCurrentPoint() {
        return new Point2D.Double(atX, atY);
    }

    @Override
    public void closePath() {
        if (!line.isEmpty() && !at.isNear(start, 1e-9)) {
            line.add(new Line(at, start));
        }
        at = start;
        atX = startX;
        atY = startY;
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
        clipHere();
        lines.clear();
    }

    /** Windows are rectangles: of any other shape the rectangle round it is taken. */
    private void clipHere() {
        if (!clipping) {
            return;
        }
        clipping = false;
        double[] box = {
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (List<Segment> segments : lines) {
            for (Segment segment : segments) {
                Bounds bounds = segment.bounds();
                box[0] = Math.min(box[0], bounds.minX());
                box[1] = Math.min(box[1], bounds.minY());
                box[2] = Math.max(box[2], bounds.maxX());
                box[3] = Math.max(box[3], bounds.maxY());
            }
        }
        if (box[0] <= box[2]) {
            Rectangle2D units = space.units(new Bounds(box[0], box[1], box[2], box[3]));
            getGraphicsState().intersectClippingPath(new Area(units));
        }
    }

    @Override
    public void strokePath() {
        draw(getGraphicsState().getStrokingColor(), true);
    }

    @Override
    public void fillPath(int windingRule) {
        // Filled with white and without a line round it: nothing that is seen on paper.
        if (rgb(getGraphicsState().getNonStrokingColor()).equals("#ffffff")) {
            endPath();
        } else {
            draw(getGraphicsState().getNonStrokingColor(), false);
        }
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        strokePath();
    }

    /** What of the page is drawn on at present. */
    private Bounds window() {
        Area now = getGraphicsState().getCurrentClippingPath();
        if (now != clip) { // the library gives the same area until the window changes
            clip = now;
            window = space.mm(now.getBounds2D());
        }
        return window;
    }

    private void draw(PDColor colour, boolean stroked) {
        finish();
        Look look = look(colour, stroked);
        Bounds visible = window();
        for (List<Segment> segments : lines) {
            if (strokes.size() >= MOST_STROKES) {
                throw new TooManyLinesException();
            }
            strokes.add(Inked.of(new Stroke(Path.of(segments), look, layers.name(), ""), visible));
        }
        clipHere();
        lines.clear();
    }

    /** Raised out of the page's instructions, where only the number of lines is known. */
    static final class TooManyLinesException extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private Look look(PDColor colour, boolean stroked) {
        Matrix matrix = getGraphicsState().getCurrentTransformationMatrix();
        double scale = Math.sqrt(Math.abs(matrix.getScalingFactorX() * matrix.getScalingFactorY())) * space.unitMm();
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
        clipping = true; // comes into force when the path is done with (ISO 32000-1, 8.5.4)
    }

    @Override
    public void shadingFill(COSName shadingName) {
        pictures++;
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
        layers.enter(COSName.OC.equals(tag) && properties != null ? PDPropertyList.create(properties) : null);
        super.beginMarkedContentSequence(tag, properties);
    }

    @Override
    public void endMarkedContentSequence() {
        layers.leave();
        super.endMarkedContentSequence();
    }

    @Override
    public void showForm(PDFormXObject form) throws IOException {
        layers.enter(form.getOptionalContent());
        super.showForm(form);
        layers.leave();
    }

    @Override
    public void showTransparencyGroup(PDTransparencyGroup form) throws IOException {
        layers.enter(form.getOptionalContent());
        super.showTransparencyGroup(form);
        layers.leave();
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        operators++;
        if (operators > MOST_OPERATORS) {
            throw new TooManyLinesException();
        }
        super.processOperator(operator, operands);
    }

    @Override
    protected void showGlyph(Matrix textRendering, PDFont font, int code, Vector displacement) throws IOException {
        String said = font.toUnicode(code);
        if (said == null) {
            return;
        }
        Point from = mm(textRendering.getTranslateX(), textRendering.getTranslateY());
        Point2D.Float end = textRendering.transformPoint(displacement.getX(), displacement.getY());
        double height = Math.abs(textRendering.getScalingFactorY()) * space.unitMm();
        Bounds box = window();
        boolean seen = box.meets(Bounds.of(from, from), 0.01);
        String colour = rgb(getGraphicsState().getNonStrokingColor());
        words.letter(said, new Caption("", from, height, layers.name(), colour), mm(end.x, end.y), seen);
    }
}
