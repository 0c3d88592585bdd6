package trueseam.output.steps;

import java.util.List;
import java.util.Optional;
import trueseam.fitting.tissue.Frame;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.Pen;
import trueseam.output.drawing.Shapes;
import trueseam.output.words.RulerLength;

/**
 * Draws the pictures of a chapter: the whole piece to the left, and to the right in circles what is too small to be seen there,
 * with how much larger it is shown.
 */
final class CellDrawing {

    /** A circle with its two lines of text. */
    static final double DETAIL_HIGH_MM = 23;

    private static final double RADIUS_MM = 8;
    private static final double WHOLE_SHARE_OF_CIRCLE = 0.42;
    private static final double ARROW_MM = 11;
    private static final double LARGER = 2;
    private static final Lettering SMALL = Lettering.of(2.2);
    private static final Pen RIM = Pen.of(0.2).gray(0.35);
    private static final Pen LEADER = Pen.of(0.12).gray(0.45);

    /** Sizes that a reader can imagine, as multiples of life size. */
    private static final double[] SIZES = {4, 3, 2, 1, 1.0 / 2, 1.0 / 3, 1.0 / 4, 1.0 / 5, 1.0 / 8, 1.0 / 10};

    private static final String[] SIZE_WORDS = {
        "4 times life size",
        "3 times life size",
        "2 times life size",
        "life size",
        "1/2 life size",
        "1/3 life size",
        "1/4 life size",
        "1/5 life size",
        "1/8 life size",
        "1/10 life size"
    };

    private final Piece piece;
    private final List<Step> steps;
    private final TableDrawing table;
    private final Bounds area;
    private final RulerLength ruler;

    CellDrawing(Piece piece, List<Step> steps, List<StepCell> cells, RulerLength ruler) {
        this.piece = piece;
        this.steps = List.copyOf(steps);
        this.table = new TableDrawing(piece, steps, cells);
        this.area = table.area(cells);
        this.ruler = ruler;
    }

    void draw(Canvas page, Bounds room, StepCell cell) {
        double column = 2 * RADIUS_MM + 2;
        Bounds whole = new Bounds(room.minX() + 2, room.minY() + 3, room.maxX() - column - 2, room.maxY() - 3);
        page.within(room, clipped -> whole(clipped.fitting(area, whole), cell));
        double top = room.maxY() - 1;
        double x = room.maxX() - RADIUS_MM - 1;
        List<Detail> details = Leaders.inOrder(
                Detail.of(cell, piece, steps, ruler).stream()
                        .filter(detail -> detail.moves() || isShownLarger(detail, whole))
                        .toList(),
                detail -> onPage(whole, detail.middle()));
        boolean numbered = details.size() > 1;
        for (Detail detail : details) {
            Point centre = new Point(x, top - RADIUS_MM);
            String label = numbered ? detail.step() + ": " + detail.label() : detail.label();
            if (detail.isSeen()) {
                leader(page, onPage(whole, detail.middle()), centre);
                circle(page, centre, detail, cell.last(), movedFrom(cell));
                below(page, centre, label, -2.6, SMALL.heavy());
            } else {
                below(page, centre, label, RADIUS_MM - 3, SMALL.heavy());
                below(page, centre, "(too small", RADIUS_MM - 6, SMALL);
                below(page, centre, "to see here)", RADIUS_MM - 8.6, SMALL);
            }
            top -= DETAIL_HIGH_MM;
        }
    }

    private static void below(Canvas page, Point centre, String text, double downMm, Lettering lettering) {
        Lettering fitted = page.typeface().fitted(text, lettering, 2 * RADIUS_MM, 1.4);
        page.text(text, centre.plus(new Vec(0, -RADIUS_MM + downMm)), fitted.centred());
    }

    private Point onPage(Bounds whole, Point p) {
        return whole.centre().plus(p.minus(area.centre()).times(scale(whole)));
    }

    private double scale(Bounds whole) {
        return Math.min(whole.width() / area.width(), whole.height() / area.height());
    }

    /** A line that a circle would show hardly larger than the picture does needs no circle. */
    private boolean isShownLarger(Detail detail, Bounds whole) {
        return SIZES[size(detail)] >= LARGER * scale(whole);
    }

