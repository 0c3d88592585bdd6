package trueseam.cloth.packing;

import java.util.SplittableRandom;

/**
 * Brings an arrangement out of what it is caught in: by a small step mostly (two copies of much the same size change places, or one is laid
 * somewhere else), by a large one at times (two of the largest change places).
 */
final class Disturbance {

    private static final double LARGE_STEP = 0.25;
    private static final double ALIKE_STEP = 0.5;

    /** Among so many the one that is most alike, or the largest, is taken. */
    private static final int AMONG_ALIKE = 8;

    private static final int AMONG_LARGE = 3;

    /** How often another is looked for where both are of one shape: to change their places would change nothing. */
    private static final int OTHERS = 20;

    private final Arrangement a;
    private final SplittableRandom random;

    Disturbance(Arrangement a, SplittableRandom random) {
        this.a = a;
        this.random = random;
    }

    void disturb() {
        double chance = random.nextDouble();
        if (chance < LARGE_STEP) {
            swapLarge();
        } else if (chance < LARGE_STEP + ALIKE_STEP) {
            swapAlike();
        } else {
            put(any(), random.nextDouble() * a.length, random.nextDouble() * a.strip.width());
        }
    }

    private void swapLarge() {
        int i = large();
        int j = large();
        for (int k = 0; k < OTHERS && part(i) == part(j); k++) {
            j = large();
        }
        swap(i, j);
    }

    private void swapAlike() {
        int i = any();
        int most = i;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < AMONG_ALIKE; k++) {
            int j = any();
            double unlike = unlike(polygon(i), polygon(j));
            if (part(i) != part(j) && unlike < least) {
                least = unlike;
                most = j;
            }
        }
        swap(i, most);
    }

    private static double unlike(Polygon p, Polygon q) {
        return Math.abs(Math.log((p.maxX - p.minX) / (q.maxX - q.minX)))
                + Math.abs(Math.log((p.maxY - p.minY) / (q.maxY - q.minY)));
    }

    private int any() {
        return a.fixedCount + random.nextInt(a.count - a.fixedCount);
    }

    private int large() {
        int largest = any();
        for (int k = 1; k < AMONG_LARGE; k++) {
            int other = any();
            if (polygon(other).signedArea() > polygon(largest).signedArea()) {
                largest = other;
            }
        }
        return largest;
    }

    private int part(int i) {
        return a.forms.get(a.form[i]).part;
    }

    private Polygon polygon(int i) {
        return a.forms.get(a.form[i]).polygon;
    }

    private void swap(int i, int j) {
        double ix = a.middle(i);
        double iy = a.middleAcross(i);
        double jx = a.middle(j);
        double jy = a.middleAcross(j);
        put(i, jx, jy);
        put(j, ix, iy);
    }

    /** As near to a place as it may lie; where it may lie nowhere, it stays. */
    private void put(int i, double middleX, double middleY) {
        Form f = a.forms.get(a.form[i]);
        double x = f.allowedX(middleX - (f.polygon.minX + f.polygon.maxX) / 2, a.length);
        double y = f.allowedY(middleY - (f.polygon.minY + f.polygon.maxY) / 2);
        if (!Double.isNaN(x) && !Double.isNaN(y)) {
            a.place(i, a.form[i], x, y);
        }
    }
}
