package trueseam.output.drawing;

import java.util.List;
import java.util.function.Consumer;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDResources;
import trueseam.geometry.Bounds;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;

/**
 * A page, or a part of one, to draw on. Coordinates are mm from the lower left corner of the page, y up, unless the canvas is a
 * {@link #view}. For one thread, until its book is finished.
 *
 * <p>Laws: (1) what is drawn later covers what was drawn before; (2) pens and letters keep their size in a view; (3) settings do
 * not leak from one call to the next.
 */
public final class Canvas {

    private static final COSName FONT = COSName.getPDFName("F");

    /** Heavier letters are drawn with an outline as thick as this share of their size. */
    private static final double HEAVY = 0.035;

    private final Ink ink;
    private final PDResources resources;
    private final Typeface typeface;
    private final double scale;
    private final Vec shift;

    Canvas(Ink ink, PDResources resources, Typeface typeface, double scale, Vec shift) {
        this.ink = ink;
        this.resources = resources;
        this.typeface = typeface;
        this.scale = scale;
        this.shift = shift;
    }

    /**
     * The typeface, for measuring text.
     *
     * @return the typeface of the book
     */
    public Typeface typeface() {
        return typeface;
    }

    /**
     * This page seen in other coordinates: a drawing laid down at a place and a scale.
     *
     * @param factor size on paper of one mm of the drawing, above 0; 1 for full size
     * @param origin where the drawing's origin lies on this canvas
     * @return a canvas in the drawing's coordinates
     */
    public Canvas view(double factor, Point origin) {
        if (!(factor > 0)) {
            throw new IllegalArgumentException("factor is not above 0: " + factor);
        }
        Point there = onPage(origin);
        return new Canvas(ink, resources, typeface, scale * factor, new Vec(there.x(), there.y()));
    }

    /**
     * A view in which an area of the drawing fills an area of this canvas as far as its proportions allow, centred.
     *
     * @param drawing area of the drawing, mm, not empty
     * @param room area of this canvas, mm
     * @return a canvas in the drawing's coordinates
     */
    public Canvas fitting(Bounds drawing, Bounds room) {
        double factor = Math.min(room.width() / drawing.width(), room.height() / drawing.height());
        Point origin = new Point(
                room.centre().x() - factor * drawing.centre().x(),
                room.centre().y() - factor * drawing.centre().y());
        return view(factor, origin);
    }

    /**
     * How large one mm of this canvas is on the page.
     *
     * @return 1 for full size
     */
    public double scale() {
        return scale;
    }

    /**
     * Draws a line.
     *
     * @param path the line
     * @param pen how
     */
    public void stroke(Path path, Pen pen) {
        ink.op("q");
        use(pen);
        trace(path);
        ink.op(path.isClosed() ? "s" : "S").op("Q");
    }

    /**
     * Draws several lines alike.
     *
     * @param paths the lines
     * @param pen how
     */
    public void stroke(List<Path> paths, Pen pen) {
        if (paths.isEmpty()) {
            return;
        }
        ink.op("q");
        use(pen);
        for (Path path : paths) {
            trace(path);
            if (path.isClosed()) {
                ink.op("h");
            }
        }
        ink.op("S").op("Q");
    }

    /**
     * Draws a straight line.
     *
     * @param from one end
     * @param to the other end
     * @param pen how
     */
    public void line(Point from, Point to, Pen pen) {
        stroke(Path.through(from, to), pen);
    }

    /**
     * Fills an area.
     *
     * @param outlines closed paths; what lies in an odd number of them is inside
     * @param gray from 0, black, to 1, white
     */
    public void fill(List<Path> outlines, double gray) {
        Gray.check(gray);
        if (outlines.isEmpty()) {
            return;
        }
        ink.op("q").number(gray).op("g");
        traceClosed(outlines);
        ink.op("f*").op("Q");
    }

    /**
     * Hatches an area with parallel lines.
     *
     * @param outlines closed paths; what lies in an odd number of them is inside
     * @param apartMm from line to line, mm on the page
     * @param angleRad direction of the lines, anticlockwise from the right
     * @param pen how
     */
    public void hatch(List<Path> outlines, double apartMm, double angleRad, Pen pen) {
        if (outlines.isEmpty()) {
            return;
        }
        Bounds box = outlines.get(0).bounds();
        for (Path outline : outlines) {
            box = box.with(outline.bounds());
        }
        ink.op("q");
        traceClosed(outlines);
        ink.op("W*").op("n");
        use(pen);
        double apart = apartMm / scale;
        Vec along = Vec.atAngle(angleRad);
        Vec across = along.left();
        double reach = Math.hypot(box.width(), box.height()) / 2 + apart;
        // Counted from the origin, so that the hatching of neighbours continues.
        double middle = across.dot(box.centre().minus(Point.ORIGIN));
        double centreAlong = along.dot(box.centre().minus(Point.ORIGIN));
        for (long i = (long) Math.floor((middle - reach) / apart); i * apart <= middle + reach; i++) {
            Point foot = Point.ORIGIN.plus(across.times(i * apart)).plus(along.times(centreAlong));
            to(foot.minus(along.times(reach)), "m");
            to(foot.plus(along.times(reach)), "l");
        }
        ink.op("S").op("Q");
    }

