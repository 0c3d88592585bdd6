package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/**
 * Girth of a sleeve at the wrist, larger or smaller, shared over the two cut edges, running out to nothing at the elbow (common
 * practice).
 *
 * <p>Moves the seam below the elbow. Pin: the elbow on the seam, for each half. Must stay: cap, upper arm, seam length. Trued: the
 * wrist edge, and the seam at the elbow.
 *
 * @param totalMm at the wrist, mm
 */
public record WristGirth(double totalMm) implements Alteration {

    private static final double WRIST_SHARE = 0.35;

    @Override
    public String title() {
        return "Wrist girth";
    }

    @Override
    public List<PieceWork> work(Pattern pattern) {
        List<PieceWork> work = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            if (piece.kind() == PieceKind.SLEEVE && totalMm != 0) {
                work.add(new PieceWork(piece.name(), steps(piece)));
            }
        }
        return work;
    }

    private List<Step> steps(Piece piece) {
        StepList list = new StepList(piece);
        List<SleeveHalf> halves = SleeveHalf.of(piece);
        half(list, halves.get(0));
        list.add(new Step.LayBack());
        half(list, halves.get(1));
        Edge wrist = piece.only(EdgeRole.WRIST);
        JoinForm form = JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN);
        list.join(wrist.name(), 0, WRIST_SHARE * wrist.length(), form);
        list.join(wrist.name(), (1 - WRIST_SHARE) * wrist.length(), wrist.length(), form);
        return list.finished();
    }

    private void half(StepList list, SleeveHalf half) {
        double elbow = half.seamAt(LevelName.ELBOW)
                .orElseThrow(() -> new AlterationException(
                        half.piece().name(),
                        half.seam().name(),
                        totalMm,
                        "the elbow level does not cross this edge; mark the elbow level on the piece."));
        String mark = half.word() + " wrist mark";
        Place corner = half.wristCorner();
        list.add(new Step.Mark(mark, corner, half.outward() * totalMm / 2, 0));
        list.add(new Step.Pin(new Place(half.seam().name(), elbow, "elbow on the " + half.word() + " seam")));
        list.add(new Step.Pivot(new Until.MeetsAcross(corner, mark)));
        list.trace(half.seam().name(), Math.min(elbow, corner.alongMm()), Math.max(elbow, corner.alongMm()));
    }
}
