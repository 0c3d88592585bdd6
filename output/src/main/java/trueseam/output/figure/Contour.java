package trueseam.output.figure;

import static trueseam.output.figure.FigureSize.*;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.body.Population;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;

/** The lines of the figure itself, as seen from one side: its outline and the few lines inside it. */
final class Contour {
    private final Form form;
    private final FigureView view;

    Contour(Form form, FigureView view) {
        this.form = form;
        this.view = view;
    }

    /** The outline of neck, trunk, arms and legs: open at the top of the neck, from its right side round to its left. */
    Path body() {
        List<Segment> left = new ArrayList<>(neckAndShoulder());
        left.addAll(form.arm.outer().downwards());
        left.addAll(hand());
        left.addAll(form.arm.inner().upwards());
        if (!left.get(left.size() - 1).end().isNear(at(form.armpit), Path.CHAIN_MM)) {
            left.add(new Line(left.get(left.size() - 1).end(), at(form.armpit)));
        }
        left.addAll(form.trunk.outer().downwards());
        left.addAll(foot());
        left.addAll(form.leg.inner().upwards());
        List<Segment> all = new ArrayList<>(mirrored(left));
        all.addAll(backwards(left));
        return Path.of(all);
    }

    private static List<Segment> backwards(List<Segment> line) {
        List<Segment> back = new ArrayList<>();
        line.forEach(stroke -> back.add(0, stroke.reversed()));
        return back;
    }

    private List<Segment> neckAndShoulder() {
        double neck = form.mm(NECK_BREADTH) / 2;
        Point top = new Point(neck, neckTop());
        Point side = at(form.neckSide);
        Point shoulder = at(form.shoulder);
        Vec slope = shoulder.minus(side).unit();
        double fall = top.y() - side.y();
        // the muscle of the neck runs out on the shoulder a little beyond the neck side point
        Point ridge = side.plus(slope.times(6));
        Point out = side.plus(slope.times(-0.5 * fall)).plus(new Vec(0, 0.16 * fall));
        return List.of(
                new Cubic(top, new Point(neck - 2, top.y() - 0.55 * (top.y() - side.y())), out, ridge),
                new Cubic(
                        ridge,
                        ridge.plus(ridge.minus(out).unit().times(0.2 * ridge.distanceTo(shoulder))),
                        shoulder.plus(slope.times(-40)).plus(new Vec(0, 3)),
                        shoulder),
                shoulderToArm());
    }

    /** Over the round of the shoulder, from the shoulder point to where the arm begins. */
    Cubic shoulderToArm() {
        Point shoulder = at(form.shoulder);
        Vec slope = shoulder.minus(at(form.neckSide)).unit();
        Segment arm = form.arm.outer().downwards().get(0);
        double drop = shoulder.y() - arm.start().y();
        return new Cubic(
                shoulder,
                shoulder.plus(slope.times(0.44 * drop)).plus(new Vec(0, -0.06 * drop)),
                arm.start().plus(arm.tangent(0).times(-0.62 * drop)),
                arm.start());
    }

    /** Where the neck comes out from under the head, seen from this side. */
    private double neckTop() {
        Path head = head();
        double step = 0.01 * headHeight();
        double y = form.mm(CHIN) + 0.04 * headHeight();
        while (y < form.mm(STATURE) - 0.4 * headHeight() && breadthOf(head, y) < form.mm(NECK_BREADTH) + 2) {
            y += step;
        }
        return y;
    }

    private static double breadthOf(Path outline, double y) {
        var across = outline.crossings(new Point(0, y), new Vec(1, 0)).stream()
                .mapToDouble(place -> place.point().x())
                .summaryStatistics();
        return across.getCount() == 0 ? 0 : across.getMax() - across.getMin();
    }

    private double headHeight() {
        return form.mm(STATURE) - form.mm(CHIN);
    }

