package trueseam.benchmarks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import trueseam.benchmarks.ClothBySize.Growth;
import trueseam.output.svg.Svg;

/**
 * Draws needed lengths over sizes, a panel for each garment and a line for each width: metres on the left, yards on the right. Every line is named at
 * its end; widths sold in inches are dashed, so that lines that nearly cover each other are told apart without colour.
 */
final class ClothBySizePicture {

    private static final double WIDTH = 900;
    private static final double LEFT = 74;
    private static final double LAST_SIZE = 690;
    private static final double RIGHT = 826;
    private static final double TOP = 64;
    private static final double TALL = 380;
    private static final double PANEL = 530;
    private static final double LABEL = 17;
    private static final double TICK_MM = 250;
    private static final double EIGHTH_YARD_MM = 914.4 / 8;

    private final List<String> sizes;
    private final List<Panel> panels;
    private final Svg svg = new Svg();
    private final double lowMm;
    private final double highMm;

    /**
     * One garment.
     *
     * @param title what is laid
     * @param lines a line for each width
     */
    record Panel(String title, List<Growth> lines) {}

    ClothBySizePicture(List<String> sizes, List<Panel> panels) {
        this.sizes = sizes;
        this.panels = panels;
        List<Double> all = panels.stream()
                .flatMap(p -> p.lines().stream())
                .flatMap(g -> g.lengthsMm().stream())
                .toList();
        lowMm = TICK_MM * Math.floor(all.stream().min(Comparator.naturalOrder()).orElseThrow() / TICK_MM);
        highMm = TICK_MM * Math.ceil(all.stream().max(Comparator.naturalOrder()).orElseThrow() / TICK_MM);
    }

