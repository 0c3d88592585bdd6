package trueseam.output.figure;

import static trueseam.output.figure.BodyPoint.ANKLE;
import static trueseam.output.figure.BodyPoint.ARMPIT;
import static trueseam.output.figure.BodyPoint.BUST_POINT;
import static trueseam.output.figure.BodyPoint.CREASE;
import static trueseam.output.figure.BodyPoint.CROTCH;
import static trueseam.output.figure.BodyPoint.CROWN;
import static trueseam.output.figure.BodyPoint.ELBOW;
import static trueseam.output.figure.BodyPoint.FLOOR;
import static trueseam.output.figure.BodyPoint.HEM;
import static trueseam.output.figure.BodyPoint.HIP;
import static trueseam.output.figure.BodyPoint.KNEE;
import static trueseam.output.figure.BodyPoint.MID_SHOULDER;
import static trueseam.output.figure.BodyPoint.NAPE;
import static trueseam.output.figure.BodyPoint.NECK_PIT;
import static trueseam.output.figure.BodyPoint.NECK_SIDE;
import static trueseam.output.figure.BodyPoint.SEAT;
import static trueseam.output.figure.BodyPoint.SHOULDER;
import static trueseam.output.figure.BodyPoint.WAIST;
import static trueseam.output.figure.BodyPoint.WRIST;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import trueseam.garment.measure.Measure;

/** Lays the tape for each measure, as {@link Measure#tapePath} says it in words. */
final class TapePaths {
    /** A height is shown beside the body, so far out, mm. */
    private static final double BESIDE_MM = 34;

    /** The upper chest tape may rise a little at the back; drawn so, mm between front and sides. */
    private static final double UPPER_CHEST_RISE_MM = 7;

    /** The tape down the inside of a leg ends so far from the middle, so that left and right can be told apart, mm. */
    private static final double INSIDE_MM = 14;

    private static final int STEPS = 16;

    private final Form f;
    private final BodyWays on;

    TapePaths(Form form) {
        f = form;
        on = new BodyWays(form);
    }

