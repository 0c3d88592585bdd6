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

    TapePaths(Form form) {
        f = form;
    }

    TapePath of(Measure m) {
        return switch (m) {
            case STATURE -> height(m, CROWN, new Spot(0, f.mm(FigureSize.STATURE), 0, 0), -f.hand.x() - BESIDE_MM);
            case KNEE_HEIGHT -> height(m, KNEE, middleOfKnee(), f.leg.outer().at(f.mm(FigureSize.KNEE)) + BESIDE_MM);
            case BUST_GIRTH -> round(m, f.trunk.ring(f.mm(FigureSize.BUST), 0), BUST_POINT, bothSides(bustPoint()));
            case CHEST_GIRTH -> round(m, f.trunk.ring(chest(), 0));
            case UPPER_CHEST_GIRTH ->
                round(m, f.trunk.ring(f.armpit.y() - 6, UPPER_CHEST_RISE_MM), ARMPIT, bothSides(f.armpit));
            case UNDER_BUST_GIRTH -> round(m, f.trunk.ring(f.mm(FigureSize.UNDER_BUST), 0));
            case WAIST_GIRTH -> round(m, f.trunk.ring(waist(), 0), WAIST, bothSides(f.trunk.at(waist(), 0)));
            case TOP_HIP_GIRTH -> round(m, f.trunk.ring(f.topHip(), 0));
            case HIP_GIRTH -> round(m, f.trunk.ring(hip(), 0), HIP, bothSides(f.trunk.at(hip(), 0)));
            case NECK_GIRTH -> round(m, neck(), NAPE, List.of(f.nape));
            case NECK_BASE_GIRTH ->
                round(
                        m,
                        neckBase(),
                        Map.of(NAPE, List.of(f.nape), NECK_SIDE, bothSides(f.neckSide), NECK_PIT, List.of(f.neckPit)));
            case ARMSCYE_GIRTH -> round(m, armscye(), Map.of(SHOULDER, List.of(f.shoulder), ARMPIT, List.of(f.armpit)));
            case UPPER_ARM_GIRTH -> round(m, f.arm.squareRing(f.upperArmAt, f.upperArmLean));
            case ELBOW_GIRTH -> round(m, f.arm.squareRing(f.elbow.y(), f.upperArmLean), ELBOW, List.of(elbow()));
            case WRIST_GIRTH -> round(m, f.arm.squareRing(f.wrist.y() + 4, f.forearmLean), WRIST, List.of(wrist()));
            case THIGH_GIRTH -> round(m, f.leg.ring(f.thigh(), 0));
            case KNEE_GIRTH -> round(m, f.leg.ring(f.mm(FigureSize.KNEE), 0), KNEE, List.of(middleOfKnee()));
            case CALF_GIRTH -> round(m, f.leg.ring(f.mm(FigureSize.CALF), 0));
            case ANKLE_GIRTH ->
                round(m, f.leg.ring(f.mm(FigureSize.ANKLE), 0), ANKLE, List.of(f.leg.at(f.mm(FigureSize.ANKLE), 0)));
            case ACROSS_FRONT_WIDTH -> across(m, crease(true), CREASE);
            case ACROSS_BACK_WIDTH -> across(m, crease(false), CREASE);
            case BUST_POINT_WIDTH -> across(m, bustPoint(), BUST_POINT);
            case ACROSS_BACK_SHOULDER_WIDTH -> {
                List<Spot> half = overShoulderBlade();
                List<Spot> whole = new ArrayList<>(half);
                for (int i = half.size() - 2; i >= 0; i--) {
                    whole.add(half.get(i).mirrored());
                }
                yield along(m, whole, Map.of(SHOULDER, bothSides(f.shoulder), NAPE, List.of(f.nape)));
            }
            case SHOULDER_LENGTH ->
                along(
                        m,
                        straight(f.neckSide, f.shoulder),
                        Map.of(NECK_SIDE, List.of(f.neckSide), SHOULDER, List.of(f.shoulder)));
            case SHOULDER_SLOPE -> slope(m);
            case BACK_WAIST_LENGTH ->
                along(
                        m,
                        middle(f.nape.y(), waist(), false),
                        Map.of(NAPE, List.of(f.nape), WAIST, List.of(centre(waist(), false))));
            case SCYE_DEPTH -> {
                Spot level = centre(f.armpit.y(), false);
                yield new TapePath(
                        m,
                        List.of(middle(f.nape.y(), f.armpit.y(), false)),
                        List.of(acrossLevel(level)),
                        Map.of(NAPE, List.of(f.nape), ARMPIT, List.of(f.armpit, level, f.armpit.mirrored())),
                        false);
            }
            case FRONT_WAIST_LENGTH ->
                along(
                        m,
                        middle(f.neckPit.y(), waist(), true),
                        Map.of(NECK_PIT, List.of(f.neckPit), WAIST, List.of(centre(waist(), true))));
            case BUST_POINT_HEIGHT ->
                along(
                        m,
                        overBust(f.mm(FigureSize.BUST)),
                        Map.of(NECK_SIDE, List.of(f.neckSide), BUST_POINT, List.of(bustPoint())));
            case FRONT_WAIST_LENGTH_OVER_BUST ->
                along(
                        m,
                        overBust(waist()),
                        Map.of(
                                NECK_SIDE, List.of(f.neckSide),
                                BUST_POINT, List.of(bustPoint()),
                                WAIST, List.of(f.trunk.over(bustPoint().x(), waist(), true))));
            case WAIST_TO_HIP ->
                along(
                        m,
                        side(waist(), hip()),
                        Map.of(WAIST, List.of(f.trunk.at(waist(), 0)), HIP, List.of(f.trunk.at(hip(), 0))));
            case BODY_RISE -> {
                double seat = f.crotch.y();
                Spot end = f.trunk.at(seat, 0);
                yield new TapePath(
                        m,
                        List.of(side(waist(), seat)),
                        List.of(straight(end, end.mirrored())),
                        Map.of(WAIST, List.of(f.trunk.at(waist(), 0)), SEAT, List.of(end)),
                        false);
            }
            case UPPER_ARM_LENGTH ->
                along(m, outsideOfArm(f.elbow.y()), Map.of(SHOULDER, List.of(f.shoulder), ELBOW, List.of(elbow())));
            case ARM_LENGTH ->
                along(
                        m,
                        outsideOfArm(f.wrist.y()),
                        Map.of(SHOULDER, List.of(f.shoulder), ELBOW, List.of(elbow()), WRIST, List.of(wrist())));
            case NAPE_TO_WRIST_LENGTH -> {
                List<Spot> fromNape = new ArrayList<>(overShoulderBlade());
                java.util.Collections.reverse(fromNape);
                yield new TapePath(
                        m,
                        List.of(fromNape, outsideOfArm(f.wrist.y())),
                        List.of(),
                        Map.of(
                                NAPE, List.of(f.nape),
                                SHOULDER, List.of(f.shoulder),
                                ELBOW, List.of(elbow()),
                                WRIST, List.of(wrist())),
                        true);
            }
            case FRONT_CROTCH_LENGTH ->
                along(m, toCrotch(true), Map.of(WAIST, List.of(centre(waist(), true)), CROTCH, List.of(f.crotch)));
            case BACK_CROTCH_LENGTH ->
                along(m, toCrotch(false), Map.of(WAIST, List.of(centre(waist(), false)), CROTCH, List.of(f.crotch)));
            case TOTAL_CROTCH_LENGTH ->
                new TapePath(
                        m,
                        List.of(toCrotch(true), toCrotch(false)),
                        List.of(),
                        Map.of(
                                WAIST,
                                List.of(centre(waist(), true), centre(waist(), false)),
                                CROTCH,
                                List.of(f.crotch)),
                        false);
            case TRUNK_CIRCUMFERENCE -> {
                Spot start = f.neckSide.towards(f.shoulder, 0.5);
                yield new TapePath(
                        m,
                        List.of(loop(start, true), loop(start, false)),
                        List.of(),
                        Map.of(MID_SHOULDER, List.of(start), CROTCH, List.of(f.crotch)),
                        false);
            }
            case INSIDE_LEG_LENGTH -> {
                Spot floor = new Spot(INSIDE_MM, 0, 0, 0);
                yield along(m, straight(f.crotch, floor), Map.of(CROTCH, List.of(f.crotch), FLOOR, List.of(floor)));
            }
            case OUTSIDE_LEG_LENGTH -> downTheSide(m, waist(), FLOOR);
            case TROUSER_LENGTH ->
                downTheSide(m, chosen(m, waist() - f.mm(FigureSize.ANKLE) - 10), HEM)
                        .mirrored();
            case SKIRT_LENGTH ->
                downTheSide(m, chosen(m, waist() - f.mm(FigureSize.KNEE) - 20), HEM)
                        .mirrored();
            case DRESS_LENGTH -> {
                double hem = f.nape.y() - chosen(m, f.nape.y() - f.mm(FigureSize.KNEE) - 20);
                List<Spot> tape = new ArrayList<>(middle(f.nape.y(), Math.max(hem, hip()), false));
                Spot last = tape.get(tape.size() - 1);
                Spot end = new Spot(0, Math.min(hem, last.y()), last.z(), -1);
                tape.addAll(straight(last, end).subList(1, STEPS + 1));
                double out = f.trunk.outer().at(hip());
                Spot left = new Spot(out, end.y(), last.z(), 0);
                yield new TapePath(
                        m,
                        List.of(tape),
                        List.of(straight(left, left.mirrored())),
                        Map.of(NAPE, List.of(f.nape), WAIST, List.of(centre(waist(), false)), HEM, List.of(end)),
                        false);
            }
        };
    }

    private double waist() {
        return f.mm(FigureSize.WAIST);
    }

    private double hip() {
        return f.mm(FigureSize.HIP);
    }

    /** Over the fullest chest and close under the armpits: a third of the way from the bust level up to them. */
    private double chest() {
        return f.mm(FigureSize.BUST) + (f.armpit.y() - f.mm(FigureSize.BUST)) / 3;
    }

    private double chosen(Measure measure, double usualMm) {
        return f.proportions().chosen(measure).orElse(usualMm);
    }

    private Spot bustPoint() {
        return f.trunk.over(f.mm(FigureSize.BUST_POINTS) / 2, f.mm(FigureSize.BUST), true);
    }

    private Spot middleOfKnee() {
        return f.leg.at(f.mm(FigureSize.KNEE), Math.PI / 2);
    }

    private Spot elbow() {
        return new Spot(f.arm.outer().at(f.elbow.y()), f.elbow.y(), 0, 0);
    }

    private Spot wrist() {
        return new Spot(f.arm.outer().at(f.wrist.y()), f.wrist.y(), 0, 0);
    }

    private Spot centre(double y, boolean inFront) {
        return f.trunk.over(0, y, inFront);
    }

    /** Half way between shoulder point and armpit; the creases of the back lie further out than those in front. */
    private Spot crease(boolean inFront) {
        double y = (f.shoulder.y() + f.armpit.y()) / 2;
        double x = f.mm(FigureSize.CREASE_BREADTH) / 2 * (inFront ? 1 : 1.04);
        return new Spot(x, y, 0, inFront ? 0.3 : -0.3);
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

    private static List<Spot> straight(Spot from, Spot to) {
        List<Spot> line = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            line.add(from.towards(to, (double) i / STEPS));
        }
        return line;
    }

    /** Straight from the floor to the level, beside the body, with the level carried over. */
    private static TapePath height(Measure m, BodyPoint top, Spot at, double x) {
        Spot above = new Spot(x, at.y(), 0, 0);
        Spot floor = new Spot(x, 0, 0, 0);
        Spot foot = new Spot(at.x(), 0, 0, 0);
        Spot level = new Spot(at.x(), at.y(), 0, 0);
        return new TapePath(
                m,
                List.of(straight(above, floor)),
                List.of(straight(level, above), straight(foot, floor)),
                Map.of(top, List.of(level), FLOOR, List.of(floor)),
                false);
    }

    private TapePath slope(Measure m) {
        Spot level = new Spot(f.shoulder.x(), f.neckSide.y(), 0, 0);
        return new TapePath(
                m,
                List.of(straight(level, f.shoulder)),
                List.of(straight(f.neckSide, level)),
                Map.of(NECK_SIDE, List.of(f.neckSide), SHOULDER, List.of(f.shoulder)),
                false);
    }

    private List<Spot> middle(double from, double to, boolean inFront) {
        List<Spot> line = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            line.add(centre(from + (to - from) * i / STEPS, inFront));
        }
        return line;
    }

    /** The level of a place in the middle, carried over to both sides. */
    private List<Spot> acrossLevel(Spot middle) {
        List<Spot> line = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            line.add(f.trunk.at(middle.y(), (middle.z() < 0 ? -1 : 1) * Math.PI * i / STEPS));
        }
        return line;
    }

    private List<Spot> side(double from, double to) {
        List<Spot> line = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            line.add(f.trunk.at(from + (to - from) * i / STEPS, 0));
        }
        return line;
    }

    /** Over the hip curve, then straight down. */
    private TapePath downTheSide(Measure m, double mm, BodyPoint end) {
        double y = Math.max(0, waist() - mm);
        List<Spot> tape = new ArrayList<>(side(waist(), Math.max(hip(), y)));
        Spot hip = tape.get(tape.size() - 1);
        Spot last = new Spot(hip.x(), Math.min(y, hip.y()), 0, 0);
        tape.addAll(straight(hip, last).subList(1, STEPS + 1));
        double in = end == FLOOR ? f.ankleX : 0;
        return new TapePath(
                m,
                List.of(tape),
                List.of(straight(last, end == FLOOR ? new Spot(in, y, 0, 0) : last.mirrored())),
                Map.of(WAIST, List.of(f.trunk.at(waist(), 0)), end, List.of(last)),
                false);
    }

    private List<Spot> overBust(double to) {
        Spot bust = bustPoint();
        List<Spot> line = new ArrayList<>();
        double top = f.neckSide.y();
        for (int i = 0; i <= STEPS; i++) {
            double share = (double) i / STEPS;
            double rounded = Math.sin(share * Math.PI / 2);
            line.add(new Spot(
                    f.neckSide.x() + share * (bust.x() - f.neckSide.x()),
                    top + share * (bust.y() - top),
                    rounded * bust.z(),
                    Math.max(share, 0.05)));
        }
        if (to < bust.y()) {
            for (int i = 1; i <= STEPS; i++) {
                line.add(f.trunk.over(bust.x(), bust.y() + (to - bust.y()) * i / STEPS, true));
            }
        }
        return line;
    }

    /** From the waist down the middle, then inwards between the legs. */
    private List<Spot> toCrotch(boolean inFront) {
        List<Spot> line = new ArrayList<>();
        double level = f.crotch.y() + 0.6 * (hip() - f.crotch.y());
        double deep = centre(level, inFront).z();
        // steep enough that the way in between the legs never seems to climb, seen from above
        double turn = Math.max(level, f.crotch.y() + 0.2 * Math.abs(deep));
        for (int i = 0; i <= STEPS; i++) {
            line.add(centre(waist() + (turn - waist()) * i / STEPS, inFront));
        }
        Spot last = line.get(STEPS);
        for (int i = 1; i <= STEPS / 2; i++) {
            line.add(last.towards(f.crotch, (double) i / (STEPS / 2)));
        }
        return line;
    }

    private List<Spot> loop(Spot start, boolean inFront) {
        List<Spot> line = new ArrayList<>();
        List<Spot> last = toCrotch(inFront);
        double turn = last.get(STEPS).y();
        for (int i = 0; i <= STEPS; i++) {
            double share = (double) i / STEPS;
            double y = start.y() + share * (turn - start.y());
            double x = start.x() * (1 - share);
            Spot skin = f.trunk.over(x, y, inFront);
            double rounded = Math.min(1, 3 * share);
            line.add(new Spot(
                    x, y, skin.z() * Math.sin(rounded * Math.PI / 2), (inFront ? 1 : -1) * Math.max(share, 0.05)));
        }
        line.addAll(last.subList(STEPS + 1, last.size()));
        return line;
    }

    /** From the shoulder point over the back to the nape. */
    private List<Spot> overShoulderBlade() {
        List<Spot> line = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double share = (double) i / STEPS;
            // drawn towards the ridge near the neck side point, and so always a little behind the line of the shoulder
            Spot ridge = new Spot(f.neckSide.x(), f.neckSide.y() - 4, 0.3 * f.nape.z(), 0);
            Spot at = f.shoulder.towards(ridge, share).towards(ridge.towards(f.nape, share), share);
            line.add(new Spot(at.x(), at.y(), at.z(), -Math.max(share, 0.05)));
        }
        return line;
    }

    private List<Spot> outsideOfArm(double to) {
        List<Spot> line = new ArrayList<>();
        double top = f.arm.outer().downwards().get(0).start().y();
        double drop = f.shoulder.y() - top;
        var over = new Contour(f, FigureView.FRONT).shoulderToArm();
        for (int i = 0; i <= STEPS / 2; i++) {
            var at = over.at((double) i / (STEPS / 2));
            line.add(new Spot(at.x(), at.y(), 0, 0));
        }
        for (int i = 1; i <= STEPS; i++) {
            double y = f.shoulder.y() - drop + (to - top) * i / STEPS;
            line.add(new Spot(f.arm.outer().at(y), y, 0, 0));
        }
        return line;
    }

    private List<Spot> neck() {
        List<Spot> ring = new ArrayList<>();
        double half = f.mm(FigureSize.NECK_BREADTH) / 2;
        double front = f.neckPit.y() + 0.5 * (f.nape.y() - f.neckPit.y());
        double rise = (f.nape.y() - front) / 2;
        for (int i = 0; i <= 24; i++) {
            double round = 2 * Math.PI * i / 24;
            double sine = Math.sin(round);
            // a neck is about as deep as broad and leans forward, so its middle lies behind the plane of the sides
            double z = f.nape.z() + half * (1 + sine);
            ring.add(new Spot(half * Math.cos(round), front + rise - rise * sine, z, sine));
        }
        return ring;
    }

    private List<Spot> neckBase() {
        List<Spot> ring = new ArrayList<>();
        for (int i = 0; i <= 24; i++) {
            double round = 2 * Math.PI * i / 24;
            double sine = Math.sin(round);
            double y = sine > 0
                    ? f.neckSide.y() - sine * (f.neckSide.y() - f.neckPit.y())
                    : f.neckSide.y() - sine * (f.nape.y() - f.neckSide.y());
            double z = sine > 0 ? sine * f.neckPit.z() : -sine * f.nape.z();
            ring.add(new Spot(f.neckSide.x() * Math.cos(round), y, z, sine));
        }
        return ring;
    }

    /** Over the shoulder point and under the armpit; in front it bows further in towards the chest than at the back. */
    private List<Spot> armscye() {
        List<Spot> ring = new ArrayList<>();
        for (int i = 0; i <= 24; i++) {
            double round = 2 * Math.PI * i / 24;
            double sine = Math.sin(round);
            Spot line = f.shoulder.towards(f.armpit, (1 - Math.cos(round)) / 2);
            double inwards = sine > 0 ? 15 * sine : 2 * sine;
            ring.add(new Spot(line.x() - inwards, line.y(), 45 * sine, sine));
        }
        return ring;
    }
}
