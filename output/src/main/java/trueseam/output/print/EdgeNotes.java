package trueseam.output.print;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Fractions;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.PatternSymbols;

/** Writes the name and the allowance along each edge, between stitching and cutting line. */
final class EdgeNotes {

    /** In a narrower allowance no letter can be read, mm. */
    private static final double NARROWEST_MM = 5;

    private static final double SIZE_MM = 3.6;

    /** Where along the edge a note may stand, best first. */
    private static final List<Double> PLACES =
            List.of(0.5, 0.45, 0.55, 0.4, 0.6, 0.35, 0.65, 0.3, 0.7, 0.25, 0.75, 0.2, 0.8, 0.15, 0.85);

    private final PieceLines lines;
    private final PrintOptions options;
    private final FreeRoom room;

    EdgeNotes(PieceLines lines, PrintOptions options, FreeRoom room) {
        this.lines = lines;
        this.options = options;
        this.room = room;
    }

    void draw(Canvas canvas) {
        for (Edge edge : lines.piece().edges()) {
            if (edge.allowanceMm() > 0) {
                note(canvas, edge);
            }
        }
    }

    private void note(Canvas canvas, Edge edge) {
        boolean outside = lines.cutting().isPresent();
        double band = outside ? edge.allowanceMm() : 10;
        if (band < NARROWEST_MM) {
            return;
        }
        String width = Fractions.set(options.lengths().show(edge.allowanceMm()));
        List<String> wordings = outside
                ? List.of(edge.name() + ", allowance " + width, edge.name() + " " + width, width)
                : List.of(edge.name() + ", add " + width, "add " + width);
        Lettering lettering = Lettering.of(Math.min(SIZE_MM, band * 0.4)).centred();
        double out = outside ? band / 2 : -band / 2;
        // Rather fewer words than words cut by the edge of a sheet; rather those than none.
        for (boolean clear : new boolean[] {true, false}) {
            for (String words : wordings) {
                double half = canvas.typeface().widthOf(words, lettering) / 2;
                for (double share : PLACES) {
                    double at = share * edge.length();
                    if (isFree(edge, at, half) && isStraight(edge.path(), at, half, band * 0.15)) {
                        List<Bounds> boxes = boxes(edge, at, out, half, lettering);
                        if (!clear || isClear(boxes)) {
                            set(canvas, edge, at, out, words, lettering);
                            boxes.forEach(room::keep);
                            return;
                        }
                    }
                }
            }
        }
    }

    /** What the words cover, letter by letter: one box round slanting words would cover the lines beside them too. */
    private static List<Bounds> boxes(Edge edge, double at, double out, double half, Lettering lettering) {
        Vec along = edge.path().tangentAt(at);
        Point middle = edge.path().pointAt(at).plus(along.right().times(out));
        List<Bounds> boxes = new ArrayList<>();
        int letters = (int) Math.ceil(2 * half / lettering.sizeMm());
        for (int i = 0; i <= letters; i++) {
            Point p = middle.plus(along.times(half * (2.0 * i / letters - 1)));
            boxes.add(Bounds.of(p, p).grown(lettering.sizeMm() / 2));
        }
        return boxes;
    }

    private boolean isClear(List<Bounds> boxes) {
        return boxes.stream().allMatch(box -> room.covered(box) == 0);
    }

    private void set(Canvas canvas, Edge edge, double at, double out, String words, Lettering lettering) {
        Vec along = edge.path().tangentAt(at);
        double angle = PatternSymbols.readable(along);
        Point middle = edge.path().pointAt(at).plus(along.right().times(out));
        Point base = middle.minus(Vec.atAngle(angle).left().times(lettering.sizeMm() * 0.35));
        canvas.text(words, base, lettering.turned(angle));
    }

    private boolean isFree(Edge edge, double at, double half) {
        if (at - half < 3 || at + half > edge.length() - 3) {
            return false;
        }
        Piece piece = lines.piece();
        for (Notch notch : piece.notches()) {
            if (notch.edge().equals(edge.name()) && Math.abs(notch.atMm() - at) < half + 3) {
                return false;
            }
        }
        for (Dart.EdgeDart dart : piece.dartsOn(edge.name())) {
            if (dart.fromMm() - half - 2 < at && at < dart.toMm() + half + 2) {
                return false;
            }
        }
        return true;
    }

    /** Whether the edge leaves a straight line of words by no more than so much. */
    private static boolean isStraight(Path path, double at, double half, double byMm) {
        Point middle = path.pointAt(at);
        Vec across = path.tangentAt(at).left();
        for (double away : new double[] {-half, half}) {
            if (Math.abs(across.dot(path.pointAt(at + away).minus(middle))) > byMm) {
                return false;
            }
        }
        return true;
    }
}
