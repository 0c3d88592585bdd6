package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Bounds;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Segment;

/**
 * Marks at opposite edges that are laid together: whole ones middle on middle, half ones with their straight sides side by side.
 *
 * <pre>{@code
 *      |>        <|        halves: from the left one's straight side to the right one's
 *      (+)      (+)        wholes: from middle to middle
 * }</pre>
 *
 * @param sure distances from page to page by marks that say it themselves, mm
 * @param perhaps other distances between them
 */
record MarkPairs(List<Double> sure, List<Double> perhaps) {

    private static final double SAME_MM = 0.05;

    /** A smaller thing is a dot or a tick, mm. */
    private static final double LEAST_MM = 1;

    static MarkPairs of(List<Inked> marks, boolean right) {
        List<Double> sure = new ArrayList<>();
        List<Double> perhaps = new ArrayList<>();
        for (Inked a : marks) {
            for (Inked b : marks) {
                Bounds p = a.seen();
                Bounds q = b.seen();
                boolean alike = Math.abs(p.width() - q.width()) < 0.5 && Math.abs(p.height() - q.height()) < 0.5;
                double aside = right
                        ? p.centre().y() - q.centre().y()
                        : p.centre().x() - q.centre().x();
                boolean large = Math.max(p.width(), p.height()) > LEAST_MM;
                if (!a.equals(b) && alike && large && Math.abs(aside) < 0.5) {
                    double middle = right
                            ? q.centre().x() - p.centre().x()
                            : q.centre().y() - p.centre().y();
                    double outer = right ? q.maxX() - p.minX() : q.maxY() - p.minY();
                    double inner = right ? q.minX() - p.maxX() : q.minY() - p.maxY();
                    if (isCopy(a, b)) {
                        sure.add(middle);
                    } else if (isFlat(a, right, false) && isFlat(b, right, true)) {
                        sure.add(outer);
                    } else if (isFlat(a, right, true) && isFlat(b, right, false)) {
                        sure.add(inner);
                    }
                    perhaps.addAll(List.of(middle, outer, inner));
                }
            }
        }
        return new MarkPairs(sure, perhaps);
    }

    private static boolean isCopy(Inked a, Inked b) {
        Path p = a.stroke().path();
        Path q = b.stroke().path();
        if (p.segments().size() != q.segments().size()) {
            return false;
        }
        boolean copy = true;
        for (int i = 0; i < p.segments().size(); i++) {
            var from = p.segments().get(i).end().minus(p.start());
            var to = q.segments().get(i).end().minus(q.start());
            copy &= from.minus(to).length() < SAME_MM;
        }
        return copy;
    }

    /** Whether its near or far side, in one direction, is straight. */
    private static boolean isFlat(Inked mark, boolean right, boolean far) {
        Bounds box = mark.bounds();
        double side = right ? far ? box.maxX() : box.minX() : far ? box.maxY() : box.minY();
        for (Segment s : mark.stroke().path().segments()) {
            double from = right ? s.start().x() : s.start().y();
            double to = right ? s.end().x() : s.end().y();
            if (s instanceof Line
                    && s.length() > LEAST_MM
                    && Math.abs(from - side) < SAME_MM
                    && Math.abs(to - side) < SAME_MM) {
                return true;
            }
        }
        return false;
    }
}
