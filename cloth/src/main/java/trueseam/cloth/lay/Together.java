package trueseam.cloth.lay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;

/** Patterns that are cut from one cloth, such as a bodice and its skirt. */
public final class Together {

    private Together() {}

    /**
     * All pieces of some patterns as one pattern. A piece whose name another pattern has too gets its own pattern's name with it.
     *
     * @param patterns the patterns, at least one
     * @return one pattern with all their pieces and seams
     */
    public static Pattern of(List<Pattern> patterns) {
        if (patterns.size() == 1) {
            return patterns.get(0);
        }
        List<Piece> pieces = new ArrayList<>();
        List<Seam> seams = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (Pattern pattern : patterns) {
            Map<String, String> names = new HashMap<>();
            for (Piece p : pattern.pieces()) {
                String name = p.name();
                for (int i = 1; !taken.add(name); i++) {
                    name = p.name() + ", " + pattern.name() + (i == 1 ? "" : " " + i);
                }
                names.put(p.name(), name);
                pieces.add(new Piece(
                        name,
                        p.kind(),
                        p.cutCount(),
                        p.fold(),
                        p.edges(),
                        p.darts(),
                        p.notches(),
                        p.landmarks(),
                        p.levels(),
                        p.markings(),
                        p.grain()));
            }
            for (Seam s : pattern.seams()) {
                seams.add(new Seam(s.name(), renamed(s.first(), names), renamed(s.second(), names), s.easeMm()));
            }
        }
        Pattern first = patterns.get(0);
        return new Pattern(
                patterns.stream().map(Pattern::name).distinct().collect(Collectors.joining(" and ")),
                first.size(),
                first.sizeTable(),
                first.source(),
                pieces,
                seams,
                Map.of());
    }

    private static List<EdgeRef> renamed(List<EdgeRef> refs, Map<String, String> names) {
        return refs.stream()
                .map(r -> new EdgeRef(names.getOrDefault(r.piece(), r.piece()), r.edge()))
                .toList();
    }
}