    /** A hand with the thumb forward, as it hangs. */
    private List<Segment> hand() {
        Point wristOut = new Point(form.arm.outer().at(form.wrist.y()), form.wrist.y());
        Point wristIn = new Point(form.arm.inner().at(form.wrist.y()), form.wrist.y());
        double half = form.mm(WRIST_BREADTH) / 2;
        return Smooth.through(List.of(
                wristOut,
                ofHand(0.2, 1.06 * half),
                ofHand(0.48, 1.04 * half),
                ofHand(0.78, 0.86 * half),
                ofHand(0.95, 0.5 * half),
                ofHand(1, 0.06 * half),
                ofHand(0.95, -0.34 * half),
                ofHand(0.8, -0.56 * half),
                ofHand(0.64, -0.74 * half),
                ofHand(0.585, -0.98 * half),
                ofHand(0.56, -1.24 * half),
                ofHand(0.47, -1.4 * half),
                ofHand(0.34, -1.34 * half),
                ofHand(0.16, -1.12 * half),
                wristIn));
    }

    private Point ofHand(double share, double outwardMm) {
        Spot on = form.wrist.towards(form.hand, share);
        Vec down = at(form.hand).minus(at(form.wrist)).unit();
        return new Point(on.x() - down.y() * outwardMm, on.y() + down.x() * outwardMm);
    }

    private List<Segment> foot() {
        double y = form.mm(ANKLE);
        double out = form.leg.outer().at(y);
        double in = form.leg.inner().at(y);
        double foot = form.mm(FOOT_BREADTH);
        double x = form.ankleX;
        List<Point> line = view == FigureView.FRONT
                ? List.of(
                        new Point(out, y),
                        new Point(out + 0.06 * foot, 0.5 * y),
                        new Point(x + 0.62 * foot, -4),
                        new Point(x + 0.62 * foot, -20),
                        new Point(x + 0.34 * foot, -31),
                        new Point(x - 0.2 * foot, -30),
                        new Point(x - 0.38 * foot, -20),
                        new Point(x - 0.36 * foot, 0.1 * y),
                        new Point(in - 0.02 * foot, 0.6 * y),
                        new Point(in, y))
                : List.of(
                        new Point(out, y),
                        new Point(out + 0.03 * foot, 0.5 * y),
                        new Point(x + 0.56 * foot, 0.16 * y),
                        new Point(x + 0.5 * foot, 2),
                        new Point(x + 0.2 * foot, -3),
                        new Point(x - 0.2 * foot, -4),
                        new Point(x - 0.36 * foot, 0.12 * y),
                        new Point(in, 0.6 * y),
                        new Point(in, y));
        return Smooth.through(line);
    }

    /** The head: an egg, broadest above its middle; from behind it ends at the hair line, in front at the chin. */
    Path head() {
        double half = form.mm(HEAD_BREADTH) / 2;
        double top = form.mm(STATURE);
        double high = headHeight();
        double jaw = view == FigureView.FRONT ? 0.62 : 0.66;
        double chin = form.mm(CHIN) + (view == FigureView.FRONT ? 0 : 0.1 * high);
        double widest = chin + 0.6 * high;
        double k = 0.5523;
        List<Segment> left = List.of(
                new Cubic(
                        new Point(0, top),
                        new Point(half * 0.6, top),
                        new Point(half, widest + k * (top - widest)),
                        new Point(half, widest)),
                new Cubic(
                        new Point(half, widest),
                        new Point(half, widest - (view == FigureView.FRONT ? 0.26 : 0.2) * high),
                        new Point(half * (jaw + 0.22), chin + 0.2 * high),
                        new Point(half * jaw, chin + 0.1 * high)),
                new Cubic(
                        new Point(half * jaw, chin + 0.1 * high),
                        new Point(half * (jaw - 0.16), chin + 0.026 * high),
                        new Point(half * 0.26, chin),
                        new Point(0, chin)));
        List<Segment> all = new ArrayList<>(left);
        all.addAll(backwards(mirrored(left)));
        return Path.of(all);
    }

