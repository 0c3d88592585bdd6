package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Stretch;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * The back slashed across from the centre to a hinge and opened or lapped. The centre goes up or down along the fold, so it stays
 * straight; the part beside it swings about the hinge, and what parts between the two at the top becomes a dart.
 *
 * <pre>{@code
 *      __ n ___
 *     |  /      \__         The centre part slides up d with its piece of the neck. The side part
 *   d |  |         \  S     swings about the hinge H until the turn P has gone up d as well. Between
 *     |__|P___      |       them a dart opens at n, which points to P.
 *             ----- H
 *     |             |
 * }</pre>
 *
 * Source: common practice.
 */
final class BackOpening {

    /** A dart that holds less than this is none, mm. */
    private static final double LEAST_DART_MM = 2;

    /** A neck dart is no longer than this, mm: 3 in, common practice. */
    private static final double LONGEST_NECK_DART_MM = 76.2;

    /** A point on the scissors is on neither part; so far beside them it is on the centre part, mm. */
    private static final double BESIDE_MM = 0.5;

    /** How much more than the lap is drawn new at the centre, mm. */
    private static final double LAP_MM = 5;

    private final StepList list;
    private final UpperPart part;
    private final double mm;
    private final Place onCentre;
    private final Place hinge;
    private final List<Spot> slash;

    /**
     * @param mm how far the centre goes up
     * @param onCentre where the slash begins, on the centre
     * @param slash where it turns, before the hinge; may be empty
     * @param hinge where it ends
     */
    BackOpening(StepList list, UpperPart part, double mm, Place onCentre, List<Spot> slash, Place hinge) {
        this.list = list;
        this.part = part;
        this.mm = mm;
        this.onCentre = onCentre;
        this.slash = slash;
        this.hinge = hinge;
    }

    /** A place on the centre so high. */
    static Place centreAt(UpperPart part, double y, String word) {
        Place top = part.centreTop();
        return part.at(top, top.on(part.piece).y() - y, word);
    }

    /** A dart at the neck takes the opening: one that is there, or a new one. */
    void intoNeck(Spot turn) {
        Place corner = part.neckCentre();
        List<Dart.EdgeDart> there = part.dartsFrom(corner);
        Optional<Dart.EdgeDart> dart = there.isEmpty() ? Optional.empty() : Optional.of(there.get(0));
        double whole = part.length(corner);
        double near = dart.map(d -> part.plainFrom(corner)).orElse(whole / 2);
        double far = near + dart.map(Dart.EdgeDart::mouthMm).orElse(0.0);
        open(turn, dart, corner, near, far, "neck dart");
    }

    /** The dart at the shoulder takes the opening. */
    void intoShoulder(Spot turn) {
        Place corner = part.shoulderNeck();
        List<Dart.EdgeDart> there = part.dartsFrom(corner);
        if (there.isEmpty()) {
            throw part.refusal(corner.edge(), mm, "there is no shoulder dart to take it; choose another way.");
        }
        Dart.EdgeDart dart = there.get(0);
        double near = part.plainFrom(corner);
        if (mm < 0) {
            requireHeld(turn, dart, near, corner);
        }
        open(turn, Optional.of(dart), corner, near, near + dart.mouthMm(), dart.name());
    }

    private void requireHeld(Spot turn, Dart.EdgeDart dart, double near, Place corner) {
        double arm = part.at(corner, near, "").on(part.piece).distanceTo(turn.at());
        double turned =
                Math.abs(mm) / Math.abs(hinge.on(part.piece).x() - turn.at().x());
        if (dart.mouthMm() - turned * arm < LEAST_DART_MM) {
            throw part.refusal(
                    dart.name(), mm, "the dart does not hold so much; lap less, or let the neck give it up.");
        }
    }

    private void open(Spot turn, Optional<Dart.EdgeDart> dart, Place corner, double near, double far, String name) {
        Piece piece = part.piece;
        Place nearLeg = part.at(corner, near, dart.isPresent() ? "leg of the " + name + " nearer the neck" : name);
        Place farLeg = part.at(corner, far, dart.isPresent() ? "leg of the " + name + " nearer the side" : name);
        boolean onNeck = corner.edge().equals(part.neckCentre().edge());
        Place top = part.armholeTop();

        List<Spot> toTurn = new ArrayList<>();
        dart.filter(d -> !d.apex().equals(turn.at()))
                .ifPresent(d -> toTurn.add(new Spot(d.apex(), "point of the " + name)));
        toTurn.add(turn);
        List<Spot> toHinge = new ArrayList<>(toTurn);
        toHinge.addAll(slash);
        list.cut("side of the upper back", farLeg, toHinge, hinge, part.at(part.shoulderTip(), 1, "shoulder"));
        list.add(new Step.Spread(Spot.of(piece, hinge), new Until.MovesAlong(turn, mm)));
        if (hinge.edge().equals(top.edge())) {
            part.trace(top, 0, part.from(top, hinge));
        }
        part.trace(corner, far, part.length(corner));
        if (onNeck) {
            part.traceWhole(part.shoulderNeck());
        }

        list.cut("centre of the upper back", nearLeg, toTurn, onCentre, part.at(part.centreTop(), 1, "centre"));
        list.add(new Step.Slide(0, mm));
        Place neckAtCentre = part.centreTop();
        double down = part.from(neckAtCentre, onCentre);
        double lapped = mm < 0 ? LAP_MM - mm : 0;
        part.trace(neckAtCentre, 0, down - lapped);
        part.trace(corner, 0, near);
        if (!onNeck) {
            part.traceWhole(part.neckCentre());
        }
        part.join(neckAtCentre, down - lapped, down, JoinForm.STRAIGHT);

        part.join(corner, near, far, dart.isPresent() ? JoinForm.REFIT : JoinForm.STRAIGHT);
        if (dart.isEmpty()) {
            double along = part.corners.isStart(corner) ? near : part.length(corner) - near;
            list.add(new Step.NewDart(name, new Stretch(corner.edge(), along, along), dartPoint(nearLeg, turn)));
        }
    }

    private Spot dartPoint(Place mouth, Spot turn) {
        Point at = mouth.on(part.piece);
        double share = Math.min(1, LONGEST_NECK_DART_MM / at.distanceTo(turn.at()));
        return new Spot(at.towards(turn.at(), share).plus(new Vec(-part.out * BESIDE_MM, 0)), turn.word());
    }

    /** The whole upper part swings about the hinge, and the centre is ruled straight again: the neck gains or loses at the centre. */
    void intoNeckLine() {
        List<Spot> all = new ArrayList<>(slash);
        list.cut("upper back", onCentre, all, hinge, part.centreTop());
        Spot neck = Spot.of(part.piece, part.neckCentre());
        list.add(new Step.Spread(Spot.of(part.piece, hinge), new Until.MovesAlong(neck, mm)));
        Place top = part.armholeTop();
        if (hinge.edge().equals(top.edge())) {
            part.trace(top, 0, part.from(top, hinge));
        }
        part.traceWhole(part.shoulderTip());
        part.traceWhole(part.neckCentre());
        Place centre = part.centreTop();
        double down = part.from(centre, onCentre);
        double lapped = mm < 0 ? LAP_MM - mm : 0;
        part.trace(centre, 0, down - lapped);
        part.join(centre, down - lapped, down, JoinForm.STRAIGHT);
        list.add(new Step.Straighten(centre.edge()));
    }
}
