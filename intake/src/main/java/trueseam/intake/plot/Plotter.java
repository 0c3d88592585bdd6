package trueseam.intake.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import trueseam.garment.finding.Finding;
import trueseam.geometry.Cubic;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.convert.Curves;

/** Carries out the instructions of a plot as a plotter would, and keeps the lines instead of drawing them. One plot, one thread. */
final class Plotter {

    private static final double USUAL_LETTERS_MM = 2.7; // HP-GL, SI: 0.27 cm

    /** Speeds, forces, letters and fillings. */
    private static final Set<String> DRAWS_NOTHING = Set.of(
            ("VS VN AS FS AP BP PS NP PC WU QL CO MC TR SM CS SS SA SR DI DR DT CP LO LA UL FT PT AC RF CV OE OS OP OH OI ES SL SD AD TD CA SU "
                            + "TL XT YT IM CC")
                    .split(" "));

    /** Two scales that differ by less are one, rounded to plotter units. */
    private static final double SAME_SCALE = 1e-3;

    private final String file;
    private final Map<String, Integer> leftOut = new TreeMap<>();
    private final Ink ink;
    private Point at = Point.ORIGIN;
    private boolean down;
    private boolean relative;
    private double lettersMm = USUAL_LETTERS_MM;
    private Scaling scaling = Scaling.PLAIN;
    private Optional<List<Double>> corners = Optional.empty(); // IP, in plotter units
    private boolean polygons;

    Plotter(String file, Ink ink) {
        this.file = file;
        this.ink = ink;
    }

    void carryOut(PlotText text) {
        while (text.hasNext()) {
            Instruction i = text.next();
            try {
                carryOut(i, text);
            } catch (GeometryException offThePaper) {
                throw text.refused(i.name() + " leads off any paper. " + offThePaper.getMessage());
            }
        }
        ink.finish();
    }

    List<Finding> findings() {
        List<Finding> all = new ArrayList<>();
        leftOut.forEach((name, times) -> all.add(Finding.warning(
                file,
                "instruction " + name + " is not known here and was left out, " + times
                        + (times == 1 ? " time." : " times.") + " Look whether lines are missing.")));
        if (polygons) {
            all.add(Finding.note(file, "polygons (PM) are shown by their edges, filled or not."));
        }
        return all;
    }

    private void carryOut(Instruction i, PlotText text) {
        switch (i.name()) {
            case "IN", "DF" -> reset(i.name().equals("IN"));
            case "SP" -> ink.take((int) Math.max(0, Math.min(i.number(0, 0), 255)));
            case "LT" -> ink.lineType(i.numbers().isEmpty() ? 0 : (int) Math.abs(i.number(0, 0)));
            case "PW" -> ink.width(i.number(0, Ink.USUAL_WIDTH_MM));
            case "PU" -> {
                ink.finish();
                down = false;
                moves(i, text);
            }
            case "PD" -> {
                down = true;
                moves(i, text);
            }
            case "PA", "PR" -> {
                relative = i.name().equals("PR");
                moves(i, text);
            }
            case "AA", "AR" -> arc(i, text);
            case "CI" -> circle(i, text);
            case "EA", "ER" -> rectangle(i, text);
            case "BZ", "BR" -> curves(i, text);
            case "LB" -> ink.write(i.words().strip(), at, lettersMm);
            case "SI" -> lettersMm = Math.max(0.1, Math.min(Math.abs(i.number(1, 0.27)) * 10, 1000));
            case "IP" -> corners(i, text);
            case "SC" -> scale(i, text);
            case "PM", "EP", "FP" -> {
                ink.finish();
                polygons = true;
            }
            case "RO" -> {
                if (i.number(0, 0) != 0) {
                    throw text.refused("the plot is turned on the paper (RO); write it without turning.");
                }
            }
            case "PG" -> ink.finish();
            default -> {
                if (!DRAWS_NOTHING.contains(i.name())) {
                    leftOut(i.name());
                }
            }
        }
    }

    private void reset(boolean whole) {
        ink.finish();
        relative = false;
        ink.lineType(0);
        scaling = Scaling.PLAIN;
        lettersMm = USUAL_LETTERS_MM;
        if (whole) {
            down = false;
            at = Point.ORIGIN;
            ink.width(Ink.USUAL_WIDTH_MM);
            corners = Optional.empty();
        }
    }

    private void leftOut(String name) {
        if (leftOut.size() < 30 || leftOut.containsKey(name)) {
            leftOut.merge(name, 1, Integer::sum);
        }
    }

    private Point point(double x, double y) {
        return relative ? at.plus(scaling.by(x, y)) : scaling.point(x, y);
    }

