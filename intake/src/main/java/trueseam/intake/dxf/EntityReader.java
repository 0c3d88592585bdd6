package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.convert.Affine;
import trueseam.geometry.convert.Curves;

/**
 * What is drawn, as marks in mm. An entity that cannot be taken is a finding, and the rest goes on; heights above the paper are left out.
 * Entities of the plane may be seen from behind (extrusion 0, 0, -1): their x is turned round.
 */
final class EntityReader {

    private static final Affine FROM_BEHIND = new Affine(-1, 0, 0, 1, 0, 0);

    /** Scales of an insert along and across that differ by less are one scale rounded. */
    private static final double SAME_SCALE = 1e-6;

    private static final int MOST_COPIES = 1000;
    private static final double LINE_APART = 5.0 / 3; // of the height of letters; DXF reference, MTEXT

    private final double unitMm;
    private final Notes notes;
    private final Polylines polylines;

    EntityReader(double unitMm, Notes notes) {
        this.unitMm = unitMm;
        this.notes = notes;
        this.polylines = new Polylines(unitMm);
    }

    List<Mark> read(List<RawEntity> entities) {
        List<Mark> marks = new ArrayList<>();
        for (RawEntity e : entities) {
            try {
                if (e.whole(67, 0) == 1) {
                    notes.leftOut("what lies on a sheet layout");
                } else if (e.whole(60, 0) == 1) {
                    notes.leftOut("what is drawn invisibly");
                } else {
                    take(e, marks);
                }
            } catch (EntityException | GeometryException refused) {
                notes.broken(e, refused.getMessage());
            }
        }
        return marks;
    }

    private void take(RawEntity e, List<Mark> marks) {
        Trait trait = Trait.of(e);
        switch (e.type()) {
            case "LINE" -> line(e, trait, marks);
            case "LWPOLYLINE" -> marks.add(new Mark.Stroke(seen(e, polylines.light(e)), trait));
            case "POLYLINE" -> marks.add(new Mark.Stroke(seen(e, polylines.heavy(e)), trait));
            case "ARC" -> marks.add(new Mark.Stroke(seen(e, arc(e)), trait));
            case "CIRCLE" -> marks.add(new Mark.Stroke(seen(e, Curves.circle(point(e, 10), length(e, 40))), trait));
            case "ELLIPSE" -> marks.add(new Mark.Stroke(ellipse(e), trait));
            case "SPLINE" -> marks.add(new Mark.Stroke(spline(e), trait));
            case "POINT" -> marks.add(spot(e, trait));
            case "TEXT", "ATTRIB" -> text(e, trait, marks);
            case "MTEXT" -> lines(e, trait, marks);
            case "INSERT" -> insert(e, trait, marks);
            case "ATTDEF", "VIEWPORT", "SEQEND" -> {
                // draw nothing
            }
            default -> notes.leftOut(e.type());
        }
    }

    private double length(RawEntity e, int code) {
        return e.needed(code) * unitMm;
    }

    private Point point(RawEntity e, int code) {
        return new Point(length(e, code), length(e, code + 10));
    }

    /** Whether something is seen from behind. */
    private static boolean isFromBehind(RawEntity e) {
        double z = e.number(230, 1);
        if (Math.abs(e.number(210, 0)) > 1e-6 || Math.abs(e.number(220, 0)) > 1e-6 || z == 0) {
            throw new EntityException("it does not lie in the plane of the paper");
        }
        return z < 0;
    }

    private static Path seen(RawEntity e, Path drawn) {
        return isFromBehind(e) ? FROM_BEHIND.apply(drawn) : drawn;
    }

    private static Point seen(RawEntity e, Point drawn) {
        return isFromBehind(e) ? FROM_BEHIND.apply(drawn) : drawn;
    }

    private void line(RawEntity e, Trait trait, List<Mark> marks) {
        Point from = point(e, 10);
        Point to = point(e, 11);
        if (from.equals(to)) {
            notes.leftOut("a line of no length");
        } else {
            marks.add(new Mark.Stroke(Path.of(new Line(from, to)), trait));
        }
    }

    private Path arc(RawEntity e) {
        double from = Math.toRadians(e.needed(50) % 360);
        double turn = Math.toRadians(((e.needed(51) - e.needed(50)) % 360 + 360) % 360);
        return Curves.arc(point(e, 10), length(e, 40), from, turn == 0 ? 2 * Math.PI : turn);
    }