    String svg() {
        double height = PANEL * panels.size();
        svg.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 " + Svg.number(WIDTH) + " " + Svg.number(height),
                "width",
                WIDTH,
                "height",
                height,
                "font-family",
                "sans-serif",
                "font-size",
                14,
                "fill",
                "#1a1a1a");
        svg.element("title", "The length of cloth that a garment takes, by size and width of the cloth");
        svg.empty("rect", "width", WIDTH, "height", height, "fill", "#ffffff");
        for (int i = 0; i < panels.size(); i++) {
            svg.open("g", "transform", "translate(0 " + Svg.number(i * PANEL) + ")");
            axes(panels.get(i).title());
            panels.get(i).lines().forEach(this::line);
            labels(panels.get(i).lines());
            if (panels.get(i).lines().stream().anyMatch(g -> !g.single().isEmpty())) {
                words("Hollow: in a single layer, as half the width is too narrow.", LEFT, TOP + TALL + 68, "start");
            }
            svg.close();
        }
        return svg.close().text() + "\n";
    }

    private void axes(String title) {
        svg.element("text", title + ": length needed", "x", LEFT, "y", 26, "font-size", 18, "font-weight", "bold");
        words("metres", LEFT - 10, TOP - 14, "end");
        words("yards", RIGHT + 10, TOP - 14, "start");
        for (double mm = lowMm; mm <= highMm + 1; mm += TICK_MM) {
            rule(LEFT, y(mm), RIGHT, y(mm), "#d6d6d6");
            words(String.format(Locale.ROOT, "%.2f", mm / 1000), LEFT - 10, y(mm) + 5, "end");
        }
        for (long n = (long) Math.ceil(lowMm / EIGHTH_YARD_MM); n * EIGHTH_YARD_MM <= highMm; n++) {
            double at = y(n * EIGHTH_YARD_MM);
            rule(RIGHT, at, RIGHT + (n % 2 == 0 ? 6 : 3), at, "#1a1a1a");
            if (n % 2 == 0) {
                words(ClothBySize.yards(n * EIGHTH_YARD_MM).replace(" yd", ""), RIGHT + 10, at + 5, "start");
            }
        }
        for (int i = 0; i < sizes.size(); i++) {
            rule(x(i), TOP + TALL, x(i), TOP + TALL + 5, "#1a1a1a");
            words(sizes.get(i), x(i), TOP + TALL + 22, "middle");
        }
        rule(LEFT, TOP, LEFT, TOP + TALL, "#1a1a1a");
        rule(RIGHT, TOP, RIGHT, TOP + TALL, "#1a1a1a");
        rule(LEFT, TOP + TALL, RIGHT, TOP + TALL, "#1a1a1a");
        words("size of the misses' table", (LEFT + LAST_SIZE) / 2, TOP + TALL + 44, "middle");
        words("width of the cloth", LAST_SIZE - 20, TOP - 14, "start");
    }

    private void line(Growth growth) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < sizes.size(); i++) {
            double mm = growth.lengthsMm().get(i);
            path.append(i == 0 ? 'M' : 'L').append(Svg.number(x(i))).append(' ').append(Svg.number(y(mm)));
            // Hollow: laid in a single layer, as half the width is too narrow.
            boolean single = growth.single().contains(sizes.get(i));
            svg.empty(
                    "circle",
                    "cx",
                    x(i),
                    "cy",
                    y(mm),
                    "r",
                    single ? 5 : 3,
                    "fill",
                    single ? "#ffffff" : colour(growth),
                    "stroke",
                    colour(growth),
                    "stroke-width",
                    1.5);
        }
        svg.empty(
                "path",
                "d",
                path,
                "fill",
                "none",
                "stroke",
                colour(growth),
                "stroke-width",
                2,
                "stroke-dasharray",
                inches(growth.widthMm()) ? "7 4" : "none");
    }

    /** At the ends of the lines, pushed apart where lines end near each other. */
    private void labels(List<Growth> lines) {
        List<Growth> fromTop = new ArrayList<>(lines);
        fromTop.sort(Comparator.comparingDouble(g -> y(last(g))));
        double[] at = new double[fromTop.size()];
        for (int i = 0; i < at.length; i++) {
            at[i] = Math.max(y(last(fromTop.get(i))), i == 0 ? TOP + 8 : at[i - 1] + LABEL);
        }
        double most = TOP + TALL - 8;
        for (int i = at.length - 1; i >= 0; i--) {
            at[i] = Math.min(at[i], most);
            most = at[i] - LABEL;
        }
        for (int i = 0; i < at.length; i++) {
            Growth growth = fromTop.get(i);
            rule(LAST_SIZE + 7, y(last(growth)), LAST_SIZE + 34, at[i], colour(growth));
            svg.element(
                    "text",
                    width(growth.widthMm()),
                    "x",
                    LAST_SIZE + 39,
                    "y",
                    at[i] + 5,
                    "fill",
                    colour(growth),
                    "font-weight",
                    "bold");
        }
    }

    private static double last(Growth growth) {
        return growth.lengthsMm().get(growth.lengthsMm().size() - 1);
    }

    static String width(double mm) {
        return inches(mm) ? Math.round(mm / 25.4) + " in" : Math.round(mm / 10) + " cm";
    }

    private static boolean inches(double mm) {
        return Math.abs(mm / 10 - Math.round(mm / 10)) > 1e-6;
    }

    /** Widths that are nearly one have one colour; all are dark enough on white. */
    private static String colour(Growth growth) {
        double mm = growth.widthMm();
        return mm < 1000 ? "#8a3b12" : mm < 1200 ? "#1f5fa8" : mm < 1450 ? "#2a7a34" : "#7a2a86";
    }

    private double x(int size) {
        return LEFT + 30 + size * (LAST_SIZE - LEFT - 30) / (sizes.size() - 1);
    }

    private double y(double mm) {
        return TOP + TALL * (highMm - mm) / (highMm - lowMm);
    }

    private void rule(double x1, double y1, double x2, double y2, String stroke) {
        svg.empty("line", "x1", x1, "y1", y1, "x2", x2, "y2", y2, "stroke", stroke, "stroke-width", 1);
    }

    private void words(String text, double x, double y, String anchor) {
        svg.element("text", text, "x", x, "y", y, "text-anchor", anchor);
    }
}