    private void moves(Instruction i, PlotText text) {
        List<Double> n = i.numbers();
        if (n.size() % 2 != 0) {
            throw text.refused(i.name() + " has " + n.size() + " numbers; pairs of x and y were expected.");
        }
        for (int k = 0; k < n.size(); k += 2) {
            Point to = point(n.get(k), n.get(k + 1));
            if (down) {
                if (!to.equals(at)) {
                    ink.draw(new Line(at, to));
                }
            }
            at = to;
        }
    }

    private void arc(Instruction i, PlotText text) {
        need(i, 3, text);
        Point centre = i.name().equals("AR")
                ? at.plus(scaling.by(i.number(0, 0), i.number(1, 0)))
                : scaling.point(i.number(0, 0), i.number(1, 0));
        double turn = Math.toRadians(i.number(2, 0));
        Vec arm = at.minus(centre);
        if (arm.length() == 0 || turn == 0) {
            return;
        }
        if (Math.abs(turn) > 2 * Math.PI + 1e-9) {
            throw text.refused("an arc of " + i.number(2, 0) + " degrees; at most 360 were expected.");
        }
        double round = Math.abs(turn) > 2 * Math.PI - 1e-9 ? Math.copySign(2 * Math.PI, turn) : turn;
        Path arc = Curves.arc(centre, arm.length(), arm.angle(), round);
        if (down) {
            Point from = at;
            for (Segment s : arc.segments()) {
                ink.draw(
                        s instanceof Cubic c
                                ? new Cubic(from, c.handle1(), c.handle2(), c.end())
                                : new Line(from, s.end()));
                from = s.end();
            }
        }
        at = arc.end();
    }

    private void circle(Instruction i, PlotText text) {
        need(i, 1, text);
        double radius = Math.abs(i.number(0, 0)) * scaling.mm();
        if (radius > 0) {
            ink.draw(Curves.circle(at, radius));
        }
    }

    private void rectangle(Instruction i, PlotText text) {
        need(i, 2, text);
        Point to = i.name().equals("ER")
                ? at.plus(scaling.by(i.number(0, 0), i.number(1, 0)))
                : scaling.point(i.number(0, 0), i.number(1, 0));
        if (!to.equals(at)) {
            ink.draw(Path.through(at, new Point(to.x(), at.y()), to, new Point(at.x(), to.y()), at));
        }
    }

    private void curves(Instruction i, PlotText text) {
        List<Double> n = i.numbers();
        if (n.size() % 6 != 0) {
            throw text.refused(i.name() + " has " + n.size() + " numbers; three points for each curve were expected.");
        }
        for (int k = 0; k < n.size(); k += 6) {
            Point[] p = new Point[3];
            for (int j = 0; j < 3; j++) {
                double x = n.get(k + 2 * j);
                double y = n.get(k + 2 * j + 1);
                p[j] = i.name().equals("BR") ? at.plus(scaling.by(x, y)) : scaling.point(x, y);
            }
            if (down && !(p[2].equals(at) && p[0].equals(at) && p[1].equals(at))) {
                ink.draw(new Cubic(at, p[0], p[1], p[2]));
            }
            at = p[2];
        }
    }

    private static void need(Instruction i, int numbers, PlotText text) {
        if (i.numbers().size() < numbers) {
            throw text.refused(i.name() + " has " + i.numbers().size() + " numbers; " + numbers + " were expected.");
        }
    }

    private void corners(Instruction i, PlotText text) {
        if (!i.numbers().isEmpty() && i.numbers().size() != 4) {
            throw text.refused(
                    "IP has " + i.numbers().size() + " numbers; the two corners of the frame were expected.");
        }
        corners = i.numbers().isEmpty() ? Optional.empty() : Optional.of(i.numbers());
    }

    /** Only a scale that is one for both directions, between corners that the file itself gives. */
    private void scale(Instruction i, PlotText text) {
        ink.finish();
        if (i.numbers().isEmpty()) {
            scaling = Scaling.PLAIN;
            return;
        }
        need(i, 4, text);
        if (corners.isEmpty()) {
            throw text.refused(
                    "the plot is scaled (SC) to a sheet that it does not give (IP); write it in plotter units.");
        }
        List<Double> p = corners.get();
        double x0 = i.number(0, 0);
        double y0 = i.number(2, 0);
        double across = (p.get(2) - p.get(0)) / (i.number(1, 0) - x0);
        double up = (p.get(3) - p.get(1)) / (i.number(3, 0) - y0);
        if (!(across > 0 && Math.abs(across - up) <= SAME_SCALE * across) || i.number(4, 0) != 0) {
            throw text.refused("the plot is scaled (SC) by " + across + " across and " + up
                    + " up; a pattern must not be stretched or mirrored. Write it in plotter units.");
        }
        double mm = across * Scaling.UNIT_MM;
        scaling =
                new Scaling(new Point(p.get(0) * Scaling.UNIT_MM - x0 * mm, p.get(1) * Scaling.UNIT_MM - y0 * mm), mm);
    }
}
