package trueseam.fitting.repertoire;

import java.util.List;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.alteration.SleeveHalf;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.OutOfReachException;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * The cross-slash form of a larger upper arm: the sleeve is cut down its middle and across from underarm to underarm, the four quarters
 * hang together at crown, wrist and underarms, the middle is opened at the upper arm and the quarters lap along the cross cut; the crown
 * is drawn higher by the lap, so that the sleeve is as long as it was (common practice).
 */
final class CrossSlash {

    /** How much of the cap is left standing on either side of the crown. */
    private static final double CROWN_MM = 15;

    private final Piece piece;
    private final double mm;
    private final Point crown;
    private final Spot middle;
    private final Place wrist;

    private CrossSlash(Piece piece, List<SleeveHalf> halves, double mm) {
        this.piece = piece;
        this.mm = mm;
        this.crown = halves.get(0).crown().on(piece);
        Point right = halves.get(0).underarm().on(piece);
        Point left = halves.get(1).underarm().on(piece);
        this.middle = new Spot(new Point(crown.x(), (right.y() + left.y()) / 2), "middle of the upper arm");
        Edge edge = piece.only(EdgeRole.WRIST);
        PathPlace under = edge.path().crossings(crown, new Vec(0, 1)).stream()
                .findFirst()
                .orElseThrow(() -> new AlterationException(
                        piece.name(),
                        edge.name(),
                        mm,
                        "the wrist does not lie under the crown; keep the cap seam instead."));
        this.wrist = new Place(edge.name(), under.alongMm(), "middle of the wrist");
    }

    static void steps(StepList list, Piece piece, double mm) {
        List<SleeveHalf> halves = SleeveHalf.of(piece);
        CrossSlash slash = new CrossSlash(piece, halves, mm);
        double down = 0;
        for (SleeveHalf half : halves) {
            down += slash.half(list, half) / 2;
        }
        if (piece.level(LevelName.BICEP).isPresent()) {
            list.add(new Step.Remark(Step.Inside.LEVEL, LevelName.BICEP.word(), 0, down));
        }
    }

    /** One half; how far its underarm point goes up. */
    private double half(StepList list, SleeveHalf half) {
        double out = half.outward() * mm / 2;
        Place corner = half.wristCorner();
        Motion lower = opened(out);
        list.cut("lower " + half.word(), wrist, List.of(middle), half.underarm(), corner);
        list.add(new Step.Spread(Spot.of(piece, wrist), new Until.MovesAcross(middle, out)));
        list.trace(half.seam().name(), 0, half.seam().length());
        double whole = piece.edge(wrist.edge()).length();
        list.trace(wrist.edge(), half.right() ? wrist.alongMm() : 0, half.right() ? whole : wrist.alongMm());

        Point underarm = half.underarm().on(piece);
        Vec goes = lower.apply(underarm).minus(underarm);
        Place onCap = new Place(half.cap().name(), half.capFromUnderarm(0), half.word() + " underarm point");
        Place held = new Place(half.cap().name(), half.capFromUnderarm(half.lowerCapMm()), "notch of the cap");
        list.cut("upper " + half.word(), half.crown(), List.of(middle), onCap, held);
        list.add(new Step.Slide(goes.x(), goes.y()));
        list.add(new Step.Spread(
                new Spot(underarm, half.word() + " underarm point"),
                new Until.MovesAcross(new Spot(crown, "crown"), -goes.x())));
        list.trace(onCap, held);
        double top = half.capFromUnderarm(half.cap().length() - CROWN_MM);
        list.join(
                held.edge(),
                Math.min(held.alongMm(), top),
                Math.max(held.alongMm(), top),
                JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
        return goes.y();
    }

    private Motion opened(double outMm) {
        try {
            return Motion.pivotAcross(wrist.on(piece), middle.at(), outMm);
        } catch (OutOfReachException e) {
            throw new AlterationException(
                    piece.name(),
                    "middle of the upper arm",
                    mm,
                    "the sleeve cannot be opened so far; take the next size.");
        }
    }
}