    /** The largest size at which a detail fits into its circle. */
    private static int size(Detail detail) {
        int i = 0;
        while (i < SIZES.length - 1 && detail.sizeMm() * SIZES[i] > 2 * RADIUS_MM * WHOLE_SHARE_OF_CIRCLE) {
            i++;
        }
        return i;
    }

    private static Optional<Motion> movedFrom(StepCell cell) {
        for (Frame frame : cell.frames()) {
            if (!frame.before().equals(frame.pose())) {
                return Optional.of(frame.before());
            }
        }
        return Optional.empty();
    }

    private void whole(Canvas view, StepCell cell) {
        Frame frame = cell.last();
        table.pattern(view, frame);
        // The grainline of a pattern in parts lies on one of them; the lines that were traced show how each lies.
        if (frame.paper().size() == 1) {
            table.grain(view, frame.pose());
        }
        movedFrom(cell).ifPresent(pose -> table.before(view, frame, pose));
        table.tissue(view, frame);
        for (Frame one : cell.frames()) {
            if (one.step() instanceof Step.Pivot pivot) {
                turning(view, one, one.pin().orElseThrow(), NamedPlace.met(pivot.until()));
            } else if (one.step() instanceof Step.Spread spread) {
                turning(view, one, one.before().apply(spread.hinge().at()), NamedPlace.met(spread.until()));
            } else if (one.step() instanceof Step.Slide slide) {
                sliding(view, one, new Vec(slide.acrossMm(), slide.alongMm()));
            }
        }
    }

    private void turning(Canvas view, Frame frame, Point pin, Optional<Place> met) {
        double turn = frame.before().inverse().then(frame.pose()).turnRad();
        Point far =
                met.map((Place place) -> frame.pose().apply(place.on(piece))).orElseGet(() -> farthest(frame, pin));
        if (turn != 0 && !far.isNear(pin, 1)) {
            TableSymbols.turning(view, pin, pin.towards(far, 0.72), turn, ARROW_MM);
        }
    }

    private Point farthest(Frame frame, Point pin) {
        Point far = pin;
        for (Path outline : inHand(frame)) {
            for (Segment segment : outline.segments()) {
                far = segment.start().distanceTo(pin) > far.distanceTo(pin) ? segment.start() : far;
            }
        }
        return far;
    }

    /** What was moved, where it lies now. */
    private static List<Path> inHand(Frame frame) {
        for (Frame.Lying lying : frame.paper()) {
            if (lying.inHand()) {
                return lying.now();
            }
        }
        return frame.paper().get(0).now();
    }

    private static void sliding(Canvas view, Frame frame, Vec by) {
        if (by.length() > 0) {
            Vec half = by.unit().times(ARROW_MM / 2 / view.scale());
            Point middle = inHand(frame).get(0).bounds().centre();
            TableSymbols.arrow(view, middle.minus(half), middle.plus(half));
        }
    }

    /** From the left end of the circle, so that it runs beside the circle's text and not through it. */
    private static void leader(Canvas page, Point from, Point centre) {
        page.line(from, centre.plus(new Vec(-RADIUS_MM, 0)), LEADER);
        page.stroke(Shapes.circle(from, 1.6), LEADER);
    }

    private void circle(Canvas page, Point centre, Detail detail, Frame frame, Optional<Motion> movedFrom) {
        int i = size(detail);
        double factor = SIZES[i];
        Bounds square = Bounds.of(centre, centre).grown(RADIUS_MM);
        page.within(square, clipped -> {
            Point origin = centre.minus(detail.middle().minus(Point.ORIGIN).times(factor));
            Canvas view = clipped.view(factor, origin);
            table.pattern(view, frame);
            movedFrom.ifPresent(pose -> table.before(view, frame, pose));
            table.tissue(view, frame);
            if (detail.moves()) {
                TableSymbols.arrow(view, detail.from(), detail.to());
            }
        });
        page.fill(List.of(Shapes.rectangle(square.grown(0.3)), Shapes.circle(centre, RADIUS_MM)), 1);
        page.stroke(Shapes.circle(centre, RADIUS_MM), RIM);
        below(page, centre, SIZE_WORDS[i], -5.2, SMALL);
    }
}
