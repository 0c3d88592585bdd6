package trueseam.cloth.packing;

import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** A first layout without overlap, at once: the largest first, each as far to the start of the strip as is found. */
final class FirstLayout {

    private static final int PLACES = 120;
    private static final int CLOSER = 12;

    private final Arrangement a;
    private final SplittableRandom random;

    FirstLayout(Arrangement a, SplittableRandom random) {
        this.a = a;
        this.random = random;
    }

    /** Lays all; the arrangement's length is what is used. */
    void lay() {
        double far = 0;
        for (int i = 0; i < a.fixedCount; i++) {
            Placed p = a.strip.fixed().get(i).placed();
            a.place(i, a.choices[i][0], p.x(), p.y());
            far = Math.max(far, p.x() + a.forms.get(a.choices[i][0]).polygon.maxX);
        }
        // Until it is laid, a copy waits far off the strip.
        for (int i = a.fixedCount; i < a.count; i++) {
            a.place(i, a.choices[i][0], -1e6 * a.strip.width() * (i + 1), 0);
        }
        int[] order = IntStream.range(a.fixedCount, a.count)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> -size(i)))
                .mapToInt(Integer::intValue)
                .toArray();
        for (int i : order) {
            far = Math.max(far, layOne(i, far));
        }
        a.length = a.used();
    }

    private double size(int i) {
        Polygon p = a.forms.get(a.choices[i][0]).polygon;
        return (p.maxX - p.minX) * (p.maxY - p.minY);
    }

    private double layOne(int i, double far) {
        double bestRight = Double.POSITIVE_INFINITY;
        int bestForm = -1;
        double bestX = 0;
        double bestY = 0;
        for (int k = 0; k < PLACES || bestForm < 0; k++) {
            int f = a.choices[i][random.nextInt(a.choices[i].length)];
            Form form = a.forms.get(f);
            double extent = form.polygon.maxX - form.polygon.minX;
            // After the tries the end of what is laid is free for certain.
            double room = far + extent + form.stepX;
            double y = form.allowedY(form.lowY + random.nextDouble() * (form.highY - form.lowY));
            double wanted = k < PLACES ? form.lowX + random.nextDouble() * far : form.lowX + far + form.stepX / 2;
            double x = form.allowedX(wanted, room);
            if (Double.isNaN(x) || x + form.reachX >= bestRight || a.cost(i, f, x, y, 0) > 0) {
                continue;
            }
            double gap = x - form.lowX;
            for (int c = 0; c < CLOSER; c++) {
                double nearer = form.allowedX(x - gap, room);
                if (!Double.isNaN(nearer) && nearer < x && a.cost(i, f, nearer, y, 0) == 0) {
                    x = nearer;
                } else {
                    gap /= 2;
                }
            }
            bestRight = x + form.reachX;
            bestForm = f;
            bestX = x;
            bestY = y;
        }
        a.place(i, bestForm, bestX, bestY);
        return bestRight;
    }
}