    /** The few lines inside the outline, lightly drawn, on both sides where they have two. */
    List<Path> inside() {
        List<Path> lines = new ArrayList<>();
        if (view == FigureView.FRONT) {
            crease(lines, 30);
            both(
                    lines,
                    List.of(offset(form.neckPit, 14, -2), offset(form.neckPit, 60, 9), offset(form.neckPit, 118, 8)));
            breasts(lines);
            double crotch = form.mm(CROTCH);
            both(
                    lines,
                    List.of(
                            new Point(4, crotch + 4),
                            new Point(0.42 * form.trunk.outer().at(crotch), crotch + 44),
                            new Point(0.72 * form.trunk.outer().at(crotch), crotch + 92)));
            knee(lines, 8);
        } else {
            crease(lines, 12);
            double blade = form.mm(ARMPIT);
            both(
                    lines,
                    List.of(
                            new Point(50, blade + 34),
                            new Point(53, blade + 2),
                            new Point(66, blade - 24),
                            new Point(92, blade - 36)));
            lines.add(Path.of(new Line(new Point(0, form.nape.y() - 46), new Point(0, form.mm(WAIST) - 20))));
            lines.add(Path.of(new Line(new Point(0, form.mm(HIP) + 52), new Point(0, form.mm(CROTCH) + 2))));
            double fold = form.mm(CROTCH) - 8;
            double out = form.leg.outer().at(fold);
            both(
                    lines,
                    List.of(
                            new Point(8, fold + 2),
                            new Point(0.2 * out, fold - 10),
                            new Point(0.42 * out, fold - 13),
                            new Point(0.66 * out, fold - 6)));
            knee(lines, -8);
        }
        return lines;
    }

    /** The fold under each breast; on a man's figure only the flat lower edge of the chest. */
    private void breasts(List<Path> lines) {
        double bust = form.mm(BUST);
        double point = form.mm(BUST_POINTS) / 2;
        boolean man = form.proportions().people() == Population.MEN;
        double fold = man ? bust - 30 : form.mm(UNDER_BUST) + 0.25 * (bust - form.mm(UNDER_BUST)) - 12;
        double high = man ? 0.45 : 1;
        double out = Math.min(38, form.trunk.outer().at(fold + 30) - 7 - point);
        both(
                lines,
                List.of(
                        new Point(point - (man ? 70 : 44), fold + (man ? 6 : 30)),
                        new Point(point - 30, fold + (man ? 1 : 9)),
                        new Point(point - 4, fold),
                        new Point(point + 0.64 * out, fold + 9 * high),
                        new Point(point + out, fold + 30 * high)));
    }

    /** Where the arm parts from the body, up from the armpit. */
    private void crease(List<Path> lines, double inwards) {
        Point pit = at(form.armpit);
        Point up = at(form.shoulder);
        double rise = 0.6 * (up.y() - pit.y());
        both(
                lines,
                List.of(
                        pit,
                        new Point(pit.x() - 0.2 * inwards + 4, pit.y() + 0.4 * rise),
                        new Point(pit.x() - 0.4 * inwards + 12, pit.y() + rise)));
    }

    private void knee(List<Path> lines, double sag) {
        double y = form.mm(KNEE);
        double middle = (form.leg.outer().at(y) + form.leg.inner().at(y)) / 2;
        double half = 0.5 * (form.leg.outer().at(y) - form.leg.inner().at(y)) / 2;
        both(
                lines,
                List.of(
                        new Point(middle - half, y - 12),
                        new Point(middle, y - 12 - sag),
                        new Point(middle + half, y - 12)));
    }

    private void both(List<Path> lines, List<Point> points) {
        List<Segment> left = Smooth.through(points);
        lines.add(Path.of(left));
        lines.add(Path.of(mirrored(left)));
    }

    private static Point at(Spot spot) {
        return new Point(spot.x(), spot.y());
    }

    private Point offset(Spot spot, double x, double y) {
        Point seen = new Point(spot.x(), spot.y() - FigureView.FROM_ABOVE * spot.z());
        return seen.plus(new Vec(x, y));
    }

    private static List<Segment> mirrored(List<? extends Segment> line) {
        List<Segment> other = new ArrayList<>();
        for (Segment stroke : line) {
            if (stroke instanceof Cubic cubic) {
                other.add(new Cubic(
                        mirrored(cubic.start()),
                        mirrored(cubic.handle1()),
                        mirrored(cubic.handle2()),
                        mirrored(cubic.end())));
            } else {
                other.add(new Line(mirrored(stroke.start()), mirrored(stroke.end())));
            }
        }
        return other;
    }

    private static Point mirrored(Point point) {
        return new Point(-point.x(), point.y());
    }
}
