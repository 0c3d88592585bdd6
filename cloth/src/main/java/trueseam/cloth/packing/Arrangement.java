package trueseam.cloth.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Every copy somewhere on the strip, overlaps and all, with the weight that each pair's overlap has at present. */
final class Arrangement {

    /** Overlap of less than this part of the strip's width is none: rounding, a hundredth of a hair on cloth. */
    private static final double NONE = 1e-7;

    final Strip strip;
    final List<Form> forms;
    final Pairs pairs;
    final int count;
    final int fixedCount;

    /** Forms that each copy may take. */
    final int[][] choices;

    final int[] form;
    final double[] x;
    final double[] y;
    final double none;
    double length;

    private final double[] left;
    private final double[] right;
    private final double[] low;
    private final double[] high;
    private final double[] weight;
    private final double[] overlap;
    private final boolean[] flaw;
    private final Neighbours neighbours;
    private final Polygon[] polygons;

    /** How many places were weighed: what effort is counted in. */
    long weighed;

    Arrangement(Strip strip, List<Form> forms, Pairs pairs, List<int[]> choices) {
        this.strip = strip;
        this.forms = forms;
        this.pairs = pairs;
        this.choices = choices.toArray(int[][]::new);
        count = choices.size();
        fixedCount = strip.fixed().size();
        none = NONE * strip.width();
        form = new int[count];
        x = new double[count];
        y = new double[count];
        left = new double[count];
        right = new double[count];
        low = new double[count];
        high = new double[count];
        weight = new double[count * count];
        overlap = new double[count * count];
        flaw = new boolean[count];
        neighbours = new Neighbours(count, strip.width());
        polygons = forms.stream().map(f -> f.polygon).toArray(Polygon[]::new);
        for (int i = 0; i < fixedCount; i++) {
            flaw[i] = strip.fixed().get(i).flaw();
        }
        forgetWeights();
    }

    static Arrangement of(Strip strip) {
        List<Form> forms = new ArrayList<>();
        List<int[]> ofPart = new ArrayList<>();
        for (int p = 0; p < strip.parts().size(); p++) {
            int from = forms.size();
            forms.addAll(Form.all(p, strip.parts().get(p), strip.width()));
            ofPart.add(IntStream.range(from, forms.size())
                    .filter(f -> !Double.isNaN(forms.get(f).allowedY(0)))
                    .toArray());
        }
        List<int[]> choices = new ArrayList<>();
        int[] left = strip.parts().stream().mapToInt(StripPart::copies).toArray();
        for (Strip.Fixed f : strip.fixed()) {
            int part = f.placed().part();
            int only = -1;
            for (int k = 0; k < forms.size(); k++) {
                if (forms.get(k).part == part
                        && forms.get(k).way.equals(f.placed().way())) {
                    only = k;
                }
            }
            if (only < 0) {
                only = forms.size();
                forms.add(Form.of(part, strip.parts().get(part), f.placed().way(), strip.width()));
            }
            choices.add(new int[] {only});
            left[part]--;
        }
        for (int p = 0; p < left.length; p++) {
            if (left[p] > 0 && ofPart.get(p).length == 0) {
                throw new DoesNotFitException(strip.parts().get(p).name());
            }
            for (int k = 0; k < left[p]; k++) {
                choices.add(ofPart.get(p));
            }
        }
        return new Arrangement(strip, List.copyOf(forms), new Pairs(forms), choices);
    }

    /** Another arrangement of the same strip, with what is known of its pairs shared. */
    Arrangement another() {
        return new Arrangement(strip, forms, pairs, Arrays.asList(choices));
    }

    void forgetWeights() {
        Arrays.fill(weight, 1);
    }

    /** Lays a copy down; its overlaps are found. */
    void place(int i, int f, double px, double py) {
        put(i, f, px, py);
        for (int j = 0; j < count; j++) {
            if (j != i) {
                double d = depth(i, j);
                overlap[i * count + j] = d;
                overlap[j * count + i] = d;
            }
        }
    }

    private void put(int i, int f, double px, double py) {
        form[i] = f;
        x[i] = px;
        y[i] = py;
        Polygon p = forms.get(f).polygon;
        left[i] = px + p.minX;
        right[i] = px + p.maxX;
        low[i] = py + p.minY;
        high[i] = py + p.maxY;
        neighbours.put(i, left[i], right[i], low[i], high[i]);
    }

    /** All laid anew. */
    void load(Snapshot from) {
        length = from.length;
        neighbours.length(length);
        for (int i = 0; i < count; i++) {
            put(i, from.form[i], from.x[i], from.y[i]);
        }
        for (int i = 0; i < count; i++) {
            overlap[i * count + i] = 0;
            for (int j = i + 1; j < count; j++) {
                double d = depth(i, j);
                overlap[i * count + j] = d;
                overlap[j * count + i] = d;
            }
        }
    }

