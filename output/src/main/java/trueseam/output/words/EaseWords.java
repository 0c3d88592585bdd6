package trueseam.output.words;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trueseam.garment.length.LengthFormat;

/**
 * Where an ease comes from, said in full: the table of wearing ease names its publications by marks and gives its figures in
 * inches; a reader knows neither.
 *
 * @param show the user's unit
 */
public record EaseWords(LengthFormat show) {

    /** A publication as the table marks it, and its title. */
    private record Publication(String mark, String title) {}

    private static final List<Publication> PUBLICATIONS = List.of(
            new Publication("THR-SLV", "Set-in Sleeve Solutions, in Threads magazine:"),
            new Publication("SSH", "Clothing: Fashion, Fabrics and Construction, a sewing handbook:"),
            new Publication("CWU16", "Ease in Clothing, a costume construction text of Central Washington University:"),
            new Publication("NM209", "a guide of New Mexico State University on altering trousers:"),
            new Publication("NM228", "a guide of New Mexico State University on altering patterns:"),
            new Publication("EASE-W", "an encyclopedia's entry on ease"),
            new Publication("MPC", "Metric Pattern Cutting for Women's Wear:"),
            new Publication("web:minease", "a web note on least ease:"),
            new Publication("CP", "common practice"));

    private static final Pattern MARKS = Pattern.compile("THR-SLV|SSH|CWU16|NM209|NM228|EASE-W|MPC|web:minease|CP");

    /** Figures of inches: a whole number, a fraction, or both. */
    private static final Pattern FIGURE = Pattern.compile("(?:(\\d+) )?(\\d+)/(\\d+)|(\\d+)");

    private static final double INCH_MM = 25.4;

    /**
     * Whether a source names publications or common practice by their marks.
     *
     * @param source as the table of ease gives it
     * @return false for sentences such as {@code stated by the pattern}
     */
    public static boolean isMarked(String source) {
        return MARKS.matcher(source).find();
    }

    /**
     * The few words that a table has room for.
     *
     * @param source as the table of ease gives it
     * @return for example {@code published}, {@code common practice}; a source without marks as it is
     */
    public static String brief(String source) {
        if (!isMarked(source)) {
            return source;
        }
        String others = source.replaceAll("\\bCP\\b", "");
        return isMarked(others) ? "published" : "common practice";
    }

    /**
     * The whole source.
     *
     * @param source as the table of ease gives it, its figures in inches
     * @return with titles for marks and lengths in the user's unit
     */
    public String full(String source) {
        if (!isMarked(source)) {
            return source;
        }
        StringBuilder said = new StringBuilder();
        Matcher mark = MARKS.matcher(source);
        int done = 0;
        while (mark.find()) {
            said.append(figures(source.substring(done, mark.start())));
            said.append(title(mark.group()));
            done = mark.end();
        }
        said.append(figures(source.substring(done)));
        return said.toString().replace("::", ":").strip();
    }

    private static String title(String mark) {
        return PUBLICATIONS.stream()
                .filter(p -> p.mark().equals(mark))
                .findFirst()
                .orElseThrow()
                .title();
    }

    private String figures(String text) {
        Matcher figure = FIGURE.matcher(text);
        StringBuilder said = new StringBuilder();
        while (figure.find()) {
            figure.appendReplacement(said, Matcher.quoteReplacement(show.show(inches(figure) * INCH_MM)));
        }
        return figure.appendTail(said).toString();
    }

    private static double inches(Matcher figure) {
        if (figure.group(4) != null) {
            return Double.parseDouble(figure.group(4));
        }
        double whole = figure.group(1) == null ? 0 : Double.parseDouble(figure.group(1));
        return whole + Double.parseDouble(figure.group(2)) / Double.parseDouble(figure.group(3));
    }
}
