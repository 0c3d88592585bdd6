package trueseam.output.figure;

import static trueseam.output.figure.FigureSize.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;

/**
 * The same person sitting upright on a hard flat seat, from her right: for what is measured so.
 *
 * <p>Trunk and head as the standing figure has them. Thigh and lower leg go with the stature as the medians of the survey do (women:
 * buttockkneelength 589, buttockpopliteallength 483, poplitealheight 387, kneeheightsitting 510, thighclearance 167, stature 1626 mm).
 */
final class Sitting {
    private final Form form;
    private final double tall;
    private final double seat;

    Sitting(Form form) {
        this.form = form;
        tall = form.mm(STATURE) / 1626;
        seat = 387 * tall;
    }

    /** What the drawing is centred about: half way between the rump and the toes. */
    double middle() {
        return -0.6 * form.mm(SEAT_DEPTH) + 356 * tall;
    }

    /** Where a height of the trunk lies when she sits on her crotch's level. */
    private double up(FigureSize level) {
        return form.mm(level) - form.mm(CROTCH) + seat;
    }

    /** The outline, closed, from the seat round the legs, up the front, over the head and down the back. */
    Path body() {
        double chest = form.mm(CHEST_DEPTH);
        double waist = form.mm(WAIST_DEPTH);
        double rump = -0.6 * form.mm(SEAT_DEPTH);
        double head = form.mm(HEAD_BREADTH) * 1.26 / 2;
        double crown = up(STATURE);
        double high = form.mm(STATURE) - form.mm(CHIN);
        List<Point> line = List.of(
                new Point(0.5 * rump, seat),
                new Point(rump + 330 * tall, seat),
                new Point(rump + 470 * tall, seat - 8),
                new Point(rump + 486 * tall, seat - 60 * tall),
                new Point(rump + 462 * tall, 0.68 * seat),
                new Point(rump + 490 * tall, 0.2 * seat),
                new Point(rump + 478 * tall, 24),
                new Point(rump + 490 * tall, 0),
                new Point(rump + 590 * tall, 0),
                new Point(rump + 690 * tall, 0),
                new Point(rump + 712 * tall, 16),
                new Point(rump + 660 * tall, 44 * tall),
                new Point(rump + 574 * tall, 96 * tall),
                new Point(rump + 574 * tall, 0.66 * seat),
                new Point(rump + 590 * tall, seat + 20 * tall),
                new Point(rump + 578 * tall, 488 * tall),
                new Point(rump + 520 * tall, 510 * tall),
                new Point(rump + 380 * tall, seat + 150 * tall),
                new Point(0.5 * waist + 14, seat + 168 * tall),
                new Point(0.56 * waist, up(WAIST) - 60 * tall),
                new Point(0.5 * waist, up(WAIST)),
                new Point(0.46 * chest, up(UNDER_BUST)),
                new Point(0.57 * chest, up(BUST)),
                new Point(0.4 * chest, up(ARMPIT) + 6),
                new Point(0.17 * chest, up(NECK_PIT)),
                new Point(0.16 * chest, up(CHIN) - 22),
                new Point(0.62 * head, up(CHIN) - 2),
                new Point(0.86 * head, up(CHIN) + 22),
                new Point(0.98 * head, crown - 0.5 * high),
                new Point(0.8 * head, crown - 0.2 * high),
                new Point(0, crown),
                new Point(-0.75 * head, crown - 0.16 * high),
                new Point(-head, crown - 0.42 * high),
                new Point(-0.72 * head, crown - 0.76 * high),
                new Point(-0.24 * chest, up(NAPE) + 12),
                new Point(-0.38 * chest, up(NAPE) - 70 * tall),
                new Point(-0.47 * chest, up(ARMPIT)),
                new Point(-0.42 * waist, up(WAIST)),
                new Point(0.86 * rump, seat + 150 * tall),
                new Point(rump, seat + 70 * tall),
                new Point(0.8 * rump, seat + 8),
                new Point(0.5 * rump, seat));
        return Path.of(Smooth.through(line));
    }

    /** The arm, held forward out of the way; open at the shoulder. */
    Path arm() {
        return Path.of(Smooth.through(List.of(
                new Point(36, up(SHOULDER_POINT) - 44 * tall),
                new Point(84 * tall, up(BUST) - 34 * tall),
                new Point(170 * tall, up(WAIST) + 58 * tall),
                new Point(300 * tall, seat + 232 * tall),
                new Point(420 * tall, seat + 190 * tall),
                new Point(466 * tall, seat + 162 * tall),
                new Point(424 * tall, seat + 144 * tall),
                new Point(290 * tall, seat + 172 * tall),
                new Point(142 * tall, up(WAIST) - 26 * tall),
                new Point(22 * tall, up(BUST) - 66 * tall),
                new Point(-34, up(SHOULDER_POINT) - 70 * tall))));
    }

    /** Half of what the drawing needs in width, mm. */
    double halfWidth() {
        return 430 * tall;
    }

    /** A hard flat seat. */
    Path chair() {
        double from = -0.6 * form.mm(SEAT_DEPTH) - 36;
        double to = from + 440 * tall;
        List<Segment> lines = new ArrayList<>();
        lines.add(new Line(new Point(from + 24, 0), new Point(from + 24, seat - 14)));
        lines.add(new Line(new Point(from + 24, seat - 14), new Point(to - 60, seat - 14)));
        lines.add(new Line(new Point(to - 60, seat - 14), new Point(to - 60, 0)));
        return Path.of(lines);
    }

    /** From the waist over the hip to the seat. */
    DrawnTape tape() {
        Point waist = new Point(0, up(WAIST));
        Point end = new Point(-0.06 * form.mm(SEAT_DEPTH), seat);
        Map<BodyPoint, List<Point>> marks = new TreeMap<>();
        marks.put(BodyPoint.WAIST, List.of(waist));
        marks.put(BodyPoint.SEAT, List.of(end));
        List<Point> level = List.of(
                new Point(-0.42 * form.mm(WAIST_DEPTH), waist.y()), new Point(0.5 * form.mm(WAIST_DEPTH), waist.y()));
        List<Point> tape = List.of(waist, new Point(-0.02 * form.mm(SEAT_DEPTH), 0.5 * (waist.y() + seat)), end);
        return new DrawnTape(List.of(tape), List.of(), List.of(level), marks);
    }
}