    private double depth(int i, int j) {
        if ((i < fixedCount && j < fixedCount)
                || left[i] >= right[j]
                || left[j] >= right[i]
                || low[i] >= high[j]
                || low[j] >= high[i]) {
            return 0;
        }
        Pairs.Pair pair = pairs.of(form[i], form[j]);
        double d = pair.depth(x[j] - x[i], y[j] - y[i]);
        return d > none ? pair.loss(d) : 0;
    }

    Snapshot snapshot() {
        return new Snapshot(length, form.clone(), x.clone(), y.clone());
    }

    /**
     * The weighted overlap of a copy if it lay so; once above the bound it may be anything above it.
     *
     * @param ways told the ways out of the two overlaps that weigh most; null where nobody asks
     */
    double cost(int i, int f, double px, double py, double bound, WaysOut ways) {
        weighed++;
        Polygon p = polygons[f];
        double l = px + p.minX;
        double r = px + p.maxX;
        double lo = py + p.minY;
        double hi = py + p.maxY;
        int begin = neighbours.column(l);
        int end = neighbours.column(r);
        int bottom = neighbours.row(lo);
        int top = neighbours.row(hi);
        if (ways != null) {
            ways.clear();
        }
        double sum = 0;
        for (int word = 0; word < neighbours.words; word++) {
            for (long bits = neighbours.in(word, begin, end, bottom, top); bits != 0; bits &= bits - 1) {
                int j = (word << 6) + Long.numberOfTrailingZeros(bits);
                if (j == i || l >= right[j] || left[j] >= r || lo >= high[j] || low[j] >= hi) {
                    continue;
                }
                Pairs.Pair pair = pairs.of(f, form[j]);
                double d =
                        ways == null ? pair.depth(x[j] - px, y[j] - py) : pair.wayOut(x[j] - px, y[j] - py, ways.way);
                if (d <= none) {
                    continue;
                }
                double weighted = weight[i * count + j] * pair.loss(d);
                sum += weighted;
                if (sum > bound) {
                    return sum;
                }
                if (ways != null) {
                    // The other would go that way; this one goes the opposite.
                    ways.add(weighted, -ways.way[0], -ways.way[1]);
                }
            }
        }
        return sum;
    }

    /** As above, for one who asks for no ways out. */
    double cost(int i, int f, double px, double py, double bound) {
        return cost(i, f, px, py, bound, null);
    }

    double overlapOf(int i) {
        double sum = 0;
        for (int j = 0; j < count; j++) {
            sum += overlap[i * count + j];
        }
        return sum;
    }

    double total() {
        double sum = 0;
        for (double d : overlap) {
            sum += d;
        }
        return sum / 2;
    }

    /** Overlaps that stay become heavier, the deeper the more; others lose what they had gained. */
    void reweigh(double least, double most, double decay) {
        double deepest = 0;
        for (double d : overlap) {
            deepest = Math.max(deepest, d);
        }
        for (int k = 0; k < weight.length; k++) {
            weight[k] = overlap[k] > 0
                    ? weight[k] * (least + (most - least) * overlap[k] / deepest)
                    : Math.max(1, weight[k] * decay);
        }
    }

    /** How much length is used. */
    double used() {
        double far = 0;
        for (int i = 0; i < count; i++) {
            if (!flaw[i]) {
                far = Math.max(far, right[i]);
            }
        }
        return far;
    }

    /** Gives more length, between the two copies that lie deepest in each other. */
    void lengthen(double more) {
        double deepest = 0;
        double from = length;
        for (int i = 0; i < count; i++) {
            for (int j = i + 1; j < count; j++) {
                if (overlap[i * count + j] > deepest) {
                    deepest = overlap[i * count + j];
                    from = (middle(i) + middle(j)) / 2;
                }
            }
        }
        double[] moved = x.clone();
        for (int i = fixedCount; i < count; i++) {
            double there = forms.get(form[i]).allowedX(x[i] + more, length + more);
            if (middle(i) >= from && !Double.isNaN(there)) {
                moved[i] = there;
            }
        }
        load(new Snapshot(length + more, form.clone(), moved, y.clone()));
    }

    double middle(int i) {
        return (left[i] + right[i]) / 2;
    }

    double middleAcross(int i) {
        return (low[i] + high[i]) / 2;
    }

    double extent(int i) {
        return Math.max(right[i] - left[i], high[i] - low[i]);
    }

    StripLayout layout() {
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Form f = forms.get(form[i]);
            placed.add(new Placed(f.part, f.way, x[i], y[i]));
        }
        return new StripLayout(used(), placed);
    }

    /** Where everything lay. */
    static final class Snapshot {
        final double length;
        final int[] form;
        final double[] x;
        final double[] y;

        Snapshot(double length, int[] form, double[] x, double[] y) {
            this.length = length;
            this.form = form;
            this.x = x;
            this.y = y;
        }
    }
}
