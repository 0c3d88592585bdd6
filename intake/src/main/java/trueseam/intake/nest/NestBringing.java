package trueseam.intake.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trueseam.garment.blend.Blended;
import trueseam.garment.blend.PatternBlend;
import trueseam.garment.blend.SizesByLevel;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.intake.bring.BringChoices;
import trueseam.intake.bring.Bringing;
import trueseam.intake.bring.Brought;
import trueseam.intake.bring.BroughtPiece;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.said.Corrections;

/** Brings a nest in: one size of it, or a pattern drawn across two and more. */
public final class NestBringing {

    private static final double SAME_TURN_RAD = 1e-3;

    /** Two sizes of one piece that are nested share most of their rectangles. */
    private static final double OVER = 0.4;

    private final Nest nest;
    private final BringChoices choices;
    private final Corrections said;
    private final List<Finding> findings = new ArrayList<>();

    private NestBringing(Nest nest, BringChoices choices, Corrections said) {
        this.nest = nest;
        this.choices = choices;
        this.said = said;
    }

    /**
     * Brings one size in.
     *
     * @param nest the sizes of a drawing
     * @param size which
     * @param choices what whoever knows the pattern says; its size is that of the nest
     * @param said what she says of its pieces
     * @return the pattern in that size
     */
    public static Brought one(Nest nest, NestSize size, BringChoices choices, Corrections said) {
        return Bringing.of(nest.drawing(size), choices.withSize(size.name()), said);
    }

    /**
     * Draws a pattern across the nest.
     *
     * @param nest the sizes of a drawing
     * @param wanted which size at which level
     * @param choices what whoever knows the pattern says; pieces are numbered as in the first size from the top
     * @param said what she says of the pieces of that size; what they are holds for the other sizes too
     * @return the pattern, with the pieces and seams as they were taken in the first size
     * @throws DrawingException if the nest does not hold one of the sizes
     */
    public static Brought across(Nest nest, SizesByLevel wanted, BringChoices choices, Corrections said) {
        return new NestBringing(nest, choices, said)
                .across(wanted.renamed(text -> nest.size(text).name()));
    }

    /**
     * The pattern in one size.
     *
     * @param brought as brought in
     * @param at by the number of each piece of the first size, the piece that is the same in this one
     */
    private record InSize(Brought brought, Map<Integer, BroughtPiece> at) {}

    private Brought across(SizesByLevel wanted) {
        List<String> sizes = wanted.sizes();
        Brought first = Bringing.of(nest.drawing(sizes.get(0)), choices.withSize(sizes.get(0)), said);
        findings.addAll(first.findings());
        Map<String, InSize> all = new LinkedHashMap<>();
        all.put(sizes.get(0), new InSize(first, placed(first, first)));
        for (String size : sizes.subList(1, sizes.size())) {
            // Brought in twice: first to see which piece is which, then each as what it is in the first size.
            Brought alone =
                    Bringing.of(nest.drawing(size), choices.withSize(size).withKinds(Map.of()));
            Map<Integer, PieceKind> kinds = new HashMap<>();
            placed(alone, first).forEach((number, piece) -> {
                PieceKind kind = piece(first, number).kind().value();
                if (kind != PieceKind.OTHER && kind != piece.kind().value()) {
                    kinds.put(piece.number(), kind);
                }
            });
            Brought brought = kinds.isEmpty()
                    ? alone
                    : Bringing.of(nest.drawing(size), choices.withSize(size).withKinds(kinds));
            brought.findings().stream()
                    .filter(f -> f.severity() != Severity.NOTE && !f.place().startsWith("piece "))
                    .map(f -> new Finding(f.severity(), f.place() + ", size " + size, f.sentence()))
                    .forEach(findings::add);
            all.put(size, new InSize(brought, placed(brought, first)));
        }
        Map<String, Pattern> patterns = new LinkedHashMap<>();
        all.forEach((size, in) -> patterns.put(size, laid(in, first, all, wanted)));
        Blended blended = PatternBlend.of(patterns, wanted);
        findings.addAll(blended.findings());
        return new Brought(blended.pattern(), first.pieces(), first.seams(), first.corrections(), findings);
    }

