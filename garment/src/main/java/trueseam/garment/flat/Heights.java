package trueseam.garment.flat;

import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;

/** Heights at which a piece is measured and that lie between its marked levels (common practice). */
final class Heights {

    /** The fullest calf lies about this far from the knee to the hem of a leg of full length (common practice). */
    private static final double CALF_SHARE = 1.0 / 3;

    private Heights() {}

    /** Half way between the waist and the hip level: of a skirt or trousers from the side waist, of a dress from its waist level. */
    static OptionalDouble topHip(Piece piece) {
        OptionalDouble hip = piece.level(LevelName.HIP);
        OptionalDouble waist = piece.kind().isDress() ? piece.level(LevelName.WAIST) : end(piece, EdgeRole.SIDE, true);
        boolean concerned = piece.kind().isSkirt()
                || piece.kind().isTrouser()
                || piece.kind().isDress();
        return concerned && hip.isPresent() && waist.isPresent()
                ? OptionalDouble.of((hip.getAsDouble() + waist.getAsDouble()) / 2)
                : OptionalDouble.empty();
    }

    /** A third of the way from the knee level to the lower end of the outseam. */
    static OptionalDouble calf(Piece piece) {
        OptionalDouble knee = piece.level(LevelName.KNEE);
        OptionalDouble hem = end(piece, EdgeRole.SIDE, false);
        return piece.kind().isTrouser() && knee.isPresent() && hem.isPresent() && hem.getAsDouble() < knee.getAsDouble()
                ? OptionalDouble.of(knee.getAsDouble() + CALF_SHARE * (hem.getAsDouble() - knee.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** The crotch level, or the crotch point where that lies lower. */
    static OptionalDouble thigh(Piece piece) {
        Optional<Edge> inseam = piece.firstOf(EdgeRole.INSEAM);
        OptionalDouble level = piece.level(LevelName.CROTCH);
        return piece.kind().isTrouser() && inseam.isPresent() && level.isPresent()
                ? OptionalDouble.of(Math.min(
                        level.getAsDouble(),
                        Math.max(
                                inseam.get().path().start().y(),
                                inseam.get().path().end().y())))
                : OptionalDouble.empty();
    }

    /** The upper or lower end of the edge of a role. */
    static OptionalDouble end(Piece piece, EdgeRole role, boolean upper) {
        // A centre gore has no side edge: its seam with the side gore stands for it.
        Optional<Edge> edge = piece.firstOf(role).or(() -> piece.firstOf(EdgeRole.PANEL));
        if (edge.isEmpty()) {
            return OptionalDouble.empty();
        }
        double start = edge.get().path().start().y();
        double end = edge.get().path().end().y();
        return OptionalDouble.of(upper ? Math.max(start, end) : Math.min(start, end));
    }
}
