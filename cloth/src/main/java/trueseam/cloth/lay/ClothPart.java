package trueseam.cloth.lay;

import java.util.List;
import java.util.Optional;
import trueseam.cloth.packing.Way;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * A piece as it is laid: which outline of it, how often, how it may lie.
 *
 * @param piece the piece
 * @param form how much of it is laid
 * @param copies how often it is laid
 * @param spare whether one of the two layers is left over each time: it is cut once of cloth that lies double
 * @param base from the piece to where its grain runs along the cloth; a fold that runs with the grain lies at y = 0
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
        Lie base = FoldLine.withGrain(piece) ? atFold(piece) : upright(piece);
        Path cutting =
                switch (form) {
                    case DRAWN -> base.apply(CuttingLine.of(piece));
                    case AT_FOLD -> FoldedOutline.half(base.apply(CuttingLine.of(piece)));
                    case OPENED -> base.apply(opened(piece));
                };
        return new ClothPart(piece, form, copies, spare, base, cutting, ways, match);
    }

    /** The grain along x, its upper end first along the cloth. */
    private static Lie upright(Piece piece) {
        Point from = piece.grain().from();
        Point to = piece.grain().to();
        double length = from.distanceTo(to);
        return new Lie(false, new Motion((to.x() - from.x()) / length, -(to.y() - from.y()) / length, 0, 0));
    }

    /** The fold at the bottom, the upper end of the grain first along the cloth: turned over where it would lie head to tail. */
    private static Lie atFold(Piece piece) {
        Lie lie = new Lie(false, FoldLine.toAxis(piece));
        boolean headFirst = lie.apply(piece.grain().to()).x()
                > lie.apply(piece.grain().from()).x();
        return headFirst ? lie : lie.then(Math.PI, 0, 0).turnedOver();
    }

    /** Both halves, where the piece was drawn, whichever way its fold runs. */
    private static Path opened(Piece piece) {
        Motion toAxis = FoldLine.toAxis(piece);
        return FoldedOutline.whole(CuttingLine.of(piece).moved(toAxis)).moved(toAxis.inverse());
    }
}