    private Path ellipse(RawEntity e) {
        Vec major = new Vec(length(e, 11), length(e, 21));
        double share = Math.abs(e.number(40, 1)) * (isFromBehind(e) ? -1 : 1);
        double from = e.number(41, 0);
        double turn = (e.number(42, 2 * Math.PI) - from) % (2 * Math.PI);
        if (turn <= 1e-9) {
            turn += 2 * Math.PI;
        }
        double whole = Math.min(turn, 2 * Math.PI);
        // A circle of the greater radius, pressed flat, turned and put in place.
        Path round = Curves.arc(
                Point.ORIGIN, major.length(), from, Math.abs(whole - 2 * Math.PI) < 1e-9 ? 2 * Math.PI : whole);
        Vec right = major.unit();
        Vec up = right.left().times(share);
        Point centre = point(e, 10);
        return new Affine(right.x(), right.y(), up.x(), up.y(), centre.x(), centre.y()).apply(round);
    }

    private Path spline(RawEntity e) {
        List<Double> x = e.numbers(10);
        List<Double> y = e.numbers(20);
        if (x.size() != y.size()) {
            throw new EntityException("a control point of a spline has no y");
        }
        List<Point> controls = new ArrayList<>();
        for (int i = 0; i < x.size(); i++) {
            controls.add(new Point(x.get(i) * unitMm, y.get(i) * unitMm));
        }
        List<Double> weights = e.numbers(41);
        BSpline spline = new BSpline(
                e.whole(71, 3),
                e.numbers(40),
                controls,
                weights.isEmpty() ? controls.stream().map(c -> 1.0).toList() : weights);
        if (!spline.isExact()) {
            notes.followed(e);
        }
        return spline.path();
    }

    private Mark spot(RawEntity e, Trait trait) {
        return new Mark.Spot(
                point(e, 10), given(e, 30, unitMm), given(e, 39, unitMm), given(e, 50, Math.PI / 180), trait);
    }

    private static OptionalDouble given(RawEntity e, int code, double times) {
        double value = e.number(code, 0);
        return value == 0 && (code != 50 || !e.has(code)) ? OptionalDouble.empty() : OptionalDouble.of(value * times);
    }

    private void text(RawEntity e, Trait trait, List<Mark> marks) {
        String words = Wording.plain(e.text(1, ""));
        if (words.isEmpty()) {
            return;
        }
        boolean aligned = e.needed(10) == 0 && e.needed(20) == 0 && e.has(11);
        marks.add(new Mark.Words(words, seen(e, point(e, aligned ? 11 : 10)), height(e), trait));
    }

    private double height(RawEntity e) {
        double mm = Math.abs(e.number(40, 2.5)) * unitMm;
        return Math.min(Math.max(mm, 0.1), Point.LIMIT_MM);
    }

    private void lines(RawEntity e, Trait trait, List<Mark> marks) {
        StringBuilder all = new StringBuilder();
        for (Group group : e.groups()) {
            if (group.code() == 101) {
                break; // an embedded object says the same again
            }
            if (group.code() == 1 || group.code() == 3) {
                all.append(group.value());
            }
        }
        double height = height(e);
        Vec down = new Vec(0, -height * LINE_APART);
        Point at = point(e, 10).minus(new Vec(0, height));
        for (String words : Wording.lines(all.toString())) {
            marks.add(new Mark.Words(words, at, height, trait));
            at = at.plus(down);
        }
    }

    private void insert(RawEntity e, Trait trait, List<Mark> marks) {
        double across = e.number(41, 1);
        double up = e.number(42, 1);
        if (!(Math.abs(Math.abs(across) - Math.abs(up)) <= SAME_SCALE * Math.abs(across)) || across == 0) {
            throw new EntityException("block \"" + e.text(2, "") + "\" is placed " + across + " times as wide and " + up
                    + " times as high; a pattern must not be stretched, so place it with one scale");
        }
        int columns = Math.max(1, e.whole(70, 1));
        int rows = Math.max(1, e.whole(71, 1));
        if ((long) columns * rows > MOST_COPIES) {
            throw new EntityException("block \"" + e.text(2, "") + "\" is placed " + columns + " x " + rows
                    + " times; at most " + MOST_COPIES + " copies are taken");
        }
        double angle = Math.toRadians(e.number(50, 0) % 360);
        Vec right = Vec.atAngle(angle);
        Affine turned =
                new Affine(across, 0, 0, up, 0, 0).then(new Affine(right.x(), right.y(), -right.y(), right.x(), 0, 0));
        double columnMm = e.number(44, 0) * unitMm;
        double rowMm = e.number(45, 0) * unitMm;
        for (int i = 0; i < columns * rows; i++) {
            int column = i % columns;
            int row = i / columns;
            Vec copy = new Vec(column * columnMm, row * rowMm).turned(angle);
            Point at = point(e, 10).plus(copy);
            Affine placing = turned.then(new Affine(1, 0, 0, 1, at.x(), at.y()));
            marks.add(new Mark.Placing(
                    e.text(2, "").strip(), isFromBehind(e) ? placing.then(FROM_BEHIND) : placing, trait));
        }
        for (RawEntity attribute : e.children()) {
            if (attribute.type().equals("ATTRIB")) {
                text(attribute, Trait.of(attribute), marks);
            }
        }
    }
}
