package trueseam.garment.blend;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Motion;

/**
 * Draws a pattern across the nest.
 *
 * <p>Laws: (1) with one size at every level the pattern is that size's; (2) edges across a piece (neck, shoulder, armhole, waist, hem) are
 * wholly one size's; (3) at a level that is named every edge passes through its size's own line; (4) between levels it lies between the two
 * sizes' lines and leaves and arrives along them.
 *
 * <p>Source: common practice (drawing from one size's cutting line to another's with a curved ruler between the levels).
 */
public final class PatternBlend {

    /** Seams that differ by more than they did are told. */
    private static final double TOLD_MM = 0.1;

    private final Map<String, Pattern> sizes;
    private final SizesByLevel wanted;
    private final List<Finding> findings = new ArrayList<>();

    private PatternBlend(Map<String, Pattern> sizes, SizesByLevel wanted) {
        this.sizes = sizes;
        this.wanted = wanted;
    }

    /**
     * Draws across the nest.
     *
     * @param sizes the pattern in each of the sizes wanted, each piece lying as it is nested, of the same names in all sizes
     * @param wanted which size at which level
     * @return the pattern, its size said as {@link SizesByLevel#inWords} and of no table, and what to know of it
     */
    public static Blended of(Map<String, Pattern> sizes, SizesByLevel wanted) {
        if (!sizes.keySet().containsAll(wanted.sizes())) {
            throw new IllegalArgumentException("sizes " + wanted.sizes() + " wanted, and there are " + sizes.keySet());
        }
        Map<String, Pattern> needed = new LinkedHashMap<>();
        wanted.sizes().forEach(size -> needed.put(size, sizes.get(size)));
        return new PatternBlend(needed, wanted).blended();
    }

    /**
     * The size in whose place a piece lies: of upper pieces and skirts the waist's, of trousers the hip's, since pieces have their origin
     * there.
     *
     * @param kind what the piece is
     * @param wanted which size at which level
     * @return one of the sizes wanted
     */
    public static String lyingAs(PieceKind kind, SizesByLevel wanted) {
        if (kind.isTrouser()) {
            return wanted.at(BlendLevel.HIP);
        }
        boolean fromWaist = kind.isUpper() || kind.isSkirt() || kind == PieceKind.WAISTBAND;
        return wanted.at(fromWaist ? BlendLevel.WAIST : kind == PieceKind.CUFF ? BlendLevel.WRIST : BlendLevel.FRAME);
    }

    /**
     * The sizes that a piece is drawn of.
     *
     * @param kind what the piece is
     * @param wanted which size at which level
     * @return the size in whose place it lies first, then those of its other levels; of bands, facings and strange pieces that one only
     */
    public static Set<String> sizesOf(PieceKind kind, SizesByLevel wanted) {
        Set<String> sizes = new LinkedHashSet<>();
        sizes.add(lyingAs(kind, wanted));
        for (BlendLevel level : BlendLevel.values()) {
            boolean has =
                    switch (level) {
                        case FRAME -> kind.isUpper() || kind.isSleeve();
                        case BUST -> kind.isUpper();
                        case WAIST -> kind.isUpper() || kind.isSkirt() || kind.isTrouser();
                        case HIP, HEM -> kind.isDress() || kind.isSkirt() || kind.isTrouser();
                        case KNEE -> kind.isTrouser();
                        case BICEP, WRIST -> kind.isSleeve() || kind.isKimono();
                    };
            if (has) {
                sizes.add(wanted.at(level));
            }
        }
        return sizes;
    }

    /**
     * A piece laid elsewhere, with all that is on it.
     *
     * @param piece the piece
     * @param motion a slide, or with a turn so small that levels stay level
     * @return the piece where it then lies
     */
    public static Piece laid(Piece piece, Motion motion) {
        return Lie.moved(piece, motion);
    }

