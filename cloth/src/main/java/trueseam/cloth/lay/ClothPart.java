package trueseam.cloth.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.cloth.packing.Way;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Line;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.convert.Mirror;

/**
 * A piece as it is laid: which outline of it, how often, how it may lie.
 *
 * @param piece the piece
 * @param form how much of it is laid
 * @param copies how often it is laid
 * @param spare whether one of the two layers is left over each time: it is cut once of cloth that lies double
 * @param base from the piece to where its grain runs along the cloth and its fold lies at y = 0
 * @param cutting its cutting line in that place, as closed lines
 * @param ways how it may lie from there
 * @param match where stripes are to run on into other pieces; empty on cloth without
 */
public record ClothPart(
        Piece piece,
        CutForm form,
        int copies,
        boolean spare,
        Lie base,
        Path cutting,
        List<Way> ways,
        Optional<StripeMatch> match) {

    /** Does not change. */
    public ClothPart {
        ways = List.copyOf(ways);
    }

    static ClothPart of(
            Piece piece, CutForm form, int copies, boolean spare, List<Way> ways, Optional<StripeMatch> match) {
        Lie base = upright(piece, form);
        Path line = form == CutForm.OPENED ? opened(piece) : CuttingLine.of(piece);
        return new ClothPart(piece, form, copies, spare, base, base.apply(line), ways, match);
    }

    /** The grain along x, its upper end first along the cloth; a fold at the bottom. */
    private static Lie upright(Piece piece, CutForm form) {
        Point from = piece.grain().from();
        Point to = piece.grain().to();
        double length = from.distanceTo(to);
        Motion turn = new Motion((to.x() - from.x()) / length, -(to.y() - from.y()) / length, 0, 0);
        Lie lie = new Lie(false, turn);
        if (form != CutForm.AT_FOLD) {
            return lie;
        }
        Edge fold = piece.edge(piece.fold().orElseThrow());
        double foldY = lie.apply(fold.path().start()).y();
        double middle = 0;
        List<Point> outline = CuttingLine.of(piece).flattened(1);
        for (Point p : outline) {
            middle += lie.apply(p).y() / outline.size();
        }
        Lie up = new Lie(false, lie.motion().then(Motion.slide(new Vec(0, -foldY))));
        return middle < foldY ? up.turnedOver() : up;
    }

    /** A half piece and its other half, as one. */
    private static Path opened(Piece half) {
        Path line = CuttingLine.of(half);
        Edge fold = half.edge(half.fold().orElseThrow());
        Point a = fold.path().start();
        Vec along = new Vec(fold.path().end().x() - a.x(), fold.path().end().y() - a.y());
        // The fold on the line x = 0, running up, mirrored there, and back.
        Motion there = Motion.slide(new Vec(-a.x(), -a.y()))
                .then(Motion.pivot(new Point(0, 0), Math.atan2(along.x(), along.y())));
        Path open = besideFold(line.moved(there), half);
        return open.then(Mirror.of(open).reversed()).moved(there.inverse());
    }

    /** What is cut of a half piece whose fold lies on x = 0 and runs up: from the upper end of the fold, mitres left out, round to the lower. */
    private static Path besideFold(Path line, Piece half) {
        double upper = Double.NEGATIVE_INFINITY;
        double lower = Double.POSITIVE_INFINITY;
        double from = 0;
        double to = 0;
        for (int i = 0; i < line.segments().size(); i++) {
            Point corner = line.segments().get(i).start();
            if (Math.abs(corner.x()) < ON_FOLD_MM) {
                if (corner.y() > upper) {
                    upper = corner.y();
                    from = line.startOf(i);
                }
                if (corner.y() < lower) {
                    lower = corner.y();
                    to = line.startOf(i);
                }
            }
        }
        if (!(upper > lower)) {
            throw new LayException(
                    half.name(),
                    "Its fold has a seam allowance; give the edge at the fold none, so that it can be opened.");
        }
        Path round = from < to ? line.part(from, to) : line.part(from, line.length());
        if (from >= to && to > 0) {
            round = round.then(line.part(0, to));
        }
        return onFold(round);
    }

    /** Its two ends exactly on the fold, so that both halves meet. */
    private static Path onFold(Path open) {
        List<Segment> strokes = new ArrayList<>(open.segments());
        if (open.start().x() != 0) {
            strokes.add(0, new Line(new Point(0, open.start().y()), open.start()));
        }
        if (open.end().x() != 0) {
            strokes.add(new Line(open.end(), new Point(0, open.end().y())));
        }
        return Path.of(strokes);
    }

    /** Corners this near to the line of the fold lie on it, mm. */
    private static final double ON_FOLD_MM = 0.02;
}