    TapePath of(Measure m) {
        return switch (m) {
            case STATURE -> height(m, CROWN, new Spot(0, f.mm(FigureSize.STATURE), 0, 0), -f.hand.x() - BESIDE_MM);
            case KNEE_HEIGHT -> height(m, KNEE, on.middleOfKnee(), f.leg.outer().at(f.mm(FigureSize.KNEE)) + BESIDE_MM);
            case BUST_GIRTH -> round(m, f.trunk.ring(f.mm(FigureSize.BUST), 0), BUST_POINT, bothSides(on.bustPoint()));
            case CHEST_GIRTH -> round(m, f.trunk.ring(on.chest(), 0));
            case UPPER_CHEST_GIRTH ->
                round(m, f.trunk.ring(f.armpit.y() - 6, UPPER_CHEST_RISE_MM), ARMPIT, bothSides(f.armpit));
            case UNDER_BUST_GIRTH -> round(m, f.trunk.ring(f.mm(FigureSize.UNDER_BUST), 0));
            case WAIST_GIRTH -> round(m, f.trunk.ring(on.waist(), 0), WAIST, bothSides(f.trunk.at(on.waist(), 0)));
            case TOP_HIP_GIRTH -> round(m, f.trunk.ring(f.topHip(), 0));
            case HIP_GIRTH -> round(m, f.trunk.ring(on.hip(), 0), HIP, bothSides(f.trunk.at(on.hip(), 0)));
            case NECK_GIRTH -> round(m, on.neck(), NAPE, List.of(f.nape));
            case NECK_BASE_GIRTH ->
                round(
                        m,
                        on.neckBase(),
                        Map.of(NAPE, List.of(f.nape), NECK_SIDE, bothSides(f.neckSide), NECK_PIT, List.of(f.neckPit)));
            case ARMSCYE_GIRTH ->
                round(m, on.armscye(), Map.of(SHOULDER, List.of(f.shoulder), ARMPIT, List.of(f.armpit)));
            case UPPER_ARM_GIRTH -> round(m, f.arm.squareRing(f.upperArmAt, f.upperArmLean));
            case ELBOW_GIRTH -> round(m, f.arm.squareRing(f.elbow.y(), f.upperArmLean), ELBOW, List.of(on.elbow()));
            case WRIST_GIRTH -> round(m, f.arm.squareRing(f.wrist.y() + 4, f.forearmLean), WRIST, List.of(on.wrist()));
            case THIGH_GIRTH -> round(m, f.leg.ring(f.thigh(), 0));
            case KNEE_GIRTH -> round(m, f.leg.ring(f.mm(FigureSize.KNEE), 0), KNEE, List.of(on.middleOfKnee()));
            case CALF_GIRTH -> round(m, f.leg.ring(f.mm(FigureSize.CALF), 0));
            case ANKLE_GIRTH ->
                round(m, f.leg.ring(f.mm(FigureSize.ANKLE), 0), ANKLE, List.of(f.leg.at(f.mm(FigureSize.ANKLE), 0)));
            case ACROSS_FRONT_WIDTH -> across(m, on.crease(true), CREASE);
            case ACROSS_BACK_WIDTH -> across(m, on.crease(false), CREASE);
            case BUST_POINT_WIDTH -> across(m, on.bustPoint(), BUST_POINT);
            case ACROSS_BACK_SHOULDER_WIDTH -> {
                List<Spot> half = on.overShoulderBlade();
                List<Spot> whole = new ArrayList<>(half);
                for (int i = half.size() - 2; i >= 0; i--) {
                    whole.add(half.get(i).mirrored());
                }
                yield along(m, whole, Map.of(SHOULDER, bothSides(f.shoulder), NAPE, List.of(f.nape)));
            }
            case SHOULDER_LENGTH ->
                along(
                        m,
                        BodyWays.straight(f.neckSide, f.shoulder),
                        Map.of(NECK_SIDE, List.of(f.neckSide), SHOULDER, List.of(f.shoulder)));
            case SHOULDER_SLOPE -> slope(m);
            case BACK_WAIST_LENGTH ->
                along(
                        m,
                        on.middle(f.nape.y(), on.waist(), false),
                        Map.of(NAPE, List.of(f.nape), WAIST, List.of(on.centre(on.waist(), false))));
            case SCYE_DEPTH -> {
                Spot level = on.centre(f.armpit.y(), false);
                yield new TapePath(
                        m,
                        List.of(on.middle(f.nape.y(), f.armpit.y(), false)),
                        List.of(on.acrossLevel(level)),
                        Map.of(NAPE, List.of(f.nape), ARMPIT, List.of(f.armpit, level, f.armpit.mirrored())),
                        false);
            }
            case FRONT_WAIST_LENGTH ->
                along(
                        m,
                        on.middle(f.neckPit.y(), on.waist(), true),
                        Map.of(NECK_PIT, List.of(f.neckPit), WAIST, List.of(on.centre(on.waist(), true))));
            case BUST_POINT_HEIGHT ->
                along(
                        m,
                        on.overBust(f.mm(FigureSize.BUST)),
                        Map.of(NECK_SIDE, List.of(f.neckSide), BUST_POINT, List.of(on.bustPoint())));
            case FRONT_WAIST_LENGTH_OVER_BUST ->
                along(
                        m,
                        on.overBust(on.waist()),
                        Map.of(
                                NECK_SIDE, List.of(f.neckSide),
                                BUST_POINT, List.of(on.bustPoint()),
                                WAIST, List.of(f.trunk.over(on.bustPoint().x(), on.waist(), true))));
            case WAIST_TO_HIP ->
                along(
                        m,
                        on.side(on.waist(), on.hip()),
                        Map.of(WAIST, List.of(f.trunk.at(on.waist(), 0)), HIP, List.of(f.trunk.at(on.hip(), 0))));
            case BODY_RISE -> {
                double seat = f.crotch.y();
                Spot end = f.trunk.at(seat, 0);
                yield new TapePath(
                        m,
                        List.of(on.side(on.waist(), seat)),
                        List.of(BodyWays.straight(end, end.mirrored())),
                        Map.of(WAIST, List.of(f.trunk.at(on.waist(), 0)), SEAT, List.of(end)),
                        false);
            }
            case UPPER_ARM_LENGTH ->
                along(
                        m,
                        on.outsideOfArm(f.elbow.y()),
                        Map.of(SHOULDER, List.of(f.shoulder), ELBOW, List.of(on.elbow())));
            case ARM_LENGTH ->
                along(
                        m,
                        on.outsideOfArm(f.wrist.y()),
                        Map.of(SHOULDER, List.of(f.shoulder), ELBOW, List.of(on.elbow()), WRIST, List.of(on.wrist())));
            case NAPE_TO_WRIST_LENGTH -> {
                List<Spot> fromNape = new ArrayList<>(on.overShoulderBlade());
                java.util.Collections.reverse(fromNape);
                yield new TapePath(
                        m,
                        List.of(fromNape, on.outsideOfArm(f.wrist.y())),
                        List.of(),
                        Map.of(
                                NAPE, List.of(f.nape),
                                SHOULDER, List.of(f.shoulder),
                                ELBOW, List.of(on.elbow()),
                                WRIST, List.of(on.wrist())),
                        true);
            }
            case FRONT_CROTCH_LENGTH ->
                along(
                        m,
                        on.toCrotch(true),
                        Map.of(WAIST, List.of(on.centre(on.waist(), true)), CROTCH, List.of(f.crotch)));
            case BACK_CROTCH_LENGTH ->
                along(
                        m,
                        on.toCrotch(false),
                        Map.of(WAIST, List.of(on.centre(on.waist(), false)), CROTCH, List.of(f.crotch)));
            case TOTAL_CROTCH_LENGTH ->
                new TapePath(
                        m,
                        List.of(on.toCrotch(true), on.toCrotch(false)),
                        List.of(),
                        Map.of(
                                WAIST,
                                List.of(on.centre(on.waist(), true), on.centre(on.waist(), false)),
                                CROTCH,
                                List.of(f.crotch)),
                        false);
            case TRUNK_CIRCUMFERENCE -> {
                Spot start = f.neckSide.towards(f.shoulder, 0.5);
                yield new TapePath(
                        m,
                        List.of(on.loop(start, true), on.loop(start, false)),
                        List.of(),
                        Map.of(MID_SHOULDER, List.of(start), CROTCH, List.of(f.crotch)),
                        false);
            }
            case INSIDE_LEG_LENGTH -> {
                Spot floor = new Spot(INSIDE_MM, 0, 0, 0);
                yield along(
                        m,
                        BodyWays.straight(f.crotch, floor),
                        Map.of(CROTCH, List.of(f.crotch), FLOOR, List.of(floor)));
            }
            case OUTSIDE_LEG_LENGTH -> downTheSide(m, on.waist(), FLOOR);
            case TROUSER_LENGTH ->
                downTheSide(m, chosen(m, on.waist() - f.mm(FigureSize.ANKLE) - 10), HEM)
                        .mirrored();
            case SKIRT_LENGTH ->
                downTheSide(m, chosen(m, on.waist() - f.mm(FigureSize.KNEE) - 20), HEM)
                        .mirrored();
            case DRESS_LENGTH -> {
                double hem = f.nape.y() - chosen(m, f.nape.y() - f.mm(FigureSize.KNEE) - 20);
                List<Spot> tape = new ArrayList<>(on.middle(f.nape.y(), Math.max(hem, on.hip()), false));
                Spot last = tape.get(tape.size() - 1);
                Spot end = new Spot(0, Math.min(hem, last.y()), last.z(), -1);
                tape.addAll(BodyWays.straight(last, end).subList(1, STEPS + 1));
                double out = f.trunk.outer().at(on.hip());
                Spot left = new Spot(out, end.y(), last.z(), 0);
                yield new TapePath(
                        m,
                        List.of(tape),
                        List.of(BodyWays.straight(left, left.mirrored())),
                        Map.of(NAPE, List.of(f.nape), WAIST, List.of(on.centre(on.waist(), false)), HEM, List.of(end)),
                        false);
            }
        };
    }

