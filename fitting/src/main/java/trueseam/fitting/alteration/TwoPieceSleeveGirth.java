package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;

/**
 * Girth of a two-piece sleeve at upper arm and wrist, larger or smaller, shared over the edges of its seams: N/4 on four, or N/2 on
 * the two of the back seam (common practice).
 *
 * <p>Moves the seams below their upper ends. Pins: the upper end of a seam, then the upper arm on it. Must stay: the cap and its
 * ease, the length of the seams. Trued: the seams at the upper arm, the wrist edge.
 *
 * @param armMm total at the upper arm, mm
 * @param wristMm total at the wrist, mm
 * @param seams which seams take part
 */
public record TwoPieceSleeveGirth(double armMm, double wristMm, SleeveSeams seams) implements Alteration {

    @Override
    public String title() {
        String what = armMm == 0 ? "Wrist girth" : wristMm == 0 ? "Upper arm girth" : "Upper arm and wrist girth";
        return what + (seams == SleeveSeams.BACK ? " at the back seam of the sleeve" : " at both seams of the sleeve");
    }

    /**
     * Over how many cut edges a girth of a two-piece sleeve is shared.
     *
     * @param seams which seams take part
     * @return four or two
     */
    public static int cutEdges(SleeveSeams seams) {
        return seams == SleeveSeams.BOTH ? 4 : 2;
    }

    @Override
    public List<PieceWork> work(Pattern pattern) {
        List<PieceWork> work = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            if (piece.kind().isSleeve() && piece.kind().isPart() && (armMm != 0 || wristMm != 0)) {
                work.add(new PieceWork(piece.name(), steps(piece)));
            }
        }
        return work;
    }

    private List<Step> steps(Piece piece) {
        List<Edge> edges = piece.edgesOf(EdgeRole.PANEL).stream()
                .filter(edge -> seams == SleeveSeams.BOTH || isBack(edge))
                .toList();
        if (edges.size() != cutEdges(seams) / 2) {
            throw new AlterationException(
                    piece.name(),
                    "seams",
                    armMm + wristMm,
                    "a piece of a two-piece sleeve has a front seam and a back seam; name its edges so.");
        }
        StepList list = new StepList(piece);
        for (Flank flank : Flank.of(piece, edges)) {
            if (!list.isEmpty()) {
                list.add(new Step.LayBack());
            }
            new SidePivots(flank, levels(flank), false, list).added();
        }
        return list.finished();
    }

    private static boolean isBack(Edge edge) {
        return edge.name().toLowerCase(Locale.ROOT).contains("back");
    }

    private List<SideLevel> levels(Flank flank) {
        String at = flank.side.name();
        OptionalDouble arm = flank.alongAt(LevelName.BICEP);
        if (arm.isEmpty()) {
            throw new AlterationException(
                    flank.piece.name(),
                    at,
                    armMm,
                    "the upper arm level does not cross this edge; mark the bicep level on the piece.");
        }
        int share = cutEdges(seams);
        return List.of(
                new SideLevel(flank.top("top of the " + at), "top mark, " + at, 0),
                new SideLevel(
                        new Place(at, arm.getAsDouble(), "upper arm at the " + at), "arm mark, " + at, armMm / share),
                new SideLevel(flank.bottom("wrist at the " + at), "wrist mark, " + at, wristMm / share));
    }
}
