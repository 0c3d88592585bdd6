package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trueseam.intake.drawing.Caption;

/**
 * What pages are called. A way of labelling counts when nearly every page has just one label of its kind and size, and no two pages the
 * same.
 */
final class Labels {

    /** So many of the pages have the label at least: a cover has none. */
    private static final double NEARLY_ALL = 0.75;

    /** What a label names: a row and a column, or a place in an order. */
    private enum Kind {
        LETTER_NUMBER("(?:page|sheet|tile)?\\s*([A-Za-z]{1,2})\\s?[-_.]?\\s?(\\d{1,2})", "labels of row and column"),
        NUMBER_LETTER("(?:page|sheet|tile)?\\s*(\\d{1,2})\\s?[-_.]?\\s?([A-Za-z])", "labels of row and column"),
        ROW_COLUMN(
                "r(?:ow)?\\.?\\s*(\\d{1,2}|[A-Z])[\\s,;/-]*c(?:ol(?:umn)?)?\\.?\\s*(\\d{1,2}|[A-Z])",
                "labels of row and column"),
        COLUMN_ROW(
                "c(?:ol(?:umn)?)?\\.?\\s*(\\d{1,2}|[A-Z])[\\s,;/-]*r(?:ow)?\\.?\\s*(\\d{1,2}|[A-Z])",
                "labels of row and column"),
        PAIR("(?:page|sheet|tile)?\\s*\\(?(\\d{1,2})\\s*[-.,:_x/]\\s*(\\d{1,2})\\)?", "labels of row and column"),
        COUNTED("(?:page|sheet|tile|part)?\\s*(\\d{1,3})\\s*(?:/|of)\\s*\\d{1,3}", "numbered pages"),
        NUMBERED("(?:page|sheet|tile|part|no\\.?|#)?\\s*(\\d{1,3})", "numbered pages");

        private final Pattern pattern;
        private final String words;

        Kind(String regex, String words) {
            this.pattern = Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
            this.words = words;
        }
    }

    private record Scheme(Kind kind, long sizeTenths) {}

    /**
     * A way of labelling that was found.
     *
     * @param grids layouts that it may mean, the likeliest first; empty for numbers
     * @param numbers the number of each leaf, for numbered pages; empty else
     * @param captions what is written for it, which belongs to no piece
     * @param how in words
     */
    record Found(List<Grid> grids, Map<Integer, Integer> numbers, Set<Caption> captions, String how) {}

    private Labels() {}

    /** Every way of labelling that the pages follow. */
    static List<Found> of(List<Page> pages) {
        Map<Scheme, Map<Integer, Set<String>>> texts = new LinkedHashMap<>();
        Map<Scheme, Set<Caption>> captions = new HashMap<>();
        for (Kind kind : Kind.values()) {
            for (int i = 0; i < pages.size(); i++) {
                for (Caption caption : pages.get(i).captions()) {
                    if (kind.pattern.matcher(caption.text().strip()).matches()) {
                        Scheme scheme = new Scheme(kind, Math.round(caption.heightMm() * 10));
                        texts.computeIfAbsent(scheme, s -> new HashMap<>())
                                .computeIfAbsent(i, p -> new HashSet<>())
                                .add(caption.text().strip().toUpperCase(Locale.ROOT));
                        captions.computeIfAbsent(scheme, s -> new HashSet<>()).add(caption);
                    }
                }
            }
        }
        List<Found> found = new ArrayList<>();
        texts.forEach((scheme, byPage) -> {
            if (isScheme(byPage, pages.size())) {
                found.add(found(scheme.kind, byPage, captions.get(scheme)));
            }
        });
        return found;
    }

    private static boolean isScheme(Map<Integer, Set<String>> byPage, int pages) {
        Set<String> all = new HashSet<>();
        for (Set<String> texts : byPage.values()) {
            if (texts.size() != 1 || !all.addAll(texts)) {
                return false;
            }
        }
        return byPage.size() >= 2 && byPage.size() >= NEARLY_ALL * pages;
    }

    private static Found found(Kind kind, Map<Integer, Set<String>> byPage, Set<Caption> captions) {
        Map<Integer, Cell> cells = new HashMap<>();
        Map<Integer, Integer> numbers = new HashMap<>();
        byPage.forEach((page, texts) -> {
            Matcher label = kind.pattern.matcher(texts.iterator().next());
            if (label.matches() && label.groupCount() == 2) {
                cells.put(page, new Cell(number(label.group(1)), number(label.group(2))));
            } else if (label.matches()) {
                numbers.put(page, Integer.parseInt(label.group(1)));
            }
        });
        if (cells.isEmpty()) {
            return new Found(List.of(), numbers, captions, kind.words);
        }
        Grid grid = Grid.of(cells, kind.words);
        List<Grid> grids = new ArrayList<>();
        if (grid.isProper()) {
            Grid first = kind == Kind.COLUMN_ROW ? grid.turned() : grid;
            grids.add(first);
            grids.add(first.turned());
            grids.add(first.upsideDown());
            grids.add(first.turned().upsideDown());
        }
        return new Found(grids, Map.of(), captions, kind.words);
    }

    /** A letter counts as its place in the alphabet, two as in a sheet of numbers: AA comes after Z. */
    private static int number(String text) {
        if (Character.isDigit(text.charAt(0))) {
            return Integer.parseInt(text);
        }
        int number = 0;
        for (char letter : text.toUpperCase(Locale.ROOT).toCharArray()) {
            number = number * 26 + (letter - 'A' + 1);
        }
        return number;
    }
}
