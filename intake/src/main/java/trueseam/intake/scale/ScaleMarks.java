package trueseam.intake.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Drawing;

/** Finds what is drawn with its size printed at it. */
final class ScaleMarks {

    /** Squares that people print to check the scale, mm: without a printed size only these count. */
    private static final double[] USUAL_MM = {20, 25, 25.4, 30, 40, 50, 50.8, 76.2, 100, 101.6};

    private static final double USUAL = 0.06;

    /** Letters are about so wide as a share of their height. */
    private static final double LETTER = 0.55;

    /** A size without such words as "test square" may differ from the drawn one by this factor, one with them by the next. */
    private static final double PLAIN = 1.35;

    private static final double NAMED = 6;

    private ScaleMarks() {}

    static List<ScaleMark> of(Drawing drawing) {
        List<ScaleMark> marks = new ArrayList<>();
        List<Bounds> squares = Squares.of(drawing);
        List<Caption> left = new ArrayList<>();
        boolean[] said = new boolean[squares.size()];
        for (Caption caption : drawing.captions()) {
            Optional<SaidSize> size = SaidSize.of(caption.text());
            if (size.isEmpty()) {
                continue;
            }
            int nearest = nearest(caption, size.get(), squares);
            if (nearest >= 0) {
                said[nearest] = true;
                marks.add(best(size.get(), squares.get(nearest)));
            } else {
                left.add(caption);
            }
        }
        Dimensions dimensions = Dimensions.of(drawing);
        for (Caption caption : left) {
            SaidSize.of(caption.text())
                    .flatMap(size -> dimensions.at(caption, size))
                    .ifPresent(marks::add);
        }
        for (int i = 0; i < squares.size(); i++) {
            Bounds box = squares.get(i);
            if (!said[i] && Squares.isSquare(box) && isUsual((box.width() + box.height()) / 2)) {
                marks.add(new ScaleMark("", box.width(), box.height(), 0, 0, 0));
            }
        }
        return marks;
    }

    private static boolean isUsual(double mm) {
        for (double usual : USUAL_MM) {
            if (Math.abs(mm / usual - 1) < USUAL) {
                return true;
            }
        }
        return false;
    }

    /** The square that a text stands in or beside; -1 if none. */
    private static int nearest(Caption caption, SaidSize size, List<Bounds> squares) {
        double wide = LETTER * caption.heightMm() * caption.text().length();
        Point at = caption.at();
        Bounds words = new Bounds(at.x(), at.y(), at.x() + wide, at.y() + caption.heightMm());
        int nearest = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < squares.size(); i++) {
            Bounds box = squares.get(i);
            double apart = apart(words, box);
            ScaleMark mark = best(size, box);
            double factor = Math.max(mark.right(), 1 / mark.right());
            boolean square = Squares.isSquare(box)
                    || Math.abs(mark.saidAcrossMm() / mark.saidUpMm() / (box.width() / box.height()) - 1) < 0.12;
            boolean possible =
                    square && factor < (size.named() ? NAMED : PLAIN) && apart < Math.max(6, 0.3 * box.height());
            // In it before beside it, and of several round it the smallest.
            double rank = apart * 1000 + box.width();
            if (possible && rank < least) {
                least = rank;
                nearest = i;
            }
        }
        return nearest;
    }

    private static double apart(Bounds a, Bounds b) {
        double x = Math.max(0, Math.max(b.minX() - a.maxX(), a.minX() - b.maxX()));
        double y = Math.max(0, Math.max(b.minY() - a.maxY(), a.minY() - b.maxY()));
        return Math.hypot(x, y);
    }

    /** Of several sizes that a text names, the one that is nearest to what is drawn. */
    private static ScaleMark best(SaidSize said, Bounds box) {
        ScaleMark best = null;
        double least = Double.POSITIVE_INFINITY;
        for (SaidSize.Size size : said.sizes()) {
            double off =
                    Math.abs(Math.log(size.acrossMm() / box.width())) + Math.abs(Math.log(size.upMm() / box.height()));
            if (off < least) {
                least = off;
                // A square's size is printed as it is meant, however few its digits.
                best = new ScaleMark(said.text(), box.width(), box.height(), size.acrossMm(), size.upMm(), 0);
            }
        }
        return best;
    }
}
