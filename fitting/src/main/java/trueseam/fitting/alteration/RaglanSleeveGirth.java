package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/**
 * Upper arm and wrist of a raglan sleeve, half of the total on either edge of the seam under the arm. Each half is pinned where its raglan
 * seam meets the neck and pivoted until the underarm is out far enough: the raglan seam keeps its length and shape, so that front and
 * back need no change; then it is pinned at the underarm and pivoted until the wrist meets its mark.
 *
 * <p>Source: common practice, as for a sleeve that is set in, which is pinned at its crown.
 *
 * @param armMm total at the upper arm, mm
 * @param wristMm total at the wrist, mm
 */
public record RaglanSleeveGirth(double armMm, double wristMm) implements Alteration {

    @Override
    public String title() {
        String what = armMm == 0 ? "Wrist girth" : wristMm == 0 ? "Upper arm girth" : "Upper arm and wrist girth";
        return what + " at the seam under the arm";
    }

    @Override
    public List<PieceWork> work(Pattern pattern) {
        List<PieceWork> work = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            if (piece.kind() == PieceKind.RAGLAN_SLEEVE && (armMm != 0 || wristMm != 0)) {
                work.add(new PieceWork(piece.name(), steps(piece)));
            }
        }
        return work;
    }

    private List<Step> steps(Piece piece) {
        StepList list = new StepList(piece);
        for (Flank flank : Flank.of(piece, piece.edgesOf(EdgeRole.UNDERARM))) {
            if (flank.raglan().isEmpty()) {
                throw new AlterationException(
                        piece.name(),
                        flank.side.name(),
                        armMm + wristMm,
                        "no raglan seam meets the upper end of this seam; name the edges of the piece.");
            }
            if (!list.isEmpty()) {
                list.add(new Step.LayBack());
            }
            String at = flank.side.name();
            new SidePivots(
                            flank,
                            List.of(
                                    new SideLevel(flank.top("underarm at the " + at), "arm mark, " + at, armMm / 2),
                                    new SideLevel(
                                            flank.bottom("wrist at the " + at), "wrist mark, " + at, wristMm / 2)),
                            false,
                            list)
                    .added();
        }
        return list.finished();
    }
}
