package trueseam.intake.svg;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Colours as {@code #rrggbb}. Source: CSS 2.1, 4.3.6, and the basic names of SVG 1.1, 4.4. */
final class Colours {

    private static final Pattern RGB =
            Pattern.compile("rgb\\(\\s*(\\d{1,3})%?\\s*,\\s*(\\d{1,3})%?\\s*,\\s*(\\d{1,3})%?\\s*\\)");

    private static final Map<String, String> NAMES = Map.ofEntries(
            Map.entry("black", "#000000"),
            Map.entry("white", "#ffffff"),
            Map.entry("red", "#ff0000"),
            Map.entry("green", "#008000"),
            Map.entry("blue", "#0000ff"),
            Map.entry("lime", "#00ff00"),
            Map.entry("cyan", "#00ffff"),
            Map.entry("aqua", "#00ffff"),
            Map.entry("magenta", "#ff00ff"),
            Map.entry("fuchsia", "#ff00ff"),
            Map.entry("yellow", "#ffff00"),
            Map.entry("orange", "#ffa500"),
            Map.entry("purple", "#800080"),
            Map.entry("brown", "#a52a2a"),
            Map.entry("pink", "#ffc0cb"),
            Map.entry("gray", "#808080"),
            Map.entry("grey", "#808080"),
            Map.entry("silver", "#c0c0c0"),
            Map.entry("maroon", "#800000"),
            Map.entry("navy", "#000080"),
            Map.entry("teal", "#008080"),
            Map.entry("olive", "#808000"));

    private Colours() {}

    /** The colour, or the word itself where it is none that is known: lines of one unknown colour are still alike. */
    static String read(String text) {
        String word = text.strip().toLowerCase(Locale.ROOT);
        if (word.matches("#[0-9a-f]{6}")) {
            return word;
        }
        if (word.matches("#[0-9a-f]{3}")) {
            char r = word.charAt(1);
            char g = word.charAt(2);
            char b = word.charAt(3);
            return "#" + r + r + g + g + b + b;
        }
        Matcher rgb = RGB.matcher(word);
        if (rgb.matches()) {
            double scale = word.contains("%") ? 2.55 : 1;
            return String.format(
                    Locale.ROOT,
                    "#%02x%02x%02x",
                    part(rgb.group(1), scale),
                    part(rgb.group(2), scale),
                    part(rgb.group(3), scale));
        }
        return NAMES.getOrDefault(word, word);
    }

    private static int part(String digits, double scale) {
        return (int) Math.min(255, Math.round(Integer.parseInt(digits) * scale));
    }
}
