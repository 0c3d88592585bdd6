package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.join.LengthOutOfReachException;

/**
 * Length of a sleeve's cap seam, front half and back half by their own amounts: what follows an armhole that was made longer or
 * shorter (common practice: the cap gets deeper with the armhole).
 *
 * <p>Moves the underarm points or the crown, as chosen; where the halves differ, the crown also goes across. Must stay: the girth
 * of the sleeve, the cap from the underarm to the notches and round the crown, which are only slid. Drawn new: the cap between
 * notches and crown, where the ease lies; with the underarm points, the top of the seams under the arm.
 *
 * @param frontMm the front half longer by so much, mm; minus for shorter
 * @param backMm the back half longer by so much, mm; minus for shorter
 * @param end which end moves
 */
public record CapLength(double frontMm, double backMm, CapEnd end) implements Alteration {

    /** How much of the seam below the underarm is drawn new, at the least. */
    private static final double SEAM_BLEND_MM = 60;

    private static final double NOTHING_MM = 1e-9;

    @Override
    public String title() {
        return "Sleeve cap: " + (frontMm + backMm < 0 ? "shorter" : "longer")
                + (end == CapEnd.CROWN ? ", at the crown" : ", at the underarm");
    }

    @Override
    public List<PieceWork> work(Pattern pattern) {
        List<PieceWork> work = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            if (piece.kind() == PieceKind.SLEEVE && (frontMm != 0 || backMm != 0)) {
                work.add(new PieceWork(piece.name(), steps(piece)));
            }
        }
        return work;
    }

    private List<Step> steps(Piece piece) {
        List<SleeveHalf> halves = SleeveHalf.of(piece);
        double right = halves.get(0).isBack() ? backMm : frontMm;
        double left = halves.get(0).isBack() ? frontMm : backMm;
        CapReach reach = CapReach.of(halves, right, left);
        StepList list = new StepList(piece);
        if (end == CapEnd.UNDERARM) {
            deepen(list, halves, reach.deeperMm());
            slideCrown(list, halves, reach.acrossMm(), 0);
        } else {
            slideCrown(list, halves, reach.acrossMm(), reach.deeperMm());
        }
        CapReach.draw(list, halves.get(0), right);
        CapReach.draw(list, halves.get(1), left);
        return list.finished();
    }

    static void slideCrown(StepList list, List<SleeveHalf> halves, double acrossMm, double upMm) {
        if (Math.abs(acrossMm) > NOTHING_MM || Math.abs(upMm) > NOTHING_MM) {
            list.add(new Step.Slide(acrossMm, upMm));
            for (SleeveHalf half : halves) {
                double from = half.capFromUnderarm(half.cap().length() - CapReach.CROWN_MM);
                double crown = half.capFromUnderarm(half.cap().length());
                list.trace(half.cap().name(), Math.min(from, crown), Math.max(from, crown));
            }
        }
    }

    /** Both underarm points go down, and the tops of the two seams, which are sewn together, shorten alike. */
    private void deepen(StepList list, List<SleeveHalf> halves, double downMm) {
        if (Math.abs(downMm) <= NOTHING_MM) {
            return;
        }
        double shortest =
                Math.min(halves.get(0).seam().length(), halves.get(1).seam().length());
        double gap = Math.min(shortest / 2, Math.max(SEAM_BLEND_MM, 3 * Math.abs(downMm)));
        if (downMm > gap / 2) {
            throw new AlterationException(
                    halves.get(0).piece().name(),
                    "underarm seam",
                    downMm,
                    "the seam under the arm is too short to give so much to the cap; raise the crown instead.");
        }
        list.add(new Step.Slide(0, -downMm));
        double growth = Double.NEGATIVE_INFINITY;
        for (SleeveHalf half : halves) {
            double underarm = half.capFromUnderarm(0);
            double notch = half.capFromUnderarm(half.lowerCapMm());
            list.trace(half.cap().name(), Math.min(underarm, notch), Math.max(underarm, notch));
            growth = Math.max(growth, CapReach.seamGrowth(half, gap, downMm));
        }
        for (SleeveHalf half : halves) {
            double below = half.seamBelowUnderarm(gap);
            double underarm = half.underarm().alongMm();
            list.join(
                    half.seam().name(),
                    Math.min(below, underarm),
                    Math.max(below, underarm),
                    isReached(half, gap, downMm, growth)
                            ? JoinForm.curveOfLength(Direction.AS_DRAWN, Direction.AS_DRAWN, gap + growth)
                            // As gently as it can: the hair's breadth that is missing is walked out by truing.
                            : JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
        }
        if (halves.get(0).piece().level(LevelName.BICEP).isPresent()) {
            list.add(new Step.Remark(Step.Inside.LEVEL, LevelName.BICEP.word(), 0, -downMm));
        }
        list.add(new Step.LayBack());
    }

    private static boolean isReached(SleeveHalf half, double gapMm, double downMm, double growthMm) {
        try {
            return CapReach.seam(half, gapMm, downMm, gapMm + growthMm).length() > 0;
        } catch (LengthOutOfReachException e) {
            return false;
        }
    }
}
