package trueseam.garment.flat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/** Garments of straight lines in round numbers, all of whose measures can be read off the corners; our own. */
final class Boards {

    private Boards() {}

    static Pattern pattern(Piece... pieces) {
        return new Pattern("board", "", "", "", List.of(pieces), List.of(), Map.of());
    }

    /** A half bodice: waist at y = 0, underarm at (w, 200), armhole 3-4-5 to the shoulder point, neck point at (60, 400). */
    static Piece bodice(String name, PieceKind kind, double widthMm) {
        Point side = new Point(widthMm, 0);
        Point underarm = new Point(widthMm, 200);
        Point across = new Point(widthMm - 45, 260);
        Point shoulder = new Point(widthMm - 45, 370);
        Point neck = new Point(60, 400);
        Point centre = new Point(0, 320);
        return new PieceBuilder(name, kind)
                .edge("waist", EdgeRole.WAIST, Path.through(Point.ORIGIN, side), 15)
                .edge("side", EdgeRole.SIDE, Path.through(side, underarm), 15)
                .edge("armhole", EdgeRole.ARMHOLE, Path.through(underarm, across, shoulder), 15)
                .edge("shoulder", EdgeRole.SHOULDER, Path.through(shoulder, neck), 15)
                .edge("neck", EdgeRole.NECK, Path.through(neck, centre), 6)
                .edge("centre", EdgeRole.CENTRE, Path.through(centre, Point.ORIGIN), 0)
                .onFold("centre")
                .level(LevelName.ACROSS, 300)
                .level(LevelName.BUST, 150)
                .level(LevelName.WAIST, 0)
                .landmark(Landmark.BUST_POINT, new Point(90, 160))
                .grain(new Grain(new Point(30, 50), new Point(30, 250)))
                .build();
    }

    /** The same front as a whole: both sides, no fold, cut once. */
    static Piece wholeFront(double widthMm) {
        double w = widthMm;
        Point neckLeft = new Point(-60, 400);
        Point neckRight = new Point(60, 400);
        Point base = new Point(0, 320);
        return new PieceBuilder("front", PieceKind.BODICE_FRONT)
                .edge("waist", EdgeRole.WAIST, Path.through(new Point(-w, 0), new Point(w, 0)), 15)
                .edge("side left", EdgeRole.SIDE, Path.through(new Point(w, 0), new Point(w, 200)), 15)
                .edge(
                        "armhole left",
                        EdgeRole.ARMHOLE,
                        Path.through(new Point(w, 200), new Point(w - 45, 260), new Point(w - 45, 370)),
                        15)
                .edge("shoulder left", EdgeRole.SHOULDER, Path.through(new Point(w - 45, 370), neckRight), 15)
                .edge("neck", EdgeRole.NECK, Path.through(neckRight, base, neckLeft), 6)
                .edge("shoulder right", EdgeRole.SHOULDER, Path.through(neckLeft, new Point(45 - w, 370)), 15)
                .edge(
                        "armhole right",
                        EdgeRole.ARMHOLE,
                        Path.through(new Point(45 - w, 370), new Point(45 - w, 260), new Point(-w, 200)),
                        15)
                .edge("side right", EdgeRole.SIDE, Path.through(new Point(-w, 200), new Point(-w, 0)), 15)
                .level(LevelName.ACROSS, 300)
                .level(LevelName.BUST, 150)
                .level(LevelName.WAIST, 0)
                .grain(new Grain(new Point(30, 50), new Point(30, 250)))
                .build();
    }

    static Piece front(double widthMm) {
        return bodice("front", PieceKind.BODICE_FRONT, widthMm);
    }

    static Piece back(double widthMm) {
        return bodice("back", PieceKind.BODICE_BACK, widthMm);
    }

