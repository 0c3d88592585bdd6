package trueseam.intake.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A size as people write it: {@code 14}, {@code Size 14}, {@code EU 38}, {@code XL}, {@code 2-4}, {@code 10 (EU 38)}.
 *
 * @param label the size without the word "size"
 * @param bare whether it is a number alone, which may count anything
 * @param rank smaller for smaller sizes, among sizes written alike
 */
record SizeWord(String label, boolean bare, double rank) {

    private static final String LETTERS = "(?:x{0,4}s|m|x{0,4}l|[2-6]xs|[2-6]xl|small|medium|large)";
    private static final String NUMBER = "\\d{1,3}(?:[.,]5)?[wpt]?";
    private static final String ONE = "(?:" + LETTERS + "|" + NUMBER + ")";
    private static final String CORE = ONE + "(?:\\s?[-\u2013/]\\s?" + ONE + ")?";
    private static final String SAID =
            "(?:size|sizes|sz|gr|gr\u00f6\u00dfe|groesse|taille|talla|taglia|maat|misses|women|men|age|years)";
    private static final String COUNTRY = "(?:eu|eur|us|uk|de|fr|it|es|au|jp)";
    private static final Pattern WHOLE = Pattern.compile(
            "(?<said>" + SAID + "[\\s.:_-]*)?(?<country>" + COUNTRY + "[\\s._-]*)?(?<core>" + CORE + ")"
                    + "(?<more>(?:\\s*[(/,|]\\s*" + COUNTRY + "?\\s*" + CORE + "\\s*\\)?)*)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern WITHIN =
            Pattern.compile("(?<![\\p{L}\\d])size[\\s.:_-]*(" + CORE + ")(?![\\p{L}\\d])", Pattern.CASE_INSENSITIVE);
    private static final Pattern FIRST = Pattern.compile("[\\p{L}\\d.,]+");

    /**
     * Reads a size.
     *
     * @param text a name of a layer, or what is written
     * @return the size, or nothing if it is none
     */
    static Optional<SizeWord> of(String text) {
        String plain = text.strip().replace('_', ' ').replaceAll("\\s+", " ");
        Matcher whole = WHOLE.matcher(plain);
        if (whole.matches()) {
            String core = whole.group("core");
            String country = whole.group("country") == null
                    ? ""
                    : whole.group("country").strip().replaceAll("[._-]$", "").toUpperCase(Locale.ROOT) + " ";
            boolean bare = whole.group("said") == null && country.isEmpty() && Character.isDigit(core.charAt(0));
            return Optional.of(new SizeWord(country + tidy(core) + whole.group("more"), bare, rank(core)));
        }
        Matcher within = WITHIN.matcher(plain);
        return within.find()
                ? Optional.of(new SizeWord(tidy(within.group(1)), false, rank(within.group(1))))
                : Optional.empty();
    }

    /**
     * Reads a row of sizes, such as {@code 8 10 12 14} or {@code Sizes: XS, S, M}.
     *
     * @param text what is written
     * @return two sizes or more that rise, else none
     */
    static List<SizeWord> row(String text) {
        String plain = text.strip().replaceFirst("(?i)^" + SAID + "[\\s.:]+", "");
        List<SizeWord> row = new ArrayList<>();
        for (String part : plain.split("[\\s,;|]+")) {
            Optional<SizeWord> one = of(part);
            if (one.isEmpty()
                    || (!row.isEmpty()
                            && row.get(row.size() - 1).rank() >= one.get().rank())) {
                return List.of();
            }
            row.add(one.get());
        }
        return row.size() < 2 ? List.of() : row;
    }

    /** Whether somebody who writes this size means that one. */
    boolean isMeantBy(String text) {
        String wanted = of(text).map(SizeWord::label).orElse(text.strip());
        if (label.equalsIgnoreCase(wanted)) {
            return true;
        }
        for (String part : label.split("[^\\p{L}\\d.,\u2013-]+")) {
            if (part.equalsIgnoreCase(wanted)) {
                return true;
            }
        }
        return false;
    }

    private static String tidy(String core) {
        String upper = core.toUpperCase(Locale.ROOT);
        String word =
                switch (upper) {
                    case "SMALL" -> "S";
                    case "MEDIUM" -> "M";
                    case "LARGE" -> "L";
                    default -> upper;
                };
        return word.matches("0\\d") ? word.substring(1) : word;
    }

    private static double rank(String core) {
        Matcher first = FIRST.matcher(tidy(core));
        String one = first.find() ? first.group() : core;
        if (Character.isDigit(one.charAt(0)) && !one.matches("\\dX[SL]")) {
            return Double.parseDouble(one.replaceAll("[^\\d.,]", "").replace(',', '.'));
        }
        int many = Character.isDigit(one.charAt(0))
                ? one.charAt(0) - '0'
                : (int) one.chars().filter(c -> c == 'X').count();
        return switch (one.charAt(one.length() - 1)) {
            case 'S' -> -1 - many;
            case 'L' -> 1 + many;
            default -> 0;
        };
    }
}
