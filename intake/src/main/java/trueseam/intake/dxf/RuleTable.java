package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Vec;
import trueseam.intake.drawing.DrawingException;

/**
 * How the points of a piece move from size to size: the text file that travels beside an apparel DXF. All of its form is from memory:
 * {@code UNITS}, {@code NUMBER OF SIZES}, {@code SIZE LIST}, {@code SAMPLE SIZE}, then {@code RULE: DELTA n} with a pair of numbers for
 * each size, along and across the grade reference line and relative to the sample size.
 *
 * @param sizes the sizes in order
 * @param sampleSize the size that the rules start from
 * @param rules for each rule the movement in each size, mm
 */
public record RuleTable(List<String> sizes, String sampleSize, Map<Integer, List<Vec>> rules) {

    private static final Pattern NUMBER = Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)");
    private static final int LONGEST = 2_000_000;
    private static final int MOST_SIZES = 100;

    /** Does not change. */
    public RuleTable {
        sizes = List.copyOf(sizes);
        Map<Integer, List<Vec>> sorted = new TreeMap<>();
        rules.forEach((number, moves) -> sorted.put(number, List.copyOf(moves)));
        rules = Collections.unmodifiableMap(sorted);
    }

    /**
     * Reads a table.
     *
     * @param file what it is called, for messages
     * @param text its text
     * @return the table
     * @throws DrawingException if it names no sizes, or a rule has not one pair of numbers for each
     */
    public static RuleTable read(String file, String text) {
        if (text.length() > LONGEST) {
            throw new DrawingException(file, "", "more than " + LONGEST + " characters are no table of grade rules.");
        }
        Map<String, String> head = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        Map<Integer, List<Double>> numbers = new TreeMap<>();
        List<Double> open = new ArrayList<>();
        int line = 0;
        for (String written : text.split("\\R", -1)) {
            line++;
            Optional<Attribute> said = Attribute.of(written);
            if (said.filter(a -> a.isNamed("RULE")).isPresent()) {
                open = new ArrayList<>();
                if (numbers.put(ruleNumber(file, line, said.get().value()), open) != null) {
                    throw new DrawingException(file, "line " + line, "this rule is there twice; leave one.");
                }
            } else if (said.isPresent()) {
                head.putIfAbsent(said.get().key(), said.get().value());
            } else {
                Matcher number = NUMBER.matcher(written);
                while (number.find()) {
                    open.add(Double.parseDouble(number.group()));
                }
            }
        }
        return of(file, head, numbers);
    }

    private static int ruleNumber(String file, int line, String value) {
        Matcher named = Pattern.compile("(?i)DELTA\\s+(\\d{1,6})").matcher(value);
        if (!named.matches()) {
            throw new DrawingException(
                    file,
                    "line " + line,
                    "\"RULE: DELTA\" and a number were expected, \"" + GroupText.shortened(value) + "\" found.");
        }
        return Integer.parseInt(named.group(1));
    }

    private static RuleTable of(String file, Map<String, String> head, Map<Integer, List<Double>> numbers) {
        List<String> sizes = List.of(head.getOrDefault("SIZE LIST", "").strip().split("[\\s,]+"));
        if (sizes.get(0).isEmpty() || sizes.size() > MOST_SIZES) {
            throw new DrawingException(
                    file, "", "a line \"SIZE LIST:\" with 1 to " + MOST_SIZES + " sizes was expected.");
        }
        String sample = head.getOrDefault("SAMPLE SIZE", "");
        if (!sizes.contains(sample)) {
            throw new DrawingException(
                    file,
                    "",
                    "a line \"SAMPLE SIZE:\" with one of the sizes " + sizes + " was expected, \""
                            + GroupText.shortened(sample) + "\" found.");
        }
        double unit = UnitSearch.ofWord(head.getOrDefault("UNITS", ""))
                .orElseThrow(() ->
                        new DrawingException(file, "", "a line \"UNITS: METRIC\" or \"UNITS: ENGLISH\" was expected."))
                .mm();
        Map<Integer, List<Vec>> rules = new TreeMap<>();
        numbers.forEach((number, pairs) -> {
            if (pairs.size() != 2 * sizes.size()) {
                throw new DrawingException(
                        file,
                        "rule " + number,
                        "a pair of numbers for each of the " + sizes.size() + " sizes was expected, " + pairs.size()
                                + " numbers found.");
            }
            List<Vec> moves = new ArrayList<>();
            for (int i = 0; i < sizes.size(); i++) {
                moves.add(move(file, number, pairs.get(2 * i) * unit, pairs.get(2 * i + 1) * unit));
            }
            rules.put(number, moves);
        });
        return new RuleTable(sizes, sample, rules);
    }

    private static Vec move(String file, int rule, double along, double across) {
        try {
            return new Vec(along, across);
        } catch (GeometryException noNumber) {
            throw new DrawingException(file, "rule " + rule, "a number is larger than any pattern.");
        }
    }

    /**
     * How far a point moves from the sample size to another.
     *
     * @param rule number of its rule
     * @param size one of the sizes
     * @return along and across the grade reference line, mm
     * @throws IllegalArgumentException if there is no such rule or size
     */
    public Vec move(int rule, String size) {
        List<Vec> moves = rules.get(rule);
        if (moves == null || !sizes.contains(size)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "no rule %d or no size %s; rules are %s, sizes %s",
                    rule,
                    size,
                    rules.keySet(),
                    sizes));
        }
        return moves.get(sizes.indexOf(size)).minus(moves.get(sizes.indexOf(sampleSize)));
    }
}
