package trueseam.drafting;

import java.util.List;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.geometry.Line;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * Solves front and back of a bodice or dress from shoulder to waist. A working object of one draft, on one thread.
 *
 * <pre>{@code
 *    N--___S           With the bust dart closed, the part below it is turned by delta about
 *    |     )           its apex P: W comes to W', and the side seam from W' to the underarm
 *    |    (_U          U is one smooth line, as long as that of the back. delta and the places
 *    |  B .  |         of U and W are corrected until the lines measure right.
 *    |     P<D1
 *    |       \D2
 *    |________W  W'
 * }</pre>
 */
final class UpperDraft {

    static final String BUST_DART = "bust dart";
    static final String WAIST_DART = "waist dart";

    /** A dart of less than this is not worth sewing; it is left out. */
    static final double LEAST_DART_MM = 3;

    private static final double APEX_SHORT_MM = 19.05; // 3/4 in: common practice 1/2 to 1 in short of the bust point
    private static final double WIDEST_DART_MM = 42; // more than 1 5/8 in pouts at its point
    private static final double WIDEST_TURN_RAD = Math.toRadians(50);
    private static final double FRONT_ARMHOLE_HIGHER_MM = 14; // the front armhole is less deep than the back one
    private static final double LEVEL_BELOW_UNDERARM_MM = 12;
    private static final double CHEST_BELOW_UNDERARM_MM = 30;
    private static final double DART_BELOW_LEVEL_MM = 14;
    private static final double LEAST_SIDE_MM = 60;
    private static final double SLOPE_SPLIT_RAD = Math.toRadians(1.5); // the seam runs a little forward
    private static final double SIDE_SHARE = 0.35; // of the waist shaping; the dart takes the rest
    private static final double SIDE_CURVE_SHARE = 0.25; // an even curve would have a half, and slant at the underarm
    private static final double CLOSED_SIDE_SHARE = 0.2; // of the side shaping of the back
    private static final double BACK_DROOP_SHARE = 0.5;
    private static final double FRONT_DROOP_SHARE = 0.3;

    /** Front and back corner make a straight angle when sewn; the back one is a little more than square. */
    private static final double BACK_NECK_RAD = Math.toRadians(98);

    private static final double BACK_ARMHOLE_RAD = Math.toRadians(95);
    private static final Vec UP = new Vec(0, 1);

    private final UpperPlan plan;
    final ShoulderLine backShoulder;
    final ShoulderLine frontShoulder;
    final Path backNeck;
    final Path frontNeck;
    final Point bladePoint;
    final Point bustPoint;

    private static final double ROUGH_MM = 0.1;

    private boolean bustDart;
    private double deeperMm;
    private double backDartMm;
    private double frontDartMm;

    private Point backWaist;
    private Point frontWaist;
    private Point backUnderarm;
    private Point frontUnderarm;
    private double turnRad;
    private Point apex;

    // What the last round laid out; the unknowns above are already corrected by its misses.
    private Segment backSide;
    private Segment frontClosed;
    private Point drawnApex;
    private Motion drawnOpen;
    private WaistLine backWaistLine;
    private WaistLine frontWaistLine;
    private double frontLevel;
    private double backLevel;
    private double levelMm; // from underarm down the sewn side seam to the bust level
    private double dartMm; // from underarm down the sewn side seam to the bust dart

    /**
     * Lays out what is known at once, the armhole as deep as the scye depth says.
     *
     * @param plan what it shall measure
     */
    UpperDraft(UpperPlan plan) {
        this(plan, true);
    }

