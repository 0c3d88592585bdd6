package trueseam.output.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * Trunk, leg or arm as a stack of ovals.
 *
 * @param outer x of its outer line at each height
 * @param inner x of its inner line
 * @param front how far it comes forward of the plane through the sides, mm
 * @param back how far it goes back, mm
 */
record Limb(Profile outer, Profile inner, Profile front, Profile back) {
    /** Strokes in a ring: enough for a curve through them to be smooth. */
    private static final int STEPS = 24;

    /** The skin at a height, so many radians round from the outer side over the front. */
    Spot at(double y, double round) {
        double middle = (outer.at(y) + inner.at(y)) / 2;
        double half = (outer.at(y) - inner.at(y)) / 2;
        return new Spot(middle + half * Math.cos(round), y, deep(y, Math.sin(round)), Math.sin(round));
    }

    private double deep(double y, double sine) {
        return sine * (sine > 0 ? front.at(y) : back.at(y));
    }

    /** The skin in front (or at the back) straight above an x. */
    Spot over(double x, double y, boolean inFront) {
        double middle = (outer.at(y) + inner.at(y)) / 2;
        double half = (outer.at(y) - inner.at(y)) / 2;
        double cosine = Math.max(-1, Math.min(1, (x - middle) / half));
        double sine = Math.sqrt(1 - cosine * cosine) * (inFront ? 1 : -1);
        return new Spot(x, y, deep(y, sine), sine);
    }

    /**
     * A tape round the limb, from the outer side over the front and the inner side back to the start.
     *
     * @param y height of its middle
     * @param riseMm how much higher the middle of the back lies than the sides, and the middle of the front lower
     */
    List<Spot> ring(double y, double riseMm) {
        List<Spot> ring = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double round = 2 * Math.PI * i / STEPS;
            Spot level = at(y, round);
            ring.add(new Spot(level.x(), y - riseMm * Math.sin(round), level.z(), level.facing()));
        }
        return ring;
    }

    /**
     * A tape round a limb that leans, square to it.
     *
     * @param y height of its middle
     * @param leanRad how far its axis leans from the vertical, outwards below
     */
    List<Spot> squareRing(double y, double leanRad) {
        Spot middle = new Spot((outer.at(y) + inner.at(y)) / 2, y, 0, 0);
        Spot out = end(middle, outer, leanRad);
        Spot in = end(middle, inner, leanRad);
        List<Spot> ring = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double round = 2 * Math.PI * i / STEPS;
            double share = (1 - Math.cos(round)) / 2;
            Spot across = out.towards(in, share);
            ring.add(new Spot(across.x(), across.y(), deep(y, Math.sin(round)), Math.sin(round)));
        }
        return ring;
    }

    /** Where the line square to the axis meets the limb's side: a few rounds suffice, since sides run nearly along the axis. */
    private static Spot end(Spot middle, Profile side, double leanRad) {
        double y = middle.y();
        for (int round = 0; round < 8; round++) {
            y = middle.y() + (side.at(y) - middle.x()) * Math.tan(leanRad);
        }
        return new Spot(side.at(y), y, 0, 0);
    }
}
