package trueseam.output.strips;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.polygon.Region;
import trueseam.output.drawing.Shapes;

/** Where a strip that goes round a corner of a piece is cut: from the corner outwards, half way between both edges. */
final class Corners {

    /** Less sharp ones leave a strip nearly straight. */
    private static final double SHARP_RAD = Math.toRadians(35);

    /** How far into the piece and out of it a cut reaches: across any strip with its margin, mm. */
    private static final double REACH_MM = 70;

    /** Half the width of a cut: a tenth of the finest line, mm. */
    private static final double HALF_MM = 0.01;

    /** A cut a hair wide, and the direction across it. */
    record Cut(Region slit, Vec across) {}

    private Corners() {}

    /** The cuts at the sharp corners of a piece. */
    static List<Cut> cuts(Piece piece) {
        List<Cut> cuts = new ArrayList<>();
        for (int i = 0; i < piece.edges().size(); i++) {
            Edge before = piece.edges().get(i);
            Edge after = piece.edges().get((i + 1) % piece.edges().size());
            Vec in = before.path().endTangent();
            Vec out = after.path().startTangent();
            if (Math.abs(in.angleTo(out)) > SHARP_RAD) {
                Vec outward = in.right().plus(out.right()).unit();
                cuts.add(cut(before.path().end(), outward));
            }
        }
        return cuts;
    }

    private static Cut cut(Point corner, Vec outward) {
        Vec side = outward.left().times(HALF_MM);
        Point inner = corner.minus(outward.times(REACH_MM));
        Point outer = corner.plus(outward.times(REACH_MM));
        Path slit = Shapes.closed(inner.minus(side), outer.minus(side), outer.plus(side), inner.plus(side));
        return new Cut(Region.within(slit, HALF_MM / 10), outward.left());
    }
}
