package trueseam.output.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.flat.Span;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Level;
import trueseam.garment.pattern.Marking;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** What stands in the block of one piece. The numbers of the layers are those of the apparel convention. */
final class PieceBlock {

    private static final int BOUNDARY = 1;
    private static final int TURN_POINTS = 2;
    private static final int CURVE_POINTS = 3;
    private static final int NOTCHES = 4;
    private static final int MIRROR_LINE = 6;
    private static final int GRAIN = 7;
    private static final int INTERNAL = 8;
    private static final int SEW_LINE = 14;
    private static final int ANNOTATION = 15;

    /** The cuts of a double or triple notch stand so far apart (common practice). */
    private static final double CUTS_APART_MM = 5;

    /** A vertex of the cutting line so near to the line of the fold lies on it. */
    private static final double ON_FOLD_MM = 0.05;

    private static final double CROSS_MM = 4;
    private static final double LETTERS_MM = 5;

    private PieceBlock() {}

    static void write(DxfText dxf, Pattern pattern, Piece piece, Path cutting) {
        CutLine line = CutLine.of(cutting);
        dxf.polyline(BOUNDARY, line.points(), true);
        line.turns().forEach(p -> dxf.point(TURN_POINTS, p));
        line.curves().forEach(p -> dxf.point(CURVE_POINTS, p));
        dxf.polyline(SEW_LINE, CutLine.of(piece.outline()).points(), true);
        piece.notches().forEach(notch -> notch(dxf, piece, cutting, notch));
        piece.fold().ifPresent(fold -> mirrorLine(dxf, piece.edge(fold).path(), line.points()));
        dxf.line(GRAIN, piece.grain().from(), piece.grain().to());
        piece.darts().forEach(dart -> dart(dxf, piece, dart));
        piece.levels().forEach(level -> level(dxf, piece, level));
        piece.markings().forEach(marking -> marking(dxf, marking));
        piece.landmarks().forEach(landmark -> landmark(dxf, landmark));
        texts(dxf, pattern, piece, cutting.bounds().centre());
    }

    private static void notch(DxfText dxf, Piece piece, Path cutting, Notch notch) {
        Edge edge = piece.edge(notch.edge());
        double at = Math.min(notch.atMm(), edge.length());
        Vec outwards = edge.path().tangentAt(at).right();
        PathPlace cut = cutting.nearest(edge.path().pointAt(at).plus(outwards.times(edge.allowanceMm())));
        int cuts = notch.kind().cuts();
        for (int i = 0; i < cuts; i++) {
            double along = cut.alongMm() + CUTS_APART_MM * (i - (cuts - 1) / 2.0);
            double round = (along % cutting.length() + cutting.length()) % cutting.length();
            dxf.point(NOTCHES, cutting.pointAt(round), outwards.reversed());
        }
    }

    /** The line of the fold from end to end of the cutting line: what is drawn beyond it is the other half. */
    private static void mirrorLine(DxfText dxf, Path fold, List<Point> boundary) {
        Point start = fold.start();
        Vec along = fold.end().minus(start).unit();
        double least = 0;
        double most = fold.end().distanceTo(start);
        for (Point p : boundary) {
            Vec to = p.minus(start);
            if (Math.abs(along.cross(to)) <= ON_FOLD_MM) {
                least = Math.min(least, along.dot(to));
                most = Math.max(most, along.dot(to));
            }
        }
        dxf.line(MIRROR_LINE, start.plus(along.times(least)), start.plus(along.times(most)));
    }

    private static void dart(DxfText dxf, Piece piece, Dart dart) {
        if (dart instanceof Dart.EdgeDart d) {
            Path edge = piece.edge(d.edge()).path();
            List<Point> legs = List.of(edge.pointAt(d.fromMm()), d.apex(), edge.pointAt(d.toMm()));
            dxf.polyline(INTERNAL, legs, false);
            dxf.words(ANNOTATION, d.apex(), LETTERS_MM, d.name());
        } else if (dart instanceof Dart.DiamondDart d) {
            dxf.polyline(INTERNAL, d.corners(), true);
            dxf.words(ANNOTATION, d.top().towards(d.bottom(), 0.5), LETTERS_MM, d.name());
        } else {
            throw new IllegalArgumentException("a dart of a kind that cannot be written: " + dart);
        }
    }

    private static void level(DxfText dxf, Piece piece, Level level) {
        Optional<Span> span = Span.at(piece, level.y());
        span.filter(s -> !s.left().equals(s.right())).ifPresent(s -> {
            dxf.line(INTERNAL, s.left(), s.right());
            dxf.words(
                    ANNOTATION,
                    s.left().towards(s.right(), 0.05).plus(new Vec(0, 1)),
                    LETTERS_MM,
                    level.name().word());
        });
    }

    private static void marking(DxfText dxf, Marking marking) {
        List<Point> points = new ArrayList<>(marking.path().flattened(CutLine.CHORD_MM));
        boolean closed = marking.path().isClosed() && points.size() > 3;
        if (closed) {
            points.remove(points.size() - 1);
        }
        dxf.polyline(INTERNAL, points, closed);
        dxf.words(ANNOTATION, marking.path().start(), LETTERS_MM, marking.name());
    }

    /** A cross: drawn, not cut. */
    private static void landmark(DxfText dxf, Landmark landmark) {
        Point at = landmark.at();
        Vec across = new Vec(CROSS_MM, 0);
        dxf.line(INTERNAL, at.minus(across), at.plus(across));
        dxf.line(INTERNAL, at.minus(across.left()), at.plus(across.left()));
        dxf.words(ANNOTATION, at.plus(new Vec(CROSS_MM, CROSS_MM)), LETTERS_MM, landmark.name());
    }

    private static void texts(DxfText dxf, Pattern pattern, Piece piece, Point middle) {
        List<String> lines = new ArrayList<>();
        lines.add("Piece Name: " + piece.name());
        if (!pattern.size().isBlank()) {
            lines.add("Size: " + pattern.size());
        }
        lines.add("Quantity: " + piece.cutCount());
        lines.add("Category: " + piece.kind().word());
        piece.fold().ifPresent(fold -> lines.add("Annotation: " + fold + " on the fold"));
        for (int i = 0; i < lines.size(); i++) {
            dxf.words(BOUNDARY, middle.minus(new Vec(0, 2 * LETTERS_MM * i)), LETTERS_MM, lines.get(i));
        }
    }
}
