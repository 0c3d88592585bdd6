package trueseam.intake.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;

/**
 * A line of which some places move, each by its own amount; what lies between two of them moves by an amount between, in proportion to the way
 * along the line. The ends of an open line beyond the last moving place move as that does.
 *
 * @param line the line in the sample size
 * @param moves by place along it, mm: how far it moves
 */
record RuledLine(Path line, NavigableMap<Double, Vec> moves) {

    /** Of a line that goes round, end and start are one place. */
    RuledLine {
        NavigableMap<Double, Vec> kept = new TreeMap<>(moves);
        double end = line.length();
        if (line.isClosed() && !kept.isEmpty() && kept.lastKey() >= end - Path.CHAIN_MM) {
            Vec last = kept.pollLastEntry().getValue();
            kept.putIfAbsent(0.0, last);
        }
        moves = kept;
    }

    Vec moveAt(double alongMm) {
        if (moves.isEmpty()) {
            return Vec.ZERO;
        }
        Map.Entry<Double, Vec> before = moves.floorEntry(alongMm);
        Map.Entry<Double, Vec> after = moves.higherEntry(alongMm);
        double round = line.isClosed() ? line.length() : 0;
        double from = before == null ? moves.lastKey() - round : before.getKey();
        double to = after == null ? moves.firstKey() + round : after.getKey();
        Vec start = (before == null ? moves.lastEntry() : before).getValue();
        Vec end = (after == null ? moves.firstEntry() : after).getValue();
        if (!line.isClosed() && (before == null || after == null)) {
            return before == null ? end : start;
        }
        return start.plus(end.minus(start).times((alongMm - from) / (to - from)));
    }

    /** The line as it then runs. Straight strokes stay straight; a curve between two moving places stays smooth. */
    Path moved() {
        List<Segment> all = new ArrayList<>();
        List<Double> cuts = new ArrayList<>(moves.keySet());
        cuts.removeIf(at -> at <= 0 || at >= line.length());
        cuts.add(0, 0.0);
        cuts.add(line.length());
        for (int i = 0; i + 1 < cuts.size(); i++) {
            double along = cuts.get(i);
            for (Segment stroke : line.part(cuts.get(i), cuts.get(i + 1)).segments()) {
                double length = stroke.length();
                all.add(moved(stroke, along, length));
                along += length;
            }
        }
        return chained(all);
    }

    /** Handles lie at thirds of the way: what moves in proportion to the way moves a curve's points by the amounts there. */
    private Segment moved(Segment stroke, double along, double length) {
        Point start = stroke.start().plus(moveAt(along));
        Point end = stroke.end().plus(moveAt(Math.min(along + length, line.length())));
        if (stroke instanceof Cubic c) {
            return new Cubic(
                    start,
                    c.handle1().plus(moveAt(along + length / 3)),
                    c.handle2().plus(moveAt(along + 2 * length / 3)),
                    end);
        }
        return new Line(start, end);
    }

    /** Every stroke begins where the last one ended, to the last bit. */
    private Path chained(List<Segment> strokes) {
        List<Segment> all = new ArrayList<>();
        Point at = strokes.get(0).start();
        Point begin = at;
        for (int i = 0; i < strokes.size(); i++) {
            Segment stroke = strokes.get(i);
            Point end = line.isClosed() && i + 1 == strokes.size() ? begin : stroke.end();
            all.add(stroke instanceof Cubic c ? new Cubic(at, c.handle1(), c.handle2(), end) : new Line(at, end));
            at = end;
        }
        return Path.of(all);
    }
}
