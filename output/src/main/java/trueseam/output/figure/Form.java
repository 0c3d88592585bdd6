package trueseam.output.figure;

import static trueseam.output.figure.FigureSize.*;

import java.util.HashMap;
import java.util.Map;

/**
 * The standing body: trunk, the wearer's left leg and left arm (the right ones are their mirror images), and the landmarks.
 *
 * <p>Feet a little apart, arms hanging a little out, so far that they do not hide the trunk.
 */
final class Form {
    /** The arm hangs clear of the trunk by this, so that a tape round the trunk is seen between them; mm. */
    private static final double CLEAR_MM = 24;

    private static final double LEAST_LEAN = Math.toRadians(13);
    private static final double MOST_LEAN = Math.toRadians(30);

    /** So far out at most, mm. */
    private static final double MOST_OUTWARDS_MM = 120;

    /** The forearm hangs steeper than the upper arm. */
    private static final double ELBOW_BEND = Math.toRadians(6);

    private final Proportions p;

    final Limb trunk;
    final Limb leg;
    final Limb arm;
    final Spot nape;
    final Spot neckPit;
    final Spot neckSide;
    final Spot shoulder;
    final Spot armpit;
    final Spot elbow;
    final Spot wrist;
    final Spot hand;
    final Spot crotch;
    final double upperArmLean;
    final double forearmLean;
    final double upperArmAt;
    final double ankleX;

    Form(Proportions proportions) {
        p = proportions;
        double shoulderX = p.mm(SHOULDER_BREADTH) / 2;
        double shoulderY = p.mm(SHOULDER_POINT);
        neckSide = new Spot(p.mm(NECK_BASE_BREADTH) / 2, shoulderY + p.mm(SHOULDER_DROP), 0, 0);
        shoulder = new Spot(shoulderX, shoulderY, 0, 0);
        nape = new Spot(0, Math.max(p.mm(NAPE), neckSide.y() + 6), -0.26 * p.mm(CHEST_DEPTH), -1);
        neckPit = new Spot(0, p.mm(NECK_PIT), 0.17 * p.mm(CHEST_DEPTH), 1);
        crotch = new Spot(0, p.mm(CROTCH), 0, 0);
        double armpitX = Math.min(p.mm(ARMPIT_BREADTH) / 2, shoulderX - 14);
        armpit = new Spot(armpitX, p.mm(ARMPIT), 0, 0);

        Map<Double, Double> side = new HashMap<>();
        side.put(p.mm(ARMPIT), armpitX);
        side.put(p.mm(BUST), p.mm(BUST_BREADTH) / 2);
        side.put(p.mm(UNDER_BUST), p.mm(UNDER_BUST_BREADTH) / 2);
        side.put(p.mm(WAIST), p.mm(WAIST_BREADTH) / 2);
        side.put(topHip(), p.mm(TOP_HIP_BREADTH) / 2);
        side.put(p.mm(HIP), p.mm(HIP_BREADTH) / 2);
        double thighIn = 3;
        double thighOut = Math.max(p.mm(HIP_BREADTH) / 2 - 3, thighIn + 0.92 * p.mm(THIGH_BREADTH));
        thighIn = Math.max(thighIn, thighOut - p.mm(THIGH_BREADTH));
        double thighX = (thighIn + thighOut) / 2;
        ankleX = Math.max(0.88 * thighX, p.mm(CALF_BREADTH) / 2 + 12);
        double kneeX = Math.max(0.55 * ankleX + 0.45 * thighX, p.mm(KNEE_BREADTH) / 2 + 6);
        side.put(thigh(), thighOut);
        side.put(p.mm(KNEE), kneeX + p.mm(KNEE_BREADTH) / 2);
        side.put(p.mm(CALF), ankleX + 4 + p.mm(CALF_BREADTH) / 2);
        side.put(p.mm(ANKLE), ankleX + p.mm(ANKLE_BREADTH) / 2);
        Profile outer = new Profile(side);
        Profile legInner = new Profile(Map.of(
                p.mm(CROTCH), 0.0,
                thigh(), thighIn,
                p.mm(KNEE), kneeX - p.mm(KNEE_BREADTH) / 2,
                p.mm(CALF), ankleX + 2 - p.mm(CALF_BREADTH) / 2,
                p.mm(ANKLE), ankleX - p.mm(ANKLE_BREADTH) / 2));

        Map<Double, Double> front = new HashMap<>();
        front.put(neckPit.y(), neckPit.z());
        front.put(p.mm(ARMPIT), 0.42 * p.mm(CHEST_DEPTH));
        front.put(p.mm(BUST), 0.56 * p.mm(CHEST_DEPTH));
        front.put(p.mm(UNDER_BUST), 0.46 * p.mm(CHEST_DEPTH));
        front.put(p.mm(WAIST), 0.52 * p.mm(WAIST_DEPTH));
        front.put(topHip(), 0.52 * p.mm(WAIST_DEPTH));
        front.put(p.mm(HIP), 0.4 * p.mm(SEAT_DEPTH));
        Map<Double, Double> back = new HashMap<>();
        back.put(nape.y(), -nape.z());
        back.put(p.mm(ARMPIT), 0.46 * p.mm(CHEST_DEPTH));
        back.put(p.mm(BUST), 0.44 * p.mm(CHEST_DEPTH));
        back.put(p.mm(WAIST), 0.4 * p.mm(WAIST_DEPTH));
        back.put(p.mm(HIP), 0.6 * p.mm(SEAT_DEPTH));
        trunk = new Limb(outer, mirrored(side), new Profile(front), new Profile(back));

        double thighDeep = 0.55 * p.mm(THIGH_BREADTH);
        leg = new Limb(
                outer,
                legInner,
                new Profile(Map.of(thigh(), thighDeep, p.mm(ANKLE), 0.6 * p.mm(ANKLE_BREADTH))),
                new Profile(Map.of(thigh(), thighDeep, p.mm(ANKLE), 0.6 * p.mm(ANKLE_BREADTH))));

        double lean = LEAST_LEAN;
        double outwards = 0;
        Arm hanging = new Arm(lean, outwards);
        while (outwards < MOST_OUTWARDS_MM && !hanging.isClearOf(outer)) {
            // a stout arm first hangs further out and leans more, then only further out
            lean = Math.min(lean + Math.toRadians(0.5), MOST_LEAN);
            outwards += 2;
            hanging = new Arm(lean, outwards);
        }
        upperArmLean = lean;
        forearmLean = lean - ELBOW_BEND;
        arm = hanging.limb;
        upperArmAt = hanging.fullestY;
        elbow = hanging.elbow;
        wrist = hanging.wrist;
        hand = hanging.hand;
    }

