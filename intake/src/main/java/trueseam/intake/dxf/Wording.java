package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a text of a DXF file says, without the signs that set it. Source: DXF reference, TEXT and MTEXT. */
final class Wording {

    private static final Pattern UNICODE = Pattern.compile("\\\\[Uu]\\+([0-9A-Fa-f]{4})");
    private static final Pattern PERCENT = Pattern.compile("%%(\\d{3}|.)");

    /** Of MTEXT: signs with an argument up to a semicolon, and signs alone. */
    private static final Pattern SETTING = Pattern.compile("\\\\[ACcfFHpQTW][^;\\\\{}]*;|\\\\[LlOoKk]");

    private static final Pattern STACKED = Pattern.compile("\\\\S([^;]*?)[\\^/#]([^;]*);");

    private Wording() {}

    /** A line of TEXT. */
    static String plain(String written) {
        String text = UNICODE.matcher(written)
                .replaceAll(m -> Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(m.group(1), 16))));
        return PERCENT.matcher(text)
                .replaceAll(m -> Matcher.quoteReplacement(sign(m.group(1))))
                .strip();
    }

    private static String sign(String what) {
        return switch (what) {
            case "d", "D" -> "\u00b0";
            case "p", "P" -> "\u00b1";
            case "c", "C" -> "\u2300";
            case "%" -> "%";
            case "u", "U", "o", "O", "k", "K" -> "";
            default -> what.length() == 3 ? String.valueOf((char) Integer.parseInt(what)) : "%%" + what;
        };
    }

    /** The lines of MTEXT, blank ones left out. */
    static List<String> lines(String written) {
        List<String> all = new ArrayList<>();
        String text = STACKED.matcher(written.replace("\\~", " ")).replaceAll("$1/$2");
        for (String line : text.split("\\\\P|\\\\X|\\\\N|\n", -1)) {
            String bare = SETTING.matcher(line).replaceAll("").replaceAll("(?<!\\\\)[{}]", "");
            String words = plain(bare.replaceAll("\\\\([\\\\{}])", "$1"));
            if (!words.isEmpty()) {
                all.add(words);
            }
        }
        return all;
    }
}
