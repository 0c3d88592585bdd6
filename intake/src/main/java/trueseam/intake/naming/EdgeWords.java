package trueseam.intake.naming;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;
import trueseam.intake.patternfile.RoleOfName;

/**
 * The trade's words for the edges of a piece.
 *
 * @param name what the edge is called
 * @param role what it is
 */
public record EdgeWords(String name, EdgeRole role) {

    /**
     * The edges that a piece of a kind has.
     *
     * @param kind what it is
     * @return its edges, in order round the piece; none for a kind of which that cannot be said
     */
    public static List<EdgeWords> of(PieceKind kind) {
        List<EdgeWords> words = new ArrayList<>();
        KnownPiece.all().stream()
                .filter(k -> k.kind() == kind)
                .flatMap(k -> k.edges().stream())
                .forEach(e -> words.addAll(Parting.words(e)));
        if (kind.isBand()) {
            EdgeRole sewn = kind == PieceKind.WAISTBAND
                    ? EdgeRole.WAIST
                    : kind == PieceKind.CUFF ? EdgeRole.WRIST : EdgeRole.NECK;
            words.add(new EdgeWords(sewn.word(), sewn));
            words.add(new EdgeWords("centre front", EdgeRole.CENTRE));
            words.add(new EdgeWords("centre back", EdgeRole.CENTRE));
            words.add(new EdgeWords("free edge", EdgeRole.OTHER));
            words.add(new EdgeWords("end", EdgeRole.OTHER));
        }
        return List.copyOf(words);
    }

    /**
     * The words for edges that pieces of a kind do not usually have.
     *
     * @param kind what it is
     * @return the other roles, by their words
     */
    public static List<EdgeWords> besides(PieceKind kind) {
        Set<EdgeRole> had = EnumSet.noneOf(EdgeRole.class);
        of(kind).forEach(w -> had.add(w.role()));
        had.remove(EdgeRole.OTHER);
        return Arrays.stream(EdgeRole.values())
                .filter(r -> !had.contains(r))
                .map(r -> new EdgeWords(r.word(), r))
                .toList();
    }

    /**
     * What an edge of a name is in a piece.
     *
     * @param kind what the piece is
     * @param name what the edge is called
     * @return the role that pieces of the kind give the name; else the role that is a word of it; else {@link EdgeRole#OTHER}
     */
    public static EdgeRole role(PieceKind kind, String name) {
        return of(kind).stream()
                .filter(w -> w.name.equalsIgnoreCase(name))
                .map(EdgeWords::role)
                .findFirst()
                .or(() -> RoleOfName.of(name))
                .orElse(EdgeRole.OTHER);
    }
}