    private Blended blended() {
        Pattern base = sizes.get(wanted.at(BlendLevel.FRAME));
        Map<String, PieceBlend> blends = new LinkedHashMap<>();
        Map<String, Map<String, Along>> along = new LinkedHashMap<>();
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : base.pieces()) {
            lying(piece).ifPresent(lying -> {
                PieceBlend blend = new PieceBlend(lyingAs(piece.kind(), wanted), lying, wanted, findings);
                blend.along().ifPresent(edges -> {
                    blends.put(piece.name(), blend);
                    along.put(piece.name(), edges);
                });
            });
        }
        base.seams().forEach(seam -> inStep(seam, along));
        for (Piece piece : base.pieces()) {
            PieceBlend blend = blends.get(piece.name());
            pieces.add(blend == null ? whole(piece) : blend.drawn(along.get(piece.name())));
        }
        Pattern drawn = base.withPieces(pieces);
        List<Seam> seams = drawn.seams().stream().map(s -> seam(drawn, s)).toList();
        // Of two sizes and more no row of a table holds: such a pattern is compared by its own flat measures.
        boolean one = sizes.size() == 1;
        Pattern pattern = new Pattern(
                drawn.name(),
                one ? wanted.sizes().get(0) : wanted.inWords(),
                one ? drawn.sizeTable() : "",
                drawn.source(),
                pieces,
                seams,
                drawn.easeMm());
        return new Blended(pattern, findings);
    }

    /** The piece in the sizes that it is drawn of, or nothing where one of them does not have it. */
    private Optional<Map<String, Piece>> lying(Piece piece) {
        Map<String, Piece> lying = new LinkedHashMap<>();
        for (String size : sizesOf(piece.kind(), wanted)) {
            Optional<Piece> same = sizes.get(size).pieces().stream()
                    .filter(p -> p.name().equals(piece.name()) && p.kind() == piece.kind())
                    .findFirst();
            if (same.isEmpty()) {
                findings.add(Finding.warning(
                        piece.name(),
                        "Size " + size + " has no such piece; it is kept in size " + wanted.at(BlendLevel.FRAME)
                                + " from top to bottom."));
                return Optional.empty();
            }
            lying.put(size, same.get());
        }
        if (piece.kind() == PieceKind.OTHER) {
            findings.add(Finding.warning(
                    piece.name(),
                    "Nobody knows what it is, so that it is not drawn across the sizes; it is kept in size "
                            + wanted.at(BlendLevel.FRAME) + "."));
        }
        return Optional.of(lying);
    }

    /** A piece that cannot be blended: in the size of its place where that size has it. */
    private Piece whole(Piece piece) {
        return sizes.get(lyingAs(piece.kind(), wanted)).pieces().stream()
                .filter(p -> p.name().equals(piece.name()) && p.kind() == piece.kind())
                .findFirst()
                .orElse(piece);
    }

    /** The two sides of a seam go over from size to size at the same places. */
    private static void inStep(Seam seam, Map<String, Map<String, Along>> along) {
        if (seam.first().size() != 1 || seam.second().size() != 1) {
            return;
        }
        EdgeRef one = seam.first().get(0);
        EdgeRef other = seam.second().get(0);
        Along first = along.getOrDefault(one.piece(), Map.of()).get(one.edge());
        Along second = along.getOrDefault(other.piece(), Map.of()).get(other.edge());
        if (first != null && second != null) {
            along.get(one.piece()).put(one.edge(), first.inStepWith(second));
            along.get(other.piece()).put(other.edge(), second.inStepWith(first));
        }
    }

    /** The seam with the ease that it has now; told where no size has it so. */
    private Seam seam(Pattern drawn, Seam seam) {
        double now = difference(drawn, seam);
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Pattern size : sizes.values()) {
            for (Seam same : size.seams()) {
                if (same.name().equals(seam.name())) {
                    least = Math.min(least, difference(size, same));
                    most = Math.max(most, difference(size, same));
                }
            }
        }
        if (now < least - TOLD_MM || now > most + TOLD_MM) {
            findings.add(Finding.warning(
                    seam.name() + " seam",
                    String.format(
                            Locale.ROOT,
                            "Its second side is %.1f mm longer than its first; in the sizes as drawn it is %.1f to %.1f mm. Look"
                                    + " whether that can be eased.",
                            now,
                            least,
                            most)));
        }
        return new Seam(seam.name(), seam.first(), seam.second(), now);
    }

    private static double difference(Pattern pattern, Seam seam) {
        return pattern.sewnLength(seam.second()) - pattern.sewnLength(seam.first());
    }
}