    private double chosen(Measure measure, double usualMm) {
        return f.proportions().chosen(measure).orElse(usualMm);
    }

    private static List<Spot> bothSides(Spot left) {
        return List.of(left, left.mirrored());
    }

    private static TapePath round(Measure m, List<Spot> ring) {
        return round(m, ring, Map.of());
    }

    private static TapePath round(Measure m, List<Spot> ring, BodyPoint over, List<Spot> spots) {
        return round(m, ring, Map.of(over, spots));
    }

    private static TapePath round(Measure m, List<Spot> ring, Map<BodyPoint, List<Spot>> marks) {
        return new TapePath(m, List.of(ring), List.of(), marks, true);
    }

    private static TapePath along(Measure m, List<Spot> tape, Map<BodyPoint, List<Spot>> marks) {
        return new TapePath(m, List.of(tape), List.of(), marks, false);
    }

    /** From a place on the left straight over to the same place on the right, on the body's curve. */
    private TapePath across(Measure m, Spot left, BodyPoint ends) {
        double bulge = m == Measure.BUST_POINT_WIDTH ? 0 : 0.4 * f.mm(FigureSize.CHEST_DEPTH);
        List<Spot> tape = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            Spot straight = left.towards(left.mirrored(), (double) i / STEPS);
            double share = straight.x() / left.x();
            double z = straight.z() + Math.signum(left.facing()) * bulge * (1 - share * share);
            tape.add(new Spot(straight.x(), straight.y(), z, left.facing()));
        }
        return along(m, tape, Map.of(ends, bothSides(left)));
    }

    /** Straight from the floor to the level, beside the body, with the level carried over. */
    private static TapePath height(Measure m, BodyPoint top, Spot at, double x) {
        Spot above = new Spot(x, at.y(), 0, 0);
        Spot floor = new Spot(x, 0, 0, 0);
        Spot foot = new Spot(at.x(), 0, 0, 0);
        Spot level = new Spot(at.x(), at.y(), 0, 0);
        return new TapePath(
                m,
                List.of(BodyWays.straight(above, floor)),
                List.of(BodyWays.straight(level, above), BodyWays.straight(foot, floor)),
                Map.of(top, List.of(level), FLOOR, List.of(floor)),
                false);
    }

    private TapePath slope(Measure m) {
        Spot level = new Spot(f.shoulder.x(), f.neckSide.y(), 0, 0);
        return new TapePath(
                m,
                List.of(BodyWays.straight(level, f.shoulder)),
                List.of(BodyWays.straight(f.neckSide, level)),
                Map.of(NECK_SIDE, List.of(f.neckSide), SHOULDER, List.of(f.shoulder)),
                false);
    }

    /** Over the hip curve, then straight down. */
    private TapePath downTheSide(Measure m, double mm, BodyPoint end) {
        double y = Math.max(0, on.waist() - mm);
        List<Spot> tape = new ArrayList<>(on.side(on.waist(), Math.max(on.hip(), y)));
        Spot hip = tape.get(tape.size() - 1);
        Spot last = new Spot(hip.x(), Math.min(y, hip.y()), 0, 0);
        tape.addAll(BodyWays.straight(hip, last).subList(1, STEPS + 1));
        double in = end == FLOOR ? f.ankleX : 0;
        return new TapePath(
                m,
                List.of(tape),
                List.of(BodyWays.straight(last, end == FLOOR ? new Spot(in, y, 0, 0) : last.mirrored())),
                Map.of(WAIST, List.of(f.trunk.at(on.waist(), 0)), end, List.of(last)),
                false);
    }
}
