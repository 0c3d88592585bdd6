package trueseam.geometry.convert;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;

/** Follows path data command by command. One text, one thread. */
final class PathDataReader {

    /** A drawing of a million strokes is no pattern, and would not be laid out either. */
    private static final int MOST_STROKES = 1_000_000;

    private final PathDataText text;
    private final List<Subpath> found = new ArrayList<>();
    private final List<Segment> strokes = new ArrayList<>();
    private int drawn;
    private Point start = Point.ORIGIN;
    private Point at = Point.ORIGIN;
    /** The handle that S or T mirrors; the current point itself after any other command. */
    private Point lastHandle = Point.ORIGIN;

    private PathDataReader(String data) {
        text = new PathDataText(data);
    }

    static List<Subpath> read(String data) {
        PathDataReader reader = new PathDataReader(data);
        reader.follow();
        return List.copyOf(reader.found);
    }

    private void follow() {
        char before = 'Z';
        boolean first = true;
        while (!text.isAtEnd()) {
            int where = text.character();
            try {
                char command = text.command();
                if (first && Character.toUpperCase(command) != 'M') {
                    throw new PathDataException("a line begins with M, not with " + command + ".", where);
                }
                first = false;
                follow(command, before);
                before = Character.toUpperCase(command);
            } catch (PathDataException asItIs) {
                throw asItIs;
            } catch (GeometryException beyondThePaper) {
                throw new PathDataException("this command leads off the paper. " + beyondThePaper.getMessage(), where);
            }
        }
        finish(false);
    }

    private void follow(char command, char before) {
        boolean relative = Character.isLowerCase(command);
        char kind = Character.toUpperCase(command);
        if (kind == 'Z') {
            if (!at.isNear(start, Path.CHAIN_MM) && !strokes.isEmpty()) {
                draw(new Line(at, start));
            }
            finish(true);
            at = start;
            lastHandle = at;
            return;
        }
        char last = before;
        boolean moving = kind == 'M';
        do {
            if (moving) {
                finish(false);
                at = point(relative);
                start = at;
                lastHandle = at;
                moving = false; // further pairs are lines
            } else {
                stroke(kind, relative, last);
            }
            last = kind;
        } while (text.isNumberNext());
    }

    private void stroke(char kind, boolean relative, char last) {
        switch (kind) {
            case 'M', 'L' -> line(point(relative));
            case 'H' -> line(new Point(text.number() + (relative ? at.x() : 0), at.y()));
            case 'V' -> line(new Point(at.x(), text.number() + (relative ? at.y() : 0)));
            case 'C' -> cubic(point(relative), relative);
            case 'S' -> cubic(mirrored(last == 'C' || last == 'S'), relative);
            case 'Q' -> quadratic(point(relative), relative);
            case 'T' -> quadratic(mirrored(last == 'Q' || last == 'T'), relative);
            case 'A' -> arc(relative);
            default -> throw text.refused("a command " + kind + " that is not known.");
        }
    }

    private Point point(boolean relative) {
        double x = text.number();
        double y = text.number();
        return relative ? new Point(at.x() + x, at.y() + y) : new Point(x, y);
    }

    private Point mirrored(boolean continues) {
        return continues ? at.plus(at.minus(lastHandle)) : at;
    }

    private void line(Point to) {
        draw(new Line(at, to));
        lastHandle = at;
    }

    private void cubic(Point handle1, boolean relative) {
        Point handle2 = point(relative);
        draw(new Cubic(at, handle1, handle2, point(relative)));
        lastHandle = handle2;
    }

    private void quadratic(Point handle, boolean relative) {
        draw(Curves.quadratic(at, handle, point(relative)));
        lastHandle = handle;
    }

    private void arc(boolean relative) {
        Vec radii = new Vec(text.number(), text.number());
        double turn = Math.toRadians(text.number() % 360);
        boolean large = text.flag();
        boolean sweep = text.flag();
        Point to = point(relative);
        if (radii.x() == 0 || radii.y() == 0) {
            line(to); // SVG 1.1, F.6.2
            return;
        }
        for (Cubic c : Curves.ellipticalArc(at, radii, turn, large, sweep, to)) {
            draw(c);
        }
        lastHandle = at;
    }

    private void draw(Segment s) {
        drawn++;
        if (drawn > MOST_STROKES) {
            throw text.refused("more than " + MOST_STROKES + " strokes; that is no pattern.");
        }
        strokes.add(s);
        at = s.end();
    }

    private void finish(boolean closed) {
        if (!strokes.isEmpty()) {
            found.add(new Subpath(Path.of(strokes), closed));
            strokes.clear();
        }
    }
}
