package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Motion;
import trueseam.geometry.OutOfReachException;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * Girth of a one-piece sleeve at the upper arm, larger or smaller, shared over its two cut edges (common practice).
 *
 * <p>Moves both underarm points. Pin: the crown, for each half of the cap. Must stay: the cap seam's length or the cap's height,
 * as chosen; the wrist, unless the whole sleeve is wanted. Trued: the crown, the underarm, the seam under the arm.
 *
 * @param totalMm at the upper arm, mm
 * @param cap what the cap keeps
 * @param reach how far down it reaches
 */
public record SleeveGirth(double totalMm, CapChoice cap, SleeveReach reach) implements Alteration {

    /** How much of the seam below the underarm is drawn new, at the least. */
    private static final double SEAM_BLEND_MM = 40;

    /** How much of the cap is left standing on either side of the crown. */
    private static final double CROWN_MM = 15;

    private static final double WRIST_SHARE = 0.35;

    @Override
    public String title() {
        return (reach == SleeveReach.WHOLE ? "Whole sleeve girth" : "Upper arm girth")
                + (cap == CapChoice.KEEP_CAP_SEAM ? ", keeping the cap seam" : ", keeping the cap height");
    }

    @Override
    public boolean changesCapEase() {
        return cap == CapChoice.KEEP_CAP_HEIGHT && totalMm != 0;
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
        List<SleeveHalf> halves = SleeveHalf.of(piece);
        double rightShare = cap == CapChoice.KEEP_CAP_SEAM ? levelShare(halves) : totalMm / 2;
        List<Double> out = List.of(rightShare, totalMm - rightShare);
        // The two seams are sewn together: both grow by what the one that needs more needs.
        double growth = Math.max(growthOfSeam(halves.get(0), out.get(0)), growthOfSeam(halves.get(1), out.get(1)));
        StepList list = new StepList(piece);
        half(list, halves.get(0), out.get(0), growth);
        list.add(new Step.LayBack());
        half(list, halves.get(1), out.get(1), growth);
        if (reach == SleeveReach.WHOLE) {
            joinWrist(list, piece);
        }
        return list.finished();
    }

    private boolean isSeamTracedWhole() {
        return reach == SleeveReach.WHOLE && cap == CapChoice.KEEP_CAP_HEIGHT;
    }

    private double riseOf(SleeveHalf half, double outMm) {
        if (cap == CapChoice.KEEP_CAP_HEIGHT) {
            return 0;
        }
        try {
            return half.rise(outMm);
        } catch (OutOfReachException e) {
            return 0; // the pivot itself refuses it, with pin and place
        }
    }

    private double gapOf(SleeveHalf half, double outMm) {
        double rise = riseOf(half, outMm);
        double gap = Math.min(half.seam().length() / 2, Math.max(SEAM_BLEND_MM, 2.5 * Math.abs(rise)));
        if (rise <= -gap) {
            throw new AlterationException(
                    half.piece().name(),
                    half.word() + " underarm seam",
                    totalMm,
                    String.format(
                            Locale.ROOT,
                            "the seam would lose %.0f mm, more than half of it; keep the cap height instead.",
                            -rise));
        }
        return gap;
    }

    /** How much longer the seam gets by a gentle line into the underarm where it comes to lie. */
    private double growthOfSeam(SleeveHalf half, double outMm) {
        if (isSeamTracedWhole()) {
            return 0;
        }
        Point underarm = half.underarm().on(half.piece());
        double across = half.outward() * outMm;
        Motion lies = reach == SleeveReach.WHOLE
                ? Motion.slide(new Vec(across, 0))
                : Motion.pivotAcross(half.wristCorner().on(half.piece()), underarm, across);
        double gap = gapOf(half, outMm);
        Path upwards = half.right()
                ? half.seam().path().moved(lies)
                : half.seam().path().moved(lies).reversed();
        double below = upwards.length() - gap;
        Point end = underarm.plus(new Vec(across, riseOf(half, outMm)));
        return Joining.tangentFromStart(upwards.pointAt(below), upwards.tangentAt(below), end)
                        .length()
                - gap;
    }

