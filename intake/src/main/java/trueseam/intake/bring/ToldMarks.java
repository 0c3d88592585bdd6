package trueseam.intake.bring;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.intake.apparel.ApparelNotch;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.naming.Proposal.NamedEdge;

/** Notches, fold and drill holes where the file itself tells them. */
final class ToldMarks {

    /** A notch that a file puts farther from the boundary belongs to another line or is misplaced. */
    private static final double SNAP_MM = 2;

    /** A notch that moves by less is where it was put. */
    private static final double MOVED_MM = 0.05;

    /** An edge on the fold lies so near to the mirror line. */
    private static final double ON_FOLD_MM = 1.5;

    private ToldMarks() {}

    /** Puts notches on the edges: those on the boundary straight across from it; others stay as points, with a warning. */
    static void notches(
            ApparelPiece piece,
            Upright upright,
            NotchMaking making,
            PieceBuilder builder,
            String name,
            List<Finding> findings) {
        double most = 0;
        int snapped = 0;
        int off = 0;
        int plain = 0;
        for (ApparelNotch notch : piece.notches()) {
            if (notch.offMm() > SNAP_MM) {
                off++;
                builder.landmark("notch off the edge " + off, upright.apply(notch.at()));
                continue;
            }
            making.told(upright.apply(piece.boundary().pointAt(notch.alongMm())));
            plain += notch.kind() == ApparelNotch.Kind.PLAIN ? 0 : 1;
            if (notch.offMm() > MOVED_MM) {
                snapped++;
                most = Math.max(most, notch.offMm());
            }
        }
        if (snapped > 0) {
            findings.add(Finding.note(
                    name,
                    String.format(
                            Locale.ROOT,
                            "%d of its notches lay beside its edge and were put on it, the farthest by %.2f mm.",
                            snapped,
                            most)));
        }
        if (plain > 0) {
            findings.add(Finding.note(
                    name,
                    plain + " of its notches are T, castle, check or U notches in the file and plain ones here."));
        }
        if (off > 0) {
            findings.add(Finding.warning(
                    name,
                    off + " of its notches lie more than " + SNAP_MM
                            + " mm from its edge; they are kept as points \"notch off the edge\", not as notches."));
        }
    }

    /** The longest edge that lies on the mirror line. */
    static Optional<String> onLine(List<NamedEdge> edges, Path mirror) {
        Vec along = mirror.end().minus(mirror.start());
        double length = along.length();
        if (!(length > 0)) {
            return Optional.empty();
        }
        return edges.stream()
                .filter(
                        edge -> List.of(
                                        edge.path().start(),
                                        edge.path().pointAt(edge.path().length() / 2),
                                        edge.path().end())
                                .stream()
                                .allMatch(p -> Math.abs(along.cross(p.minus(mirror.start()))) <= ON_FOLD_MM * length))
                .max(java.util.Comparator.comparingDouble(edge -> edge.path().length()))
                .map(NamedEdge::name);
    }

    /** Each as a named point. */
    static void drillHoles(ApparelPiece piece, Upright upright, PieceBuilder builder) {
        int count = 0;
        for (Point hole : piece.drillHoles()) {
            builder.landmark("drill hole " + ++count, upright.apply(hole));
        }
    }
}