    /**
     * The same, with or without a dart in the back shoulder.
     *
     * @param bladeDart whether the back shoulder has a dart; without one its seam runs straight on into another line
     */
    UpperDraft(UpperPlan plan, boolean bladeDart) {
        this.plan = plan;
        double neckRise = 0.31 * plan.neckWidth();
        Point backNeckPoint = new Point(plan.neckWidth(), plan.backLength() + neckRise);
        double underarmY = plan.backLength() - plan.scyeDepth();
        double tipY = backNeckPoint.y() - plan.backShoulder() * Math.sin(plan.slopeRad());
        bladePoint = new Point(0.52 * plan.backAcross(), underarmY + 0.52 * (tipY - underarmY));
        double backSlope = plan.slopeRad() - SLOPE_SPLIT_RAD;
        backShoulder = bladeDart
                ? ShoulderLine.darted(backNeckPoint, backSlope, plan.backShoulder(), bladePoint)
                : ShoulderLine.plain(backNeckPoint, backSlope, plan.backShoulder());
        backNeck = NeckLine.to(backShoulder, BACK_NECK_RAD, plan.backLength());

        double frontNeckX = plan.neckWidth() - 2;
        double bustY = plan.overBust() - plan.bustPointHeight();
        double aside = plan.bustPointX() - frontNeckX;
        if (plan.bustDart() && Math.abs(aside) >= plan.bustPointHeight()) {
            throw new DraftException(
                    plan.shell(),
                    Measure.BUST_POINT_HEIGHT,
                    plan.bustPointHeight(),
                    Math.abs(aside),
                    "the bust point lies farther to the side of the neck point than it is away from it; measure its height"
                            + " and the width again");
        }
        double overBustY = bustY + Math.sqrt(square(plan.bustPointHeight()) - square(aside));
        double frontNeckY = plan.bustDart() ? overBustY : backNeckPoint.y() - FRONT_ARMHOLE_HIGHER_MM;
        bustPoint = new Point(plan.bustPointX(), bustY);
        frontShoulder = ShoulderLine.plain(
                new Point(frontNeckX, frontNeckY), plan.slopeRad() + SLOPE_SPLIT_RAD, plan.shoulder());
        frontNeck =
                NeckLine.ofLength(frontShoulder, Math.PI - BACK_NECK_RAD, plan.neckHalf() - backNeck.length(), plan);

        if (underarmY < LEAST_SIDE_MM) {
            throw new DraftException(
                    plan.shell(),
                    Measure.BACK_WAIST_LENGTH,
                    plan.backLength(),
                    plan.backLength() - underarmY + LEAST_SIDE_MM,
                    "the back is too short for so deep an armhole; measure both again");
        }
        backUnderarm = new Point(plan.backBust() + 5, underarmY);
        frontUnderarm =
                new Point(plan.frontBust() + 5, frontNeckY - (backNeckPoint.y() - underarmY) + FRONT_ARMHOLE_HIGHER_MM);
        bustDart = plan.bustDart();
        begin();
    }

    UpperPlan plan() {
        return plan;
    }

    private static double square(double x) {
        return x * x;
    }

    /** First shares of the shaping, and a first place for everything that is solved. */
    private void begin() {
        if (plan.dress()) {
            beginDress();
        } else {
            backDartMm = dart(plan.backBust() - plan.backWaist(), SIDE_SHARE);
        }
        backWaist = new Point(plan.backWaist() + backDartMm, 0);
        frontWaist = new Point(plan.frontWaist() + frontDartMm, 0);
        levels();
        apex = bustPoint.plus(new Vec(APEX_SHORT_MM, -6));
        if (!bustDart) {
            turnRad = 0;
            if (!plan.dress()) {
                frontDartMm = dart(plan.frontBust() - plan.frontWaist(), SIDE_SHARE);
            }
        } else if (plan.dress()) {
            turnRad = turn(frontUnderarm.y() - backUnderarm.y());
        } else {
            // With the bust dart closed the side hangs upright or nearly so; the waist dart takes what is left.
            Vec back = backWaist.minus(backUnderarm);
            Point closed = frontUnderarm.plus(new Vec(Math.max(CLOSED_SIDE_SHARE * back.x(), back.x()), back.y()));
            turnRad = turn(closed.y() + 5);
            frontDartMm = held(Motion.pivot(apex, -turnRad).apply(closed).x() - plan.frontWaist());
        }
        frontWaist = new Point(plan.frontWaist() + frontDartMm, 0);
    }

    private void beginDress() {
        double shaping = Math.min(plan.backBust() - plan.backWaist(), plan.backHip() - plan.backWaist());
        backDartMm = dart(shaping, 0.5);
        frontDartMm = backDartMm;
    }

    /** What a dart takes of the shaping of one piece, when the side takes at least its share. */
    private static double dart(double shapingMm, double sideShare) {
        return held((1 - sideShare) * shapingMm);
    }

    private static double held(double intakeMm) {
        return intakeMm < LEAST_DART_MM ? 0 : Math.min(WIDEST_DART_MM, intakeMm);
    }

    /** The turn that takes up a surplus of length at the side. */
    private double turn(double surplusMm) {
        return Math.max(0, surplusMm) / Math.max(60, plan.frontBust() - bustPoint.x() - APEX_SHORT_MM);
    }

    private void levels() {
        frontLevel = plan.bustDart()
                ? Math.min(bustPoint.y(), frontUnderarm.y() - LEVEL_BELOW_UNDERARM_MM)
                : frontUnderarm.y() - CHEST_BELOW_UNDERARM_MM;
    }

