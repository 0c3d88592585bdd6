package trueseam.cloth.lay;

import java.util.List;
import java.util.Optional;
import trueseam.cloth.packing.Way;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

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
        Lie base = upright(piece);
        Path line = base.apply(CuttingLine.of(piece));
        Path cutting =
                switch (form) {
                    case DRAWN -> line;
                    case AT_FOLD -> FoldedOutline.half(line);
                    case OPENED -> FoldedOutline.whole(line);
                };
        return new ClothPart(piece, form, copies, spare, base, cutting, ways, match);
    }

    /** The grain along x, its upper end first along the cloth; a fold at the bottom. */
    private static Lie upright(Piece piece) {
        Point from = piece.grain().from();
        Point to = piece.grain().to();
        double length = from.distanceTo(to);
        Motion turn = new Motion((to.x() - from.x()) / length, -(to.y() - from.y()) / length, 0, 0);
        Lie lie = new Lie(false, turn);
        if (piece.fold().isEmpty()) {
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
}
