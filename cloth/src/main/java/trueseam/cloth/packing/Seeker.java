package trueseam.cloth.packing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * One searcher for a shorter layout: takes length away and overlaps out, by turns looking for other ways to lay the large pieces
 * (exploring) and pressing what is best together (pressing).
 */
final class Seeker {

    private static final double FIRST_CUT = 0.02;
    private static final double LEAST_CUT = 0.0005;

    /** A search of other ways that was given back less than this part of the length would hardly gain anything. */
    private static final double LEAST_GIVEN = LEAST_CUT / 4;

    private static final int FAILS = 12;
    private static final double FIRST_PRESS = 0.0008;
    private static final double LEAST_PRESS = 0.00001;
    private static final int PRESS_FAILS = 4;

    /** A layout is not called shorter for less than this part of its length. */
    private static final double TOO_LITTLE = 1e-9;

    /** What a try counts for where no shorter layout can be. */
    private static final int IDLE = 5000;

    /** Layouts with overlap left that are kept to begin again from. */
    private static final int POOL = 6;

    private final Arrangement a;
    private final SplittableRandom random;
    private final Separation separation;
    private final Disturbance disturbance;
    private final double least;
    private Arrangement.Snapshot best;
    private double cut = FIRST_CUT;
    private double press = FIRST_PRESS;
    private boolean pressing;
    private boolean onlyPress;
    private int fails;
    private final List<Failed> pool = new ArrayList<>();

    private record Failed(double overlap, Arrangement.Snapshot at) {}

    Seeker(Arrangement a, long seed) {
        this.a = a;
        random = new SplittableRandom(seed);
        separation = new Separation(a, random);
        disturbance = new Disturbance(a, random);
        least = leastLength();
    }

    /** No layout is shorter than its longest copy, nor than what lies there by hand. */
    private double leastLength() {
        double longest = 0;
        for (int i = 0; i < a.count; i++) {
            double shortest = Double.POSITIVE_INFINITY;
            for (int f : a.choices[i]) {
                Form form = a.forms.get(f);
                double extent = form.polygon.maxX - form.polygon.minX;
                shortest = Math.min(shortest, form.stepX == 0 ? extent : form.allowedX(form.lowX, 1e9) + form.reachX);
            }
            if (i >= a.fixedCount) {
                longest = Math.max(longest, shortest);
            } else if (!a.strip.fixed().get(i).flaw()) {
                longest = Math.max(longest, a.strip.fixed().get(i).placed().x() + a.forms.get(a.choices[i][0]).reachX);
            }
        }
        return longest;
    }

    /** A first layout. */
    void begin() {
        new FirstLayout(a, random).lay();
        best = a.snapshot();
    }

    Arrangement.Snapshot best() {
        return best;
    }

    long weighed() {
        return a.weighed;
    }

    StripLayout layout() {
        return layoutOf(best);
    }

    /** A layout of the strip in words of its parts. */
    StripLayout layoutOf(Arrangement.Snapshot of) {
        Arrangement other = a.another();
        other.load(of);
        return other.layout();
    }

    /** Goes on from a layout that another found. */
    void takeOver(Arrangement.Snapshot other) {
        best = other;
        pool.clear();
        fails = 0;
    }

    /** From now on what is found is only pressed together, or no longer only. */
    void onlyPress(boolean only) {
        if (only && !onlyPress) {
            press(true);
        }
        onlyPress = only;
    }

    private void press(boolean on) {
        press = FIRST_PRESS;
        fails = 0;
        pressing = on;
    }

    /** One try at a shorter layout; whether it was told to stop. */
    boolean step(BooleanSupplier stop) {
        // However little a try weighs, it is a try: rounds must come to an end.
        a.weighed += a.count;
        if (best.length <= least * (1 + TOO_LITTLE)) {
            a.weighed += IDLE;
        } else if (pressing) {
            pressOn(stop);
        } else {
            explore(stop);
        }
        return stop.getAsBoolean();
    }

    private void pressOn(BooleanSupplier stop) {
        a.load(best);
        shorten(Math.max(least, best.length * (1 - press)));
        if (separation.run(stop, 1) && keep()) {
            fails = 0;
        } else if (++fails >= PRESS_FAILS) {
            fails = 0;
            press /= 2;
            if (press < LEAST_PRESS) {
                press(onlyPress);
                cut = 4 * LEAST_CUT;
            }
        }
    }

    private void explore(BooleanSupplier stop) {
        if (pool.isEmpty()) {
            a.load(best);
            shorten(Math.max(least, best.length * (1 - cut)));
        } else {
            pool.sort(Comparator.comparingDouble(Failed::overlap));
            int at = (int) Math.min(pool.size() - 1.0, Math.abs(random.nextGaussian()) * pool.size() / 3);
            a.load(pool.get(at).at());
            disturbance.disturb();
        }
        if (separation.run(stop) && keep()) {
            pool.clear();
            fails = 0;
            cut = Math.min(FIRST_CUT, cut * 1.2);
            return;
        }
        pool.add(new Failed(a.total(), a.snapshot()));
        if (giveBack(stop)) {
            pool.clear();
            fails = 0;
            return;
        }
        if (pool.size() > POOL) {
            pool.sort(Comparator.comparingDouble(Failed::overlap));
            pool.remove(pool.size() - 1);
        }
        fails++;
        if (fails == 1 && cut > LEAST_CUT) {
            // Perhaps it was too much at once.
            cut = Math.max(LEAST_CUT, cut / 2);
            pool.clear();
            fails = 0;
        } else if (fails >= FAILS) {
            pool.clear();
            press(true);
        }
    }

    /** Whether it is shorter than the best: on cloth with a repeat it may be as long again. */
    private boolean keep() {
        double used = a.used();
        if (used >= best.length * (1 - TOO_LITTLE)) {
            return false;
        }
        a.length = used;
        best = a.snapshot();
        return true;
    }

    /** What did not come out may be given some of the length back, where it is tightest. */
    private boolean giveBack(BooleanSupplier stop) {
        double more = (best.length - a.length) / 2;
        if (more < LEAST_GIVEN * best.length) {
            return false;
        }
        a.lengthen(more);
        return separation.run(stop, 1) && keep();
    }

    /** Takes the length away somewhere: what lies behind it moves forward. */
    private void shorten(double length) {
        double less = a.length - length;
        double from = random.nextDouble() * length;
        a.length = length;
        for (int i = a.fixedCount; i < a.count; i++) {
            double wanted = a.middle(i) > from ? a.x[i] - less : a.x[i];
            Form f = a.forms.get(a.form[i]);
            double x = f.allowedX(wanted, length);
            a.place(i, a.form[i], Double.isNaN(x) ? a.x[i] : x, a.y[i]);
        }
    }
}