    /**
     * Solves as far as decisions need it: whether there is a bust dart, how long the armhole is.
     *
     * @param deeper how much deeper than the scye depth the armhole shall be, mm
     */
    void roughly(double deeper) {
        Vec down = UP.times(deeperMm - deeper);
        backUnderarm = backUnderarm.plus(down);
        frontUnderarm = frontUnderarm.plus(down);
        deeperMm = deeper;
        if (bustDart) {
            settle(ROUGH_MM);
            if (turnRad <= 0 || mouthMm() < LEAST_DART_MM) {
                bustDart = false;
                begin();
            }
        }
        if (!bustDart) {
            settle(ROUGH_MM);
        }
    }

    /** Solves to the last, with the darts and the depth decided before. */
    void exactly() {
        settle(Settling.SETTLED_MM);
        if (turnRad > WIDEST_TURN_RAD) {
            throw new DraftException(
                    plan.shell(),
                    Measure.FRONT_WAIST_LENGTH_OVER_BUST,
                    plan.overBust(),
                    plan.overBust() - mouthMm() / 2,
                    "the front is so much longer than the back that one bust dart cannot take it up; measure both lengths"
                            + " again");
        }
    }

    private void settle(double toleranceMm) {
        Measure blamed = plan.bustDart() ? Measure.FRONT_WAIST_LENGTH_OVER_BUST : Measure.CHEST_GIRTH;
        Settling.within(toleranceMm, this::round, plan.shell(), blamed);
    }

    private double mouthMm() {
        return 2 * Math.sin(turnRad / 2) * apex.distanceTo(sewnSidePoint(dartMm));
    }

    private double round(double share) {
        double miss = roundOfSides(share);
        // A dress is measured straight across its waist, where its side point was put once for all.
        return plan.dress() ? miss : Math.max(miss, roundOfWaist(share));
    }

    private double roundOfSides(double share) {
        levels();
        backSide = side(backWaist, UP, backUnderarm);
        drawnApex = apex;
        drawnOpen = Motion.pivot(apex, -turnRad);
        Motion close = Motion.pivot(apex, turnRad);
        Point closed = close.apply(frontWaist);
        frontClosed = side(closed, close.apply(UP), frontUnderarm);
        double backMm = backSide.length();
        double frontMm = frontClosed.length();
        double miss = Math.abs(frontMm - backMm);
        if (bustDart) {
            Vec swing = closed.minus(apex).left();
            double gain = swing.dot(closed.minus(frontUnderarm).unit());
            turnRad -= share * (frontMm - backMm) / Math.min(-20, gain);
        } else {
            frontUnderarm = frontUnderarm.plus(UP.times(share * (backMm - frontMm)));
        }
        List<Double> at = frontClosed.crossings(new Point(0, frontLevel), new Vec(1, 0));
        double t = at.isEmpty() ? 1 : at.get(at.size() - 1);
        double frontMiss = plan.frontBust() - frontClosed.at(t).x();
        frontUnderarm = frontUnderarm.plus(new Vec(share * frontMiss, 0));
        levelMm = frontMm - frontClosed.lengthTo(t);
        Point level = backSide.at(backSide.parameterAt(Math.max(0, backMm - levelMm)));
        double backMiss = plan.backBust() - level.x();
        backUnderarm = backUnderarm.plus(new Vec(share * backMiss, 0));
        backLevel = level.y();
        dartMm = Math.min(levelMm + DART_BELOW_LEVEL_MM, (levelMm + frontMm) / 2);
        if (bustDart) {
            Point upper = sewnSidePoint(dartMm);
            Point lower = Motion.pivot(apex, -turnRad).apply(upper);
            Point aimed = bustPoint.plus(
                    upper.towards(lower, 0.5).minus(bustPoint).unit().times(APEX_SHORT_MM));
            miss = Math.max(miss, aimed.distanceTo(apex));
            apex = apex.towards(aimed, share);
        }
        return Math.max(miss, Math.max(Math.abs(frontMiss), Math.abs(backMiss)));
    }

    private Point sewnSidePoint(double belowUnderarmMm) {
        double mm = frontClosed.length();
        return frontClosed.at(frontClosed.parameterAt(Math.max(0, mm - belowUnderarmMm)));
    }

    /** The side seam, its bust dart closed: straight in a bodice, upright at the waist in a dress. */
    private Segment side(Point waist, Vec up, Point underarm) {
        if (!plan.dress()) {
            return new Line(waist, underarm);
        }
        Vec chord = underarm.minus(waist);
        return Joining.smooth(waist, up, underarm, chord.turned(SIDE_CURVE_SHARE * up.angleTo(chord)));
    }