    double topHip() {
        return (p.mm(WAIST) + p.mm(HIP)) / 2;
    }

    /** Close under the fold of the seat, where a thigh is fullest. */
    double thigh() {
        return p.mm(CROTCH) - Math.min(26, 0.1 * (p.mm(CROTCH) - p.mm(KNEE)));
    }

    double mm(FigureSize size) {
        return p.mm(size);
    }

    Proportions proportions() {
        return p;
    }

    private static Profile mirrored(Map<Double, Double> side) {
        Map<Double, Double> other = new HashMap<>();
        side.forEach((y, x) -> other.put(y, -x));
        return new Profile(other);
    }

    /** An arm that leans and lies so far out. */
    private final class Arm {
        final Spot elbow;
        final Spot wrist;
        final Spot hand;
        final double fullestY;
        final Limb limb;

        Arm(double lean, double outwardsMm) {
            double half = p.mm(UPPER_ARM_BREADTH) / 2;
            double steeper = lean - ELBOW_BEND;
            // the joint lies inside the shoulder point and below it
            Spot joint = new Spot(shoulder.x() - 0.5 * half + outwardsMm, shoulder.y() - 0.7 * half, 0, 0);
            elbow = along(joint, lean, p.mm(UPPER_ARM) - 0.7 * half);
            wrist = along(elbow, steeper, p.mm(FOREARM));
            hand = along(wrist, steeper / 2, p.mm(HAND));
            Spot top = along(joint, lean, 1.5 * half);
            Spot fullest = joint.towards(elbow, 0.44);
            Spot fore = elbow.towards(wrist, 0.24);
            fullestY = fullest.y();
            double wide = 1 / Math.cos(lean);
            double wideBelow = 1 / Math.cos(steeper);
            double elbowHalf = p.mm(ELBOW_BREADTH) / 2 * wide;
            double foreHalf = p.mm(FOREARM_BREADTH) / 2 * wideBelow;
            double wristHalf = p.mm(WRIST_BREADTH) / 2 * wideBelow;
            Profile outer = new Profile(Map.of(
                    top.y(), top.x() + 1.02 * half * wide,
                    fullest.y(), fullest.x() + half * wide,
                    elbow.y(), elbow.x() + elbowHalf,
                    fore.y(), fore.x() + foreHalf * 1.06,
                    wrist.y(), wrist.x() + wristHalf));
            Map<Double, Double> inside = new HashMap<>(Map.of(
                    fullest.y(), fullest.x() - half * wide,
                    elbow.y(), elbow.x() - elbowHalf,
                    fore.y(), fore.x() - foreHalf,
                    wrist.y(), wrist.x() - wristHalf));
            inside.put(Math.max(armpit.y(), fullest.y() + 12), armpit.x());
            Profile deep = new Profile(Map.of(fullest.y(), 1.1 * half, wrist.y(), 0.8 * p.mm(WRIST_BREADTH) / 2));
            limb = new Limb(outer, new Profile(inside), deep, deep);
        }

        boolean isClearOf(Profile side) {
            if (limb.inner().at(fullestY) < armpit.x() + 2) {
                return false;
            }
            for (double y = armpit.y() - 8; y > p.mm(CROTCH); y -= 12) {
                // the gap opens from the armpit downwards
                double wanted = Math.min(CLEAR_MM, 0.22 * (armpit.y() - y));
                if (limb.inner().at(y) < side.at(y) + wanted) {
                    return false;
                }
            }
            return true;
        }

        private Spot along(Spot from, double lean, double mm) {
            return new Spot(from.x() + mm * Math.sin(lean), from.y() - mm * Math.cos(lean), 0, 0);
        }
    }
}
