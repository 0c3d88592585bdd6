package trueseam.output.cloth;

import java.util.ArrayList;
import java.util.List;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.lay.CutForm;
import trueseam.cloth.lay.LaidPiece;
import trueseam.cloth.lay.Lay;
import trueseam.geometry.Point;

/** Where pieces are pinned: how far both ends of a grainline lie from the end of the cloth and from selvage or fold. */
public final class LayPlaces {

    private LayPlaces() {}

    /**
     * One end of a grainline.
     *
     * @param at where it lies
     * @param alongMm from the end of the cloth that is laid first
     * @param acrossMm from the line that it is measured from
     * @param from what that line is called
     * @param foot the place of that line straight across from it
     */
    public record GrainEnd(Point at, double alongMm, double acrossMm, String from, Point foot) {}

    /**
     * Both ends of a piece's grainline, as a dressmaker measures them when she pins it.
     *
     * @param lay the layout
     * @param piece one of its pieces
     * @return the end nearer to the beginning of the cloth first
     */
    public static List<GrainEnd> ends(Lay lay, LaidPiece piece) {
        List<GrainEnd> ends = new ArrayList<>();
        boolean forward = piece.grainFrom().x() <= piece.grainTo().x();
        double selvage = lay.cloth().selvageMm();
        double width = lay.cloth().usableMm();
        boolean fold = lay.cloth().layers() == Layers.LENGTHWISE;
        // Both ends from one line, so that they can be compared.
        boolean lower = piece.grainFrom().y() < width / 2;
        double line = !lower ? width + selvage : fold ? 0 : -selvage;
        String from = fold ? (lower ? "fold" : "selvage") : lower ? "lower selvage" : "upper selvage";
        for (Point p :
                forward ? List.of(piece.grainFrom(), piece.grainTo()) : List.of(piece.grainTo(), piece.grainFrom())) {
            ends.add(new GrainEnd(p, p.x(), Math.abs(p.y() - line), from, new Point(p.x(), line)));
        }
        return ends;
    }

    /**
     * How a piece lies, in words.
     *
     * @param piece the piece
     * @param layers how the cloth lies
     * @return for example {@code half, at the fold}
     */
    public static String how(LaidPiece piece, Layers layers) {
        String much = piece.part().form() == CutForm.AT_FOLD
                ? "half, at the fold"
                : piece.part().form() == CutForm.OPENED ? "whole, opened at its fold" : "as drawn";
        String face = piece.placed().way().mirrored() ? ", face down" : "";
        String spare = piece.part().spare()
                ? ", cut from one of the two layers"
                : layers == Layers.SINGLE || piece.part().form() == CutForm.AT_FOLD ? "" : ", two at once";
        return much + face + spare;
    }
}
