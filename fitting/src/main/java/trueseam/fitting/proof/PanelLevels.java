package trueseam.fitting.proof;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.fitting.tissue.Run;
import trueseam.fitting.tissue.Stretch;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.PathPlace;

/**
 * Levels at the seams between panels, gores and the pieces of a sleeve. An edge there may lean more than the one it is sewn to, so that
 * heights on the table say nothing; what must hold is that the places of the two edges that lay on the bust, hip or elbow line in the
 * original meet when the seam is sewn, as far apart as they did there: walked from the lower end of each edge, darts folded out. (The
 * line itself may tilt in its panel: a seam that is pivoted out at the bust carries its place on the line up or down by a millimetre or
 * two.)
 */
final class PanelLevels {

    /**
     * Lines round the body; the lines that a piece is lengthened at are none. The upper arm line of a sleeve is not among them: it
     * crosses the seam close below the cap, where the seam is drawn new when the upper arm changes, so that no traced place is left to
     * be held against another; there the whole seam is walked.
     */
    private static final Set<LevelName> ROUND_THE_BODY = EnumSet.of(LevelName.BUST, LevelName.HIP, LevelName.ELBOW);

    private PanelLevels() {}

    static List<Proof> prove(WorkedPattern worked, double boundMm) {
        Pattern before = worked.original();
        List<Proof> proofs = new ArrayList<>();
        for (Seam seam : before.seams()) {
            if (isPanelSeam(before, seam)) {
                for (LevelName level : ROUND_THE_BODY) {
                    OptionalDouble one = wentUpMm(worked, seam.first().get(0), level);
                    OptionalDouble other = wentUpMm(worked, seam.second().get(0), level);
                    if (one.isPresent() && other.isPresent()) {
                        proofs.add(new Proof(
                                Proof.Kind.LEVEL,
                                seam.name() + ", " + level.word() + " line",
                                one.getAsDouble() - other.getAsDouble(),
                                boundMm,
                                "mm",
                                "one panel against the other, walked from the lower end of the seam"));
                    }
                }
            }
        }
        return proofs;
    }

    private static boolean isPanelSeam(Pattern pattern, Seam seam) {
        return seam.first().size() == 1
                && seam.second().size() == 1
                && edge(pattern, seam.first().get(0)).role() == EdgeRole.PANEL
                && edge(pattern, seam.second().get(0)).role() == EdgeRole.PANEL;
    }

    private static Edge edge(Pattern pattern, EdgeRef ref) {
        return pattern.piece(ref.piece()).edge(ref.edge());
    }

    /** How much longer an edge has become below the place where the level crossed it. */
    private static OptionalDouble wentUpMm(WorkedPattern worked, EdgeRef ref, LevelName level) {
        Piece before = worked.original().piece(ref.piece());
        Piece after = worked.altered().piece(ref.piece());
        OptionalDouble was = alongMm(before, ref.edge(), level);
        if (was.isEmpty()) {
            return OptionalDouble.empty();
        }
        return worked.piece(ref.piece())
                .map(piece -> carriedMm(piece, ref.edge(), was.getAsDouble()))
                .map(is -> OptionalDouble.of(
                        walkedMm(after, ref.edge(), is) - walkedMm(before, ref.edge(), was.getAsDouble())))
                .orElse(OptionalDouble.empty());
    }

    /** Where a place of the original edge is now: traced with its line; where that was drawn new, as far as it was from the nearest traced line. */
    private static double carriedMm(AlteredPiece piece, String edge, double alongMm) {
        double wasBefore = 0;
        double isBefore = 0;
        double wasAfter = piece.original().edge(edge).length();
        double isAfter = piece.now().edge(edge).length();
        for (Run run : piece.runs()) {
            Stretch from = run.origin().map(Run.Origin::stretch).orElse(null);
            if (from == null || !run.edge().equals(edge) || !from.edge().equals(edge)) {
                continue;
            }
            if (from.fromMm() <= alongMm && alongMm <= from.toMm()) {
                return run.fromMm() + alongMm - from.fromMm();
            }
            if (from.toMm() < alongMm && from.toMm() >= wasBefore) {
                wasBefore = from.toMm();
                isBefore = run.toMm();
            }
            if (from.fromMm() > alongMm && from.fromMm() <= wasAfter) {
                wasAfter = from.fromMm();
                isAfter = run.fromMm();
            }
        }
        return alongMm - wasBefore < wasAfter - alongMm ? isBefore + alongMm - wasBefore : isAfter + alongMm - wasAfter;
    }

    private static OptionalDouble alongMm(Piece piece, String edge, LevelName level) {
        OptionalDouble y = piece.level(level);
        Optional<PathPlace> place =
                y.isEmpty() ? Optional.empty() : piece.edge(edge).path().atLevel(y.getAsDouble());
        return place.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(place.get().alongMm());
    }

    /** From the lower end of an edge up to a place of it, darts folded out. */
    private static double walkedMm(Piece piece, String name, double alongMm) {
        Edge edge = piece.edge(name);
        boolean upwards = edge.path().end().y() > edge.path().start().y();
        double walked = upwards ? alongMm : edge.length() - alongMm;
        for (Dart.EdgeDart dart : piece.dartsOn(name)) {
            boolean below = upwards ? dart.toMm() <= alongMm : dart.fromMm() >= alongMm;
            walked -= below ? dart.mouthMm() : 0;
        }
        return walked;
    }
}
