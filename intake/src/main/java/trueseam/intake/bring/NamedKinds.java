package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import trueseam.garment.pattern.PieceKind;

/**
 * Which kinds of piece a maker's name for a piece can mean. Words that name none ("shell", "size", a style) do not count.
 */
final class NamedKinds {

    /** Words that makers use for those of the program (common practice). */
    private static final Map<String, String> ALSO = Map.ofEntries(
            Map.entry("pant", "trouser"),
            Map.entry("pants", "trouser"),
            Map.entry("trousers", "trouser"),
            Map.entry("leg", "trouser"),
            Map.entry("blouse", "bodice"),
            Map.entry("shirt", "bodice"),
            Map.entry("top", "bodice"),
            Map.entry("tunic", "dress"),
            Map.entry("slv", "sleeve"),
            Map.entry("sleeves", "sleeve"),
            Map.entry("frt", "front"),
            Map.entry("fr", "front"),
            Map.entry("bk", "back"),
            Map.entry("center", "centre"),
            Map.entry("neckband", "collar"));

    /** What is sewn to another piece or behind it, whichever piece that is. */
    private static final List<PieceKind> BY_ONE_WORD =
            List.of(PieceKind.FACING, PieceKind.LINING, PieceKind.COLLAR, PieceKind.CUFF, PieceKind.WAISTBAND);

    private NamedKinds() {}

    /** The kinds that the name can mean: one, several that only the shape tells apart, or none where it names no kind. */
    static Set<PieceKind> of(String name) {
        Set<String> said = said(name);
        for (PieceKind kind : BY_ONE_WORD) {
            if (said.contains(kind.word())) {
                return EnumSet.of(kind);
            }
        }
        Set<PieceKind> kinds = EnumSet.noneOf(PieceKind.class);
        if (said.isEmpty()) {
            return kinds;
        }
        for (PieceKind kind : PieceKind.values()) {
            if (words(kind).equals(said)) {
                return EnumSet.of(kind);
            }
            if (words(kind).containsAll(said)) {
                kinds.add(kind);
            }
        }
        return kinds;
    }

    private static Set<String> words(PieceKind kind) {
        return Set.of(kind.word().split(" "));
    }

    private static Set<String> said(String name) {
        Set<String> known = Arrays.stream(PieceKind.values())
                .filter(kind -> kind != PieceKind.OTHER)
                .flatMap(kind -> words(kind).stream())
                .collect(Collectors.toSet());
        List<String> words = new ArrayList<>();
        for (String word : name.toLowerCase(Locale.ROOT).split("[^\\p{L}]+")) {
            words.add(ALSO.getOrDefault(word, word));
        }
        for (int i = 0; i + 1 < words.size(); i++) { // "waist band" is one word to us
            if (known.contains(words.get(i) + words.get(i + 1))) {
                words.set(i, words.get(i) + words.get(i + 1));
            }
        }
        Set<String> said = new HashSet<>(words);
        said.retainAll(known);
        return said;
    }
}
