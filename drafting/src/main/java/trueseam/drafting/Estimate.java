package trueseam.drafting;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.body.BodyValue;
import trueseam.garment.body.Origin;
import trueseam.garment.measure.Measure;

/**
 * One line of {@code estimates.csv}: a measure as a constant plus factors times other measures.
 *
 * @param build whose line it is, or nothing for everybody
 * @param measure what it estimates
 * @param constantMm the constant, mm
 * @param factors the factor of each measure it is made from
 * @param leastMm the estimate is not carried below, mm
 * @param mostMm the estimate is not carried above, mm
 * @param sdMm spread of the surveyed people about the line, mm; 0 where it does not come from the survey
 * @param people how many people it was fitted to; 0 where it does not come from the survey
 * @param survey the survey's columns it was fitted to, or empty
 * @param note where it comes from, or how the survey took it
 */
record Estimate(
        Optional<Build> build,
        Measure measure,
        double constantMm,
        Map<Measure, Double> factors,
        double leastMm,
        double mostMm,
        double sdMm,
        int people,
        String survey,
        String note) {

    private static final List<Estimate> ALL = readAll();

    static List<Estimate> all() {
        return ALL;
    }

    /** Adds every measure that is missing and can be estimated. */
    static void complete(Map<Measure, BodyValue> known, Build build) {
        for (Estimate line : ALL) {
            if (line.build().map(build::equals).orElse(true)
                    && !known.containsKey(line.measure)
                    && known.keySet().containsAll(line.factors.keySet())) {
                known.put(line.measure, line.of(known));
            }
        }
    }

    private BodyValue of(Map<Measure, BodyValue> known) {
        double mm = constantMm;
        for (Map.Entry<Measure, Double> factor : factors.entrySet()) {
            mm += factor.getValue() * known.get(factor.getKey()).mm();
        }
        return new BodyValue(Math.min(mostMm, Math.max(leastMm, mm)), 0, 1, Origin.ESTIMATED, sentence());
    }

    private String sentence() {
        String from = String.join(
                " and ", factors.keySet().stream().map(Measure::term).sorted().toList());
        if (survey.isEmpty()) {
            return "Estimated from " + from + " (" + note + "); measure it.";
        }
        return String.format(
                Locale.ROOT,
                "Estimated from %s by the line through %d surveyed people, two in three of whom are within %.0f mm of it%s;"
                        + " measure it.",
                from,
                people,
                sdMm,
                note.isEmpty() ? "" : " (" + note + ")");
    }

    private static List<Estimate> readAll() {
        List<Estimate> lines = new ArrayList<>();
        boolean header = true;
        for (String line : text().lines().toList()) {
            if (!line.startsWith("#")) {
                if (!header) {
                    lines.add(read(line.split(";", -1)));
                }
                header = false;
            }
        }
        return List.copyOf(lines);
    }

    private static Estimate read(String[] cells) {
        Map<Measure, Double> factors = new EnumMap<>(Measure.class);
        String[] words = cells[3].split(" ");
        for (int i = 0; i + 1 < words.length; i += 2) {
            factors.put(Measure.valueOf(words[i]), Double.valueOf(words[i + 1]));
        }
        return new Estimate(
                "ALL".equals(cells[0]) ? Optional.empty() : Optional.of(Build.valueOf(cells[0])),
                Measure.valueOf(cells[1]),
                Double.parseDouble(cells[2]),
                factors,
                cells[4].isEmpty() ? 0 : Double.parseDouble(cells[4]),
                cells[5].isEmpty() ? Double.MAX_VALUE : Double.parseDouble(cells[5]),
                cells[6].isEmpty() ? 0 : Double.parseDouble(cells[6]),
                cells[7].isEmpty() ? 0 : Integer.parseInt(cells[7]),
                cells[8],
                cells[9]);
    }

    private static String text() {
        try (InputStream in = Estimate.class.getResourceAsStream("estimates.csv")) {
            if (in == null) {
                throw new IllegalStateException("estimates.csv is missing beside " + Estimate.class.getName());
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("estimates.csv cannot be read", e);
        }
    }
}