    private static BroughtPiece piece(Brought brought, int number) {
        return brought.pieces().stream()
                .filter(p -> p.number() == number)
                .findFirst()
                .orElseThrow();
    }

    /** Which piece of a size is which of the first: the one that lies over it, else one of the same kind. */
    private static Map<Integer, BroughtPiece> placed(Brought brought, Brought first) {
        Map<Integer, BroughtPiece> at = new LinkedHashMap<>();
        List<BroughtPiece> left = new ArrayList<>(
                brought.pieces().stream().filter(p -> p.piece().isPresent()).toList());
        List<BroughtPiece> wanted =
                first.pieces().stream().filter(p -> p.piece().isPresent()).toList();
        for (BroughtPiece piece : wanted) {
            left.stream()
                    .filter(p -> overlap(p, piece) > OVER)
                    .max(Comparator.comparingDouble(p -> overlap(p, piece)))
                    .ifPresent(p -> {
                        at.put(piece.number(), p);
                        left.remove(p);
                    });
        }
        for (BroughtPiece piece : wanted) {
            left.stream()
                    .filter(p -> !at.containsKey(piece.number())
                            && p.kind().value() == piece.kind().value())
                    .findFirst()
                    .ifPresent(p -> {
                        at.put(piece.number(), p);
                        left.remove(p);
                    });
        }
        return at;
    }

    private static double overlap(BroughtPiece one, BroughtPiece other) {
        return share(one.outline().bounds(), other.outline().bounds());
    }

    /** How much of the larger of two rectangles both have. */
    private static double share(Bounds own, Bounds there) {
        double width = Math.min(own.maxX(), there.maxX()) - Math.max(own.minX(), there.minX());
        double height = Math.min(own.maxY(), there.maxY()) - Math.max(own.minY(), there.minY());
        double all = Math.max(own.width() * own.height(), there.width() * there.height());
        return width > 0 && height > 0 ? width * height / all : 0;
    }

    /** The pattern with the names of the first size, each piece where it is nested beside the size in whose place it will lie. */
    private Pattern laid(InSize in, Brought first, Map<String, InSize> all, SizesByLevel wanted) {
        List<Piece> pieces = new ArrayList<>();
        for (Map.Entry<Integer, BroughtPiece> entry : in.at().entrySet()) {
            Piece like = piece(first, entry.getKey()).piece().orElseThrow();
            BroughtPiece base =
                    all.get(PatternBlend.lyingAs(like.kind(), wanted)).at().get(entry.getKey());
            boolean drawn = PatternBlend.sizesOf(like.kind(), wanted)
                    .contains(in.brought().pattern().size());
            if (base != null) {
                pieces.add(laid(entry.getValue(), base, like.name(), drawn));
            }
        }
        Pattern p = in.brought().pattern();
        return new Pattern(
                p.name(),
                p.size(),
                p.sizeTable(),
                p.source(),
                pieces,
                first.pattern().seams(),
                p.easeMm());
    }

    private Piece laid(BroughtPiece own, BroughtPiece base, String name, boolean told) {
        Piece piece = own.piece().orElseThrow();
        Motion there = own.lies().motion().inverse().then(base.lies().motion());
        boolean alike = own.lies().mirrored() == base.lies().mirrored()
                && Math.abs(Math.IEEEremainder(there.turnRad(), 2 * Math.PI)) < SAME_TURN_RAD;
        boolean nested = own.equals(base) || (alike && overlap(own, base) > OVER);
        if (!nested && told) {
            findings.add(Finding.note(
                    name,
                    "Its sizes do not lie on one another in the drawing; they were laid together at the waist of the centre, a sleeve at"
                            + " its crown, a leg at the crotch line."));
        }
        return (nested ? PatternBlend.laid(piece, there) : piece)
                .toBuilder().called(name).build();
    }
}