    /** A sleeve 360 wide at the underarm, 240 at the wrist 450 below, with a cap of two 180-135-225 triangles. */
    static Piece sleeve() {
        Point wristRight = new Point(120, -450);
        Point wristLeft = new Point(-120, -450);
        Point right = new Point(180, 0);
        Point left = new Point(-180, 0);
        Point crown = new Point(0, 135);
        return new PieceBuilder("sleeve", PieceKind.SLEEVE)
                .edge("wrist", EdgeRole.WRIST, Path.through(wristLeft, wristRight), 40)
                .edge("underarm front", EdgeRole.UNDERARM, Path.through(wristRight, right), 15)
                .edge("cap front", EdgeRole.CAP, Path.through(right, crown), 15)
                .edge("cap back", EdgeRole.CAP, Path.through(crown, left), 15)
                .edge("underarm back", EdgeRole.UNDERARM, Path.through(left, wristLeft), 15)
                .level(LevelName.BICEP, 0)
                .level(LevelName.ELBOW, -225)
                .grain(new Grain(new Point(0, -300), new Point(0, 0)))
                .build();
    }

    /**
     * Half a trouser leg pair: hem at y = 0, knee at 400, crotch point (-60, 700), hip at 800, waist at 1000; side straight up
     * at x = 240, centre at x = 20 above the crotch curve, here one straight line.
     */
    static Piece trouser(String name, PieceKind kind) {
        Point hemIn = new Point(0, 0);
        Point hemOut = new Point(240, 0);
        Point waistOut = new Point(240, 1000);
        Point waistIn = new Point(20, 1000);
        Point curve = new Point(20, 760);
        Point crotch = new Point(-60, 700);
        return new PieceBuilder(name, kind)
                .cut(2)
                .edge("hem", EdgeRole.HEM, Path.through(hemIn, hemOut), 40)
                .edge("outseam", EdgeRole.SIDE, Path.through(hemOut, waistOut), 15)
                .edge("waist", EdgeRole.WAIST, Path.through(waistOut, waistIn), 15)
                .edge("crotch", EdgeRole.CROTCH, Path.through(waistIn, curve, crotch), 15)
                .edge("inseam", EdgeRole.INSEAM, Path.through(crotch, hemIn), 15)
                .level(LevelName.HIP, 800)
                .level(LevelName.CROTCH, 700)
                .level(LevelName.KNEE, 350)
                .grain(new Grain(new Point(120, 100), new Point(120, 600)))
                .build();
    }

    /** The same piece seen from the wrong side: left for right, still walked anticlockwise. */
    static Piece mirrored(Piece piece) {
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            List<Point> corners = new ArrayList<>();
            edge.path().segments().forEach(s -> corners.add(mirrored(s.end())));
            Collections.reverse(corners);
            corners.add(mirrored(edge.path().start()));
            edges.add(edge.withPath(Path.through(corners.toArray(new Point[0]))));
        }
        Collections.reverse(edges);
        List<Dart> darts = new ArrayList<>();
        for (Dart dart : piece.darts()) {
            if (dart instanceof Dart.EdgeDart d) {
                double length = piece.edge(d.edge()).length();
                darts.add(new Dart.EdgeDart(
                        d.name(), d.edge(), length - d.toMm(), length - d.fromMm(), mirrored(d.apex())));
            } else if (dart instanceof Dart.DiamondDart d) {
                darts.add(new Dart.DiamondDart(
                        d.name(), mirrored(d.top()), mirrored(d.bottom()), mirrored(d.right()), mirrored(d.left())));
            }
        }
        return piece.toBuilder()
                .edges(edges)
                .darts(darts)
                .landmarks(piece.landmarks().stream()
                        .map(l -> new Landmark(l.name(), mirrored(l.at())))
                        .toList())
                .grain(new Grain(
                        mirrored(piece.grain().from()), mirrored(piece.grain().to())))
                .build();
    }

    private static Point mirrored(Point p) {
        return new Point(-p.x(), p.y());
    }

    /** The same piece, its list of edges begun elsewhere. */
    static Piece begunAt(Piece piece, int edge) {
        List<Edge> edges = new ArrayList<>(piece.edges());
        Collections.rotate(edges, -edge);
        return piece.toBuilder().edges(edges).build();
    }
}