    /**
     * Draws on a part of the page only: what lies outside is cut off.
     *
     * @param area the part, mm
     * @param draw draws on this canvas
     */
    public void within(Bounds area, Consumer<Canvas> draw) {
        ink.op("q");
        trace(Shapes.rectangle(area));
        ink.op("h").op("W").op("n");
        draw.accept(this);
        ink.op("Q");
    }

    /**
     * Draws on a layer.
     *
     * @param layer a layer of this book
     * @param draw draws on this canvas
     */
    public void on(Layer layer, Consumer<Canvas> draw) {
        resources.put(layer.key(), layer.group());
        ink.word("/OC").word("/" + layer.key().getName()).op("BDC");
        draw.accept(this);
        ink.op("EMC");
    }

    /**
     * Shows a figure at its own size.
     *
     * @param figure a figure of this book
     * @param origin where its origin lies on this canvas
     */
    public void show(Figure figure, Point origin) {
        resources.put(figure.key(), figure.form());
        Point there = onPage(origin);
        ink.op("q").word("1 0 0 1").at(there).op("cm");
        ink.word("/" + figure.key().getName()).op("Do").op("Q");
    }

    /**
     * Sets one line of text.
     *
     * @param text the line; characters that the typeface lacks are shown as squares
     * @param at the point on the base line that the lettering's alignment names
     * @param lettering how
     */
    public void text(String text, Point at, Lettering lettering) {
        String line = typeface.settable(text);
        if (line.isBlank()) {
            return;
        }
        double width = typeface.widthOf(line, lettering);
        double back =
                switch (lettering.align()) {
                    case LEFT -> 0;
                    case CENTRE -> width / 2;
                    case RIGHT -> width;
                };
        Vec along = Vec.atAngle(lettering.turnRad());
        Point start = onPage(at).minus(along.times(back));
        if (lettering.onWhite()) {
            whiten(start, along, width, lettering.sizeMm());
        }
        resources.put(FONT, typeface.font());
        ink.op("q").number(lettering.gray()).op("g");
        if (lettering.bold()) {
            ink.number(lettering.gray()).op("G");
            ink.mm(lettering.sizeMm() * HEAVY).op("w").op("1 j").op("2 Tr");
        }
        ink.op("BT").word("/" + FONT.getName()).mm(lettering.sizeMm()).op("Tf");
        ink.fine(along.x()).fine(along.y()).fine(-along.y()).fine(along.x());
        ink.at(start).op("Tm");
        ink.glyphs(typeface.codes(line)).op("Tj").op("ET").op("Q");
    }

    /**
     * Sets text in lines below each other, broken to a width.
     *
     * @param text any text
     * @param topLeft upper corner of the text; right end or middle of the first line's top for other alignments
     * @param widthMm room, mm on the page
     * @param lettering how; not turned
     * @return how much room it took downwards, mm on the page
     */
    public double paragraph(String text, Point topLeft, double widthMm, Lettering lettering) {
        double down = lettering.sizeMm();
        for (String line : typeface.wrapped(text, lettering, widthMm)) {
            text(line, new Point(topLeft.x(), topLeft.y() - down / scale), lettering);
            down += lettering.lineMm();
        }
        return down - lettering.sizeMm();
    }

    private void whiten(Point start, Vec along, double width, double size) {
        Point low = start.minus(along.times(size * 0.15)).minus(along.left().times(size * 0.25));
        Vec wide = along.times(width + size * 0.3);
        Vec high = along.left().times(size * 1.1);
        ink.op("q").op("1 g").at(low).op("m").at(low.plus(wide)).op("l");
        ink.at(low.plus(wide).plus(high))
                .op("l")
                .at(low.plus(high))
                .op("l")
                .op("f")
                .op("Q");
    }

    private Point onPage(Point p) {
        return new Point(scale * p.x() + shift.x(), scale * p.y() + shift.y());
    }

    private void use(Pen pen) {
        ink.mm(pen.widthMm()).op("w").number(pen.gray()).op("G");
        if (pen.dash() == Dash.SOLID) {
            ink.op("1 j");
        } else {
            ink.word("[");
            for (int i = 0; i < pen.dash().count(); i++) {
                ink.mm(pen.dash().onOffMm(i));
            }
            ink.word("]").op("0 d");
        }
    }

    private void traceClosed(List<Path> outlines) {
        for (Path outline : outlines) {
            trace(outline);
            ink.op("h");
        }
    }

    private void trace(Path path) {
        to(path.start(), "m");
        for (Segment s : path.segments()) {
            if (s instanceof Cubic c) {
                ink.at(onPage(c.handle1()))
                        .at(onPage(c.handle2()))
                        .at(onPage(c.end()))
                        .op("c");
            } else if (s instanceof Line l) {
                to(l.end(), "l");
            }
        }
    }

    private void to(Point p, String operator) {
        ink.at(onPage(p)).op(operator);
    }
}