    /**
     * Both underarms are sewn together, so they must rise alike: halves of unequal width take slightly unequal shares. Found by
     * halving the interval in which the difference of the rises changes its sign.
     */
    private double levelShare(List<SleeveHalf> halves) {
        double lo = totalMm / 4;
        double hi = totalMm * 3 / 4;
        try {
            double atLo = halves.get(0).rise(lo) - halves.get(1).rise(totalMm - lo);
            double atHi = halves.get(0).rise(hi) - halves.get(1).rise(totalMm - hi);
            if (atLo * atHi > 0) {
                return totalMm / 2;
            }
            for (int i = 0; i < 40; i++) {
                double mid = (lo + hi) / 2;
                double at = halves.get(0).rise(mid) - halves.get(1).rise(totalMm - mid);
                if (at * atLo > 0) {
                    lo = mid;
                } else {
                    hi = mid;
                }
            }
            return (lo + hi) / 2;
        } catch (OutOfReachException e) {
            // Even shares may still be in reach; if not, the pivot itself says so with pin and place.
            return totalMm / 2;
        }
    }

    private void half(StepList list, SleeveHalf half, double outMm, double growthMm) {
        String mark = half.word() + " upper arm mark";
        list.add(new Step.Mark(mark, half.underarm(), half.outward() * outMm, 0));
        if (cap == CapChoice.KEEP_CAP_SEAM) {
            list.add(new Step.Pin(half.crown()));
            list.add(new Step.Pivot(new Until.MeetsAcross(half.underarm(), mark)));
            list.trace(half.cap().name(), 0, half.cap().length());
            list.add(new Step.LayBack());
        } else {
            list.add(new Step.Slide(half.outward() * outMm, 0));
            traceCap(list, half, half.lowerCapMm());
        }
        seam(list, half, mark, outMm, growthMm);
    }

    private static void traceCap(StepList list, SleeveHalf half, double lowerMm) {
        double underarm = half.capFromUnderarm(0);
        double notch = half.capFromUnderarm(lowerMm);
        double crown = half.capFromUnderarm(half.cap().length() - CROWN_MM);
        list.trace(half.cap().name(), Math.min(underarm, notch), Math.max(underarm, notch));
        list.join(
                half.cap().name(),
                Math.min(notch, crown),
                Math.max(notch, crown),
                JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
    }

    private void seam(StepList list, SleeveHalf half, String mark, double outMm, double growthMm) {
        if (isSeamTracedWhole()) {
            list.trace(half.seam().name(), 0, half.seam().length());
            return;
        }
        if (reach == SleeveReach.WHOLE) {
            list.add(new Step.Slide(half.outward() * outMm, 0));
        } else {
            if (cap == CapChoice.KEEP_CAP_HEIGHT) {
                list.add(new Step.LayBack());
            }
            list.add(new Step.Pin(half.wristCorner()));
            list.add(new Step.Pivot(new Until.MeetsAcross(half.underarm(), mark)));
        }
        double gap = gapOf(half, outMm);
        double wrist = half.wristCorner().alongMm();
        double below = half.seamBelowUnderarm(gap);
        double underarm = half.underarm().alongMm();
        list.trace(half.seam().name(), Math.min(wrist, below), Math.max(wrist, below));
        list.join(
                half.seam().name(),
                Math.min(below, underarm),
                Math.max(below, underarm),
                half.right()
                        ? JoinForm.curveOfLength(Direction.AS_DRAWN, Direction.FREE, gap + growthMm)
                        : JoinForm.curveOfLength(Direction.FREE, Direction.AS_DRAWN, gap + growthMm));
    }

    private static void joinWrist(StepList list, Piece piece) {
        Edge wrist = piece.only(EdgeRole.WRIST);
        JoinForm form = JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN);
        list.join(wrist.name(), 0, WRIST_SHARE * wrist.length(), form);
        list.join(wrist.name(), (1 - WRIST_SHARE) * wrist.length(), wrist.length(), form);
    }
}
