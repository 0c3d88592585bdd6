package trueseam.output.cloth;

import java.util.ArrayList;
import java.util.List;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.lay.CutForm;
import trueseam.cloth.lay.LaidPiece;
import trueseam.cloth.lay.Lay;
import trueseam.geometry.Point;

/** Where pieces are pinned: how far both ends of a grainline lie from the end of the cloth and from selvage or fold. */
final class LayPlaces {

    private LayPlaces() {}

    /**
     * One end of a grainline.
     *
     * @param at where it lies
     * @param alongMm from the end of the cloth that is laid first
     * @param acrossMm from the line that it is measured from
     * @param from what that line is called
     */
    record GrainEnd(Point at, double alongMm, double acrossMm, String from) {}

    /** Both ends, the one nearer to the beginning of the cloth first. */
    static List<GrainEnd> ends(Lay lay, LaidPiece piece) {
        List<GrainEnd> ends = new ArrayList<>();
        boolean forward = piece.grainFrom().x() <= piece.grainTo().x();
        for (Point p :
                forward ? List.of(piece.grainFrom(), piece.grainTo()) : List.of(piece.grainTo(), piece.grainFrom())) {
            double selvage = lay.cloth().selvageMm();
            double width = lay.cloth().usableMm();
            if (lay.cloth().layers() == Layers.LENGTHWISE) {
                boolean nearFold = p.y() < width - p.y();
                ends.add(new GrainEnd(
                        p, p.x(), nearFold ? p.y() : width - p.y() + selvage, nearFold ? "fold" : "selvage"));
            } else {
                boolean lower = piece.grainFrom().y() < width / 2;
                ends.add(new GrainEnd(
                        p,
                        p.x(),
                        (lower ? p.y() : width - p.y()) + selvage,
                        lower ? "lower selvage" : "upper selvage"));
            }
        }
        return ends;
    }

    static String how(LaidPiece piece, Layers layers) {
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
