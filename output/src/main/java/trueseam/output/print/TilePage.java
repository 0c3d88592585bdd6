package trueseam.output.print;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Dash;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.Pen;
import trueseam.output.drawing.Shapes;

/** Draws what makes a page part of a whole: its frame, the lines where it meets its neighbours, the diamonds, its label. */
final class TilePage {

    /** From the middle of a diamond to its corners, mm. */
    static final double DIAMOND_MM = 3;

    private static final Pen FRAME = Pen.of(0.15).gray(0.6);
    private static final Pen JOIN = Pen.of(0.2).with(Dash.DASHED).gray(0.35);
    private static final double TAG_WIDTH_MM = 52;
    private static final double TAG_HEIGHT_MM = 13;

    /** A number beside a diamond stays within half of the usual overlap, so that no sheet cuts it off, mm. */
    private static final double NUMBER_WIDE_MM = 4.9;

    private static final Lettering NUMBER = Lettering.of(3.2).heavy();

    /** From the lines where pages meet to a label: clear of the diamonds. */
    private static final double INSET_MM = 9;

    private final Layout layout;
    private final List<JoinMark> marks;

    TilePage(Layout layout) {
        this.layout = layout;
        this.marks = layout.marks();
    }

    /** Draws in the coordinates of the sheet. */
    void draw(Canvas canvas, Tile tile) {
        canvas.stroke(Shapes.rectangle(tile.frame()), FRAME);
        for (JoinMark mark : marks) {
            if (isOn(tile, mark)) {
                drawJoin(canvas, tile, mark);
                drawDiamond(canvas, mark);
            }
        }
    }

    private static boolean isOn(Tile tile, JoinMark mark) {
        Bounds f = tile.frame();
        return f.minX() < mark.at().x()
                && mark.at().x() < f.maxX()
                && f.minY() < mark.at().y()
                && mark.at().y() < f.maxY();
    }

    /** The line to cut along: on the left and the upper side of a page only. */
    private static void drawJoin(Canvas canvas, Tile tile, JoinMark mark) {
        Bounds f = tile.frame();
        if (mark.upright() && mark.at().x() < f.centre().x()) {
            canvas.line(new Point(mark.at().x(), f.minY()), new Point(mark.at().x(), f.maxY()), JOIN);
        } else if (!mark.upright() && mark.at().y() > f.centre().y()) {
            canvas.line(
                    new Point(f.minX(), mark.at().y()),
                    new Point(f.maxX(), mark.at().y()),
                    JOIN);
        }
    }

    /** A black diamond that the cut halves, with its number on both halves. */
    private static void drawDiamond(Canvas canvas, JoinMark mark) {
        Vec right = new Vec(DIAMOND_MM, 0);
        Vec up = new Vec(0, DIAMOND_MM);
        Point at = mark.at();
        canvas.fill(List.of(Shapes.closed(at.plus(right), at.plus(up), at.minus(right), at.minus(up))), 0);
        Lettering lettering = canvas.typeface().fitted(mark.label(), NUMBER, NUMBER_WIDE_MM, 2);
        if (mark.upright()) {
            canvas.text(mark.label(), at.plus(new Vec(0.8, 3.4)), lettering);
            canvas.text(mark.label(), at.plus(new Vec(-0.8, 3.4)), lettering.endingThere());
        } else {
            canvas.text(mark.label(), at.plus(new Vec(3.4, 0.8)), lettering);
            canvas.text(mark.label(), at.plus(new Vec(3.4, -0.8 - 2.3)), lettering);
        }
    }

    /** Its label, at the place of its own part's border where it stands in the way of the least. */
    void drawTag(Canvas canvas, Tile tile, String title, List<Footprint> pieces, List<FreeRoom> rooms) {
        List<Placed> placed = layout.pieces();
        Bounds tag = null;
        int least = Integer.MAX_VALUE;
        for (Bounds spot : spots(tile.cell().grown(-INSET_MM))) {
            int cost = 0;
            for (int i = 0; i < placed.size(); i++) {
                Vec back = Point.ORIGIN.minus(placed.get(i).origin());
                Bounds there = new Bounds(
                        spot.minX() + back.x(), spot.minY() + back.y(),
                        spot.maxX() + back.x(), spot.maxY() + back.y());
                cost += pieces.get(i).holds(there) ? 1 : pieces.get(i).meets(there) ? 10 : 0;
                cost += rooms.get(i).covered(there);
            }
            if (cost < least) {
                least = cost;
                tag = spot;
            }
        }
        int n = layout.tiles().indexOf(tile) + 1;
        canvas.text(
                tile.label(),
                new Point(tag.minX(), tag.minY() + 4.6),
                Lettering.of(9).heavy());
        String count = "sheet " + n + " of " + layout.tiles().size();
        double beside = tag.minX() + canvas.typeface().widthOf(tile.label(), Lettering.of(9)) + 2.5;
        canvas.text(count, new Point(beside, tag.minY() + 4.6), Lettering.of(3.4));
        canvas.text(
                title,
                new Point(tag.minX(), tag.minY() + 0.6),
                canvas.typeface().fitted(title, Lettering.of(2.8), TAG_WIDTH_MM, 1.8));
    }

    private static List<Bounds> spots(Bounds in) {
        double left = in.minX();
        double low = in.minY();
        double right = in.maxX() - TAG_WIDTH_MM;
        double high = in.maxY() - TAG_HEIGHT_MM;
        List<Bounds> spots = new ArrayList<>();
        for (int down = 0; down <= 6; down++) {
            double y = low + (high - low) * down / 6;
            spots.add(tag(left, y));
            spots.add(tag(right, y));
        }
        spots.add(tag((left + right) / 2, low));
        spots.add(tag((left + right) / 2, high));
        return spots;
    }

    private static Bounds tag(double x, double y) {
        return new Bounds(x, y, x + TAG_WIDTH_MM, y + TAG_HEIGHT_MM);
    }
}
