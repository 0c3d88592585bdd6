package trueseam.output.strips;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.polygon.Region;
import trueseam.output.words.RulerLength;

/**
 * A strip before it is cut to fit the sheets: an insert, a guide for folding, or one connected part of the paper in which the
 * edge of the tissue and the new cutting line of a piece differ; or a part of one.
 *
 * @param kind what is done with it
 * @param piece name of the piece
 * @param place where it goes, in words
 * @param tissueLines the edge of the tissue, or the lines on it that the strip is laid to
 * @param area the sliver itself
 * @param paper the sliver and the margin that lies on the tissue or beyond its edge
 * @param joins where it meets the other parts it was cut from
 * @param notes what is written on it
 */
record Sliver(
        StripKind kind,
        String piece,
        String place,
        List<Path> tissueLines,
        Region area,
        Region paper,
        List<Join> joins,
        List<Note> notes) {

    /** Thinner ones are thinner than the lines of the tissue and left out, mm. */
    static final double THINNEST_MM = 0.3;

    /** Width of what is printed beyond the edge of the tissue: room for a strip of tape (common practice), mm. */
    static final double MARGIN_MM = 10;

    /** How far chords may lie from a cutting line, mm. */
    static final double TOLERANCE_MM = 0.02;

    /** A place at which two parts of a sliver meet, with the number both bear, and the direction from one into the other. */
    record Join(int number, Point at, Vec into) {}

    /** Words on a strip, along the piece's own level lines, beginning at a place and running that way, or with their middle there. */
    record Note(String words, Point at, Vec way) {}

    // Immutable.
    Sliver {
        tissueLines = List.copyOf(tissueLines);
        joins = List.copyOf(joins);
        notes = List.copyOf(notes);
    }

    /** All strips of a piece: first what is done across it, then what is left to do at its edges. */
    static List<Sliver> of(AlteredPiece altered, List<LengthChange> changes, RulerLength ruler) {
        List<Sliver> all = new ArrayList<>();
        if (altered.isAltered()) {
            Piece now = altered.now();
            Path oldLine = CuttingLine.of(altered.original());
            PartedTissue parted = PartedTissue.of(oldLine, changes, ruler);
            List<Path> lines =
                    changes.isEmpty() ? List.of(oldLine) : parted.region().outlines();
            Region before = parted.region();
            Region after = Region.within(CuttingLine.of(now), TOLERANCE_MM);
            for (Region area : parts(after.difference(before))) {
                Region under = area.grown(MARGIN_MM).intersection(before);
                all.add(edgeSliver(StripKind.TAPE_ON, now, lines, area, under));
            }
            for (Region area : parts(before.difference(after))) {
                Region beyond = area.grown(MARGIN_MM).difference(before);
                all.add(edgeSliver(StripKind.CUT_AWAY, now, lines, area, beyond));
            }
            all.removeIf(s -> s.thicknessMm() < THINNEST_MM);
            all.addAll(0, parted.guides());
        }
        return all;
    }

    private static Sliver edgeSliver(StripKind kind, Piece now, List<Path> lines, Region area, Region margin) {
        String place = now.name() + ", " + edge(now, area);
        return new Sliver(kind, now.name(), place, lines, area, area.union(margin), List.of(), List.of());
    }

    /** This, cut to a part of its paper. */
    Sliver within(Region part, List<Join> marks) {
        Region near = part.grown(0.1);
        return new Sliver(
                kind,
                piece,
                place,
                tissueLines,
                area.intersection(part),
                part,
                marks.stream().filter(m -> near.contains(m.at())).toList(),
                notes.stream().filter(n -> near.contains(n.at())).toList());
    }

    /** The connected parts of an area. */
    static List<Region> parts(Region region) {
        List<Region> parts = new ArrayList<>();
        for (Path outline : region.outlines()) {
            // Overlays can leave crumbs that have an outline only by rounding.
            if (outline.signedArea() > 0
                    && Region.faultOf(outline, TOLERANCE_MM).isEmpty()) {
                Region part = region.intersection(Region.withinAny(List.of(outline), 0.001));
                if (!part.isEmpty()) {
                    parts.add(part);
                }
            }
        }
        return parts;
    }

    /** Its mean thickness: its area over its length, which is half the way round it. */
    double thicknessMm() {
        double round = area.outlines().stream().mapToDouble(Path::length).sum();
        return 2 * area.areaMm2() / round;
    }

    /** The edge of the piece that most of an area lies along. */
    private static String edge(Piece piece, Region area) {
        Map<String, Double> along = new HashMap<>();
        for (Path outline : area.outlines()) {
            for (Segment s : outline.segments()) {
                Point middle = s.start().towards(s.end(), 0.5);
                along.merge(nearest(piece, middle), s.start().distanceTo(s.end()), Double::sum);
            }
        }
        String most = piece.edges().get(0).name();
        for (Edge e : piece.edges()) {
            if (along.getOrDefault(e.name(), 0.0) > along.getOrDefault(most, 0.0)) {
                most = e.name();
            }
        }
        return most;
    }

    private static String nearest(Piece piece, Point p) {
        Edge best = piece.edges().get(0);
        double least = Double.MAX_VALUE;
        for (Edge e : piece.edges()) {
            double far = Math.abs(e.path().nearest(p).point().distanceTo(p) - e.allowanceMm());
            if (far < least) {
                least = far;
                best = e;
            }
        }
        return best.name();
    }

    /** Where it is laid on the tissue: the parts of its outline that are lines of the tissue. */
    List<Path> onTissueLines() {
        List<Path> found = new ArrayList<>();
        for (Path outline : area.outlines()) {
            List<Point> run = new ArrayList<>();
            for (Segment s : outline.segments()) {
                boolean on = isOnTissueLine(s.start().towards(s.end(), 0.5));
                if (on && run.isEmpty()) {
                    run.add(s.start());
                }
                if (on) {
                    run.add(s.end());
                } else if (!run.isEmpty()) {
                    found.add(Path.through(run.toArray(Point[]::new)));
                    run.clear();
                }
            }
            if (!run.isEmpty()) {
                found.add(Path.through(run.toArray(Point[]::new)));
            }
        }
        return found;
    }

    private boolean isOnTissueLine(Point p) {
        for (Path line : tissueLines) {
            if (line.nearest(p).point().distanceTo(p) < 2 * TOLERANCE_MM) {
                return true;
            }
        }
        return false;
    }
}
