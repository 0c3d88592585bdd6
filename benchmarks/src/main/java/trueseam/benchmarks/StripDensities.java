package trueseam.benchmarks;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import trueseam.cloth.packing.Strip;
import trueseam.cloth.packing.StripLayout;
import trueseam.cloth.packing.StripPart;
import trueseam.cloth.packing.StripSearch;
import trueseam.cloth.packing.Way;
import trueseam.cloth.proof.StripProof;
import trueseam.geometry.Point;

/**
 * How dense are our layouts of the published instances (data/layout, sources in its README) after some seconds, against the densest known?
 * Each time is a search of its own, from the same seed. Every layout on the way is proved.
 *
 * <p>Time is by the clock, or with --cpu by the processor's seconds of the whole program divided by the seekers: what the clock would say on
 * a machine that does nothing else.
 */
public final class StripDensities {

    private static final int SEEKERS = 2;
    private static final Path DATA = Path.of("data", "layout");
    private static final List<String> ASKED = List.of(
            "shirts",
            "trousers",
            "swim",
            "albano",
            "dagli",
            "mao",
            "marques",
            "gardeyn0",
            "gardeyn1",
            "gardeyn2",
            "gardeyn3");

    private final double[] marks;
    private final boolean cpu;
    private final long seed;
    private final double[] gaps;

    private StripDensities(double[] marks, boolean cpu, long seed) {
        this.marks = marks;
        this.cpu = cpu;
        this.seed = seed;
        gaps = new double[marks.length];
    }

    /**
     * Runs.
     *
     * @param args --cpu, --seconds=10,60, --seed=N, and the instances; all of the where none is named
     * @throws IOException if an instance cannot be read
     */
    public static void main(String[] args) throws IOException {
        double[] marks = {10, 60};
        boolean cpu = false;
        long seed = 1;
        List<String> names = new ArrayList<>();
        for (String arg : args) {
            if (arg.equals("--cpu")) {
                cpu = true;
            } else if (arg.startsWith("--seconds=")) {
                marks = Arrays.stream(arg.substring(10).split(","))
                        .mapToDouble(Double::parseDouble)
                        .toArray();
            } else if (arg.startsWith("--seed=")) {
                seed = Long.parseLong(arg.substring(7));
            } else {
                names.add(arg);
            }
        }
        new StripDensities(marks, cpu, seed).run(names.isEmpty() ? ASKED : names);
    }

    private void run(List<String> names) throws IOException {
        StringBuilder head = new StringBuilder(String.format("%-10s %8s", "instance", "known"));
        for (double mark : marks) {
            head.append(String.format(Locale.ROOT, " %8.0f s  below", mark));
        }
        System.out.println(head);
        for (String name : names) {
            one(name);
        }
        StringBuilder mean = new StringBuilder(String.format("%-10s %8s", "mean", ""));
        for (double gap : gaps) {
            mean.append(String.format(Locale.ROOT, " %10s %6.2f", "", gap / names.size()));
        }
        System.out.println(mean);
    }

    private void one(String name) throws IOException {
        Strip strip = read(name);
        double known = Files.readAllLines(DATA.resolve("instances.csv")).stream()
                .map(row -> row.split(",", -1))
                .filter(cells -> cells[0].equals(name))
                .mapToDouble(cells -> Double.parseDouble(cells[9]))
                .findFirst()
                .orElseThrow();
        StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%-10s %8.2f", name, known));
        for (int k = 0; k < marks.length; k++) {
            double density = 100 * density(strip, search(name, strip, marks[k]).length());
            gaps[k] += known - density;
            row.append(String.format(Locale.ROOT, " %10.2f %6.2f", density, known - density));
        }
        System.out.println(row);
    }

    private StripLayout search(String name, Strip strip, double most) {
        double began = seconds();
        return StripSearch.run(
                strip, seed, SEEKERS, rounds -> (seconds() - began) / most, p -> proved(name, strip, p.layout()));
    }

    private double seconds() {
        return cpu
                ? ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime()
                        / 1e9
                        / SEEKERS
                : System.nanoTime() / 1e9;
    }

    private static void proved(String name, Strip strip, StripLayout layout) {
        List<String> faults = StripProof.faults(strip, layout, 1e-5 * strip.width());
        if (!faults.isEmpty()) {
            throw new IllegalStateException(name + ": " + faults);
        }
    }

    private static Strip read(String name) throws IOException {
        JsonNode n = new ObjectMapper()
                .readTree(DATA.resolve("json").resolve(name + ".json").toFile());
        List<StripPart> parts = new ArrayList<>();
        for (JsonNode item : n.get("items")) {
            List<Way> ways = new ArrayList<>();
            item.get("allowed_orientations").forEach(turn -> ways.add(new Way(turn.asDouble(), false)));
            List<Point> outline = new ArrayList<>();
            item.get("shape")
                    .get("data")
                    .forEach(p ->
                            outline.add(new Point(p.get(0).asDouble(), p.get(1).asDouble())));
            // The first corner is repeated at the end.
            outline.remove(outline.size() - 1);
            parts.add(StripPart.free(
                    item.get("id").asText(), outline, item.get("demand").asInt(), ways));
        }
        return new Strip(n.get("strip_height").asDouble(), parts, List.of());
    }

    private static double density(Strip strip, double length) {
        double area = 0;
        for (StripPart part : strip.parts()) {
            double twice = 0;
            for (int i = 0, j = part.outline().size() - 1; i < part.outline().size(); j = i++) {
                Point a = part.outline().get(j);
                Point b = part.outline().get(i);
                twice += a.x() * b.y() - b.x() * a.y();
            }
            area += part.copies() * Math.abs(twice) / 2;
        }
        return area / (strip.width() * length);
    }
}
