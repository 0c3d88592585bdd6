package trueseam.drafting;

import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Vec;

/** Angles at the corners of pieces, inside the piece, in degrees. */
final class SewnCorners {

    private SewnCorners() {}

    /** The angle inside the piece where one edge ends and the next begins. */
    static double degrees(Piece piece, String before, String after) {
        Vec in = piece.edge(before).path().endTangent();
        Vec out = piece.edge(after).path().startTangent();
        return 180 - Math.toDegrees(in.angleTo(out));
    }

    /** The angle that two corners make when they are sewn side by side. */
    static double sewn(
            Pattern pattern, String first, String before, String after, String second, String before2, String after2) {
        return degrees(pattern.piece(first), before, after) + degrees(pattern.piece(second), before2, after2);
    }
}