    private double roundOfWaist(double share) {
        Vec backUp = backSide.tangent(0);
        backWaistLine = new WaistLine("waist", Point.ORIGIN);
        if (backDartMm > 0) {
            backWaistLine.dart(WAIST_DART, backDartApex(), backDartMm);
        }
        double backY = backWaistLine.sideHeight(backWaist.x(), backUp.right(), BACK_DROOP_SHARE);
        backWaistLine.side(backWaist, backUp.right());
        double backMiss = plan.backWaist() - backWaistLine.sewnMm();

        Vec frontUp = drawnOpen.apply(frontClosed.tangent(0));
        frontWaistLine = new WaistLine("waist", Point.ORIGIN);
        if (frontDartMm > 0) {
            frontWaistLine.dart(WAIST_DART, frontDartApex(), frontDartMm);
        }
        double frontY = frontWaistLine.sideHeight(frontWaist.x(), frontUp.right(), FRONT_DROOP_SHARE);
        frontWaistLine.side(frontWaist, frontUp.right());
        double frontMiss = plan.frontWaist() - frontWaistLine.sewnMm();

        double heightMiss = Math.max(Math.abs(backY - backWaist.y()), Math.abs(frontY - frontWaist.y()));
        backWaist = new Point(backWaist.x() + share * backMiss, backWaist.y() + share * (backY - backWaist.y()));
        frontWaist = new Point(frontWaist.x() + share * frontMiss, frontWaist.y() + share * (frontY - frontWaist.y()));
        return Math.max(heightMiss, Math.max(Math.abs(backMiss), Math.abs(frontMiss)));
    }

    /** Below the bust level, so that it takes nothing of the width there. */
    Point backDartApex() {
        return new Point(0.5 * backWaist.x(), Math.min(backLevel, backUnderarm.y() - 25) - 6);
    }

    Point frontDartApex() {
        double y = plan.bustDart() ? Math.min(bustPoint.y(), frontLevel + 6) - APEX_SHORT_MM : frontLevel - 25;
        return new Point(plan.bustDart() ? bustPoint.x() : 0.5 * frontWaist.x(), y);
    }

    double frontDartMm() {
        return frontDartMm;
    }

    double backDartMm() {
        return backDartMm;
    }

    double frontBustLevel() {
        return frontLevel;
    }

    double backBustLevel() {
        return backLevel;
    }

    Path backArmhole() {
        return Armhole.of(backSide, plan.backAcross(), backShoulder, BACK_ARMHOLE_RAD);
    }

    Path frontArmhole() {
        return Armhole.of(frontClosed, plan.frontAcross(), frontShoulder, Math.PI - BACK_ARMHOLE_RAD);
    }

    Point backUnderarm() {
        return backSide.end();
    }

    Point frontUnderarm() {
        return frontClosed.end();
    }

    Segment backSide() {
        return backSide;
    }

    /** The front side seam from waist to underarm as sewn: with the bust dart closed, the part below it turned up. */
    Segment frontClosedSide() {
        return frontClosed;
    }

    WaistLine backWaistLine() {
        return backWaistLine;
    }

    WaistLine frontWaistLine() {
        return frontWaistLine;
    }

    Point backWaist() {
        return backSide.start();
    }

    /** The front's waist point at the side, its bust dart open. */
    Point frontWaist() {
        return drawnOpen.apply(frontClosed.start());
    }

    /**
     * The front side seam from waist to underarm, over the cap of the bust dart, which is folded down.
     *
     * @return the path, and where on it the dart's legs are
     */
    OpenSide frontSide() {
        if (!bustDart) {
            return new OpenSide(Path.of(frontClosed), List.of());
        }
        double mm = frontClosed.length();
        double t = frontClosed.parameterAt(mm - dartMm);
        Segment below = frontClosed.between(0, t).moved(drawnOpen);
        Segment above = frontClosed.between(t, 1);
        Point lower = below.end();
        double half = -drawnOpen.turnRad() / 2;
        Point cap = DartCap.point(drawnApex, lower, below.tangent(1).reversed(), half);
        Line first = new Line(lower, cap);
        Line second = new Line(cap, above.start());
        double from = below.length();
        double to = from + first.length() + second.length();
        return new OpenSide(
                Path.of(below, first, second, above),
                List.of(new Dart.EdgeDart(BUST_DART, "side", from, to, drawnApex)));
    }

    /**
     * A side seam from waist to underarm.
     *
     * @param path over the cap of its dart
     * @param darts the bust dart, or none
     */
    record OpenSide(Path path, List<Dart.EdgeDart> darts) {

        /** The same where so much of the seam lies before it. */
        OpenSide after(double mm) {
            return new OpenSide(
                    path,
                    darts.stream()
                            .map(d -> new Dart.EdgeDart(d.name(), d.edge(), d.fromMm() + mm, d.toMm() + mm, d.apex()))
                            .toList());
        }
    }
}
