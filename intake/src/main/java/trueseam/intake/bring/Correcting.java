package trueseam.intake.bring;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;
import trueseam.intake.bring.BroughtPiece.BroughtEdge;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.naming.EdgeWords;
import trueseam.intake.said.Corrections;
import trueseam.intake.said.EdgeSaid;
import trueseam.intake.said.PieceCorrection;
import trueseam.intake.said.SeamSaid;

/**
 * One correction after the other, as a person makes them before what was brought in. What hangs together goes together: an edge that gets
 * the name of another one gives that one its own, and seams go with the names of their edges.
 *
 * @param brought what she looks at
 * @param said what she said so far
 */
public record Correcting(Brought brought, Corrections said) {

    /** Parts nearer to a corner are none. */
    private static final double LEAST_PART_MM = 3;

    private BroughtPiece piece(int number) {
        return brought.pieces().stream()
                .filter(p -> p.number() == number)
                .findFirst()
                .orElseThrow(() -> lost("piece " + number, "It is not in the drawing; look at the pieces again."));
    }

    private static BroughtEdge edge(BroughtPiece piece, String name) {
        return piece.edges().stream()
                .filter(e -> e.name().value().equals(name))
                .findFirst()
                .orElseThrow(() -> lost(piece.name(), "It has no edge \"" + name + "\"; look at its edges again."));
    }

    private static DrawingException lost(String place, String what) {
        return new DrawingException("The drawing", place, what);
    }

    private Corrections about(int number, UnaryOperator<PieceCorrection> how) {
        BroughtPiece piece = piece(number);
        return said.with(how.apply(said.piece(number).at(number, piece.frame())));
    }

    /**
     * A piece is of another kind; its edges, its fold and its seams are proposed anew.
     *
     * @param number the piece's place in the drawing
     * @param kind what it is
     * @return the corrections
     */
    public Corrections kind(int number, PieceKind kind) {
        return about(number, p -> p.asKind(kind)).withoutSeamsOf(piece(number).name());
    }

    /**
     * A piece is called otherwise.
     *
     * @param number the piece's place in the drawing
     * @param name its name
     * @return the corrections
     */
    public Corrections called(int number, String name) {
        String before = piece(number).name();
        String plain = PieceCorrection.plainName(name);
        if (plain.isEmpty()) {
            throw lost(before, "A piece needs a name.");
        }
        return about(number, p -> p.called(plain))
                .renamed(r -> r.piece().equals(before) ? new EdgeRef(plain, r.edge()) : r);
    }

    /**
     * An edge is another one. If another edge of the piece has the name, it gets this one's name: the two were taken for each other.
     *
     * @param number the piece's place in the drawing
     * @param name what the edge is called now
     * @param to what it is called
     * @return the corrections
     */
    public Corrections edge(int number, String name, String to) {
        BroughtPiece piece = piece(number);
        BroughtEdge edge = edge(piece, name);
        Optional<BroughtEdge> other = piece.edges().stream()
                .filter(e -> e.name().value().equals(to) && !to.equals(name))
                .findFirst();
        PieceKind kind = piece.kind().value();
        Corrections with = about(number, p -> {
            PieceCorrection named = p.with(as(edge, to, EdgeWords.role(kind, to)));
            return other.map(o -> named.with(as(o, name, edge.role()))).orElse(named);
        });
        return with.renamed(r -> !r.piece().equals(piece.name())
                ? r
                : r.edge().equals(name)
                        ? new EdgeRef(r.piece(), to)
                        : r.edge().equals(to) ? new EdgeRef(r.piece(), name) : r);
    }

    private static EdgeSaid as(BroughtEdge edge, String name, EdgeRole role) {
        return new EdgeSaid(name, role, edge.from(), edge.to(), OptionalDouble.of(edge.longMm()));
    }

    /**
     * An edge and the one after it are one edge, with the name of the first.
     *
     * @param number the piece's place in the drawing
     * @param name the edge
     * @return the corrections
     */
    public Corrections joined(int number, String name) {
        BroughtPiece piece = piece(number);
        if (piece.edges().size() <= 2) {
            throw lost(piece.name(), "It has two edges only, and an outline needs two.");
        }
        BroughtEdge edge = edge(piece, name);
        BroughtEdge next = piece.edges()
                .get((piece.edges().indexOf(edge) + 1) % piece.edges().size());
        EdgeSaid whole = new EdgeSaid(
                name, edge.role(), edge.from(), next.to(), OptionalDouble.of(edge.longMm() + next.longMm()));
        // What was said of the two parts does not hold any more.
        return about(number, p -> p.withEdges(p.edges().stream()
                        .filter(e -> !e.isSameStretch(edge.asSaid()) && !e.isSameStretch(next.asSaid()))
                        .toList())
                .with(whole));
    }

    /**
     * An edge is two edges.
     *
     * @param number the piece's place in the drawing
     * @param name the edge
     * @param mm how far from its beginning the corner is, mm
     * @return the corrections: the first part keeps the name, the second is that name with a number
     */
    public Corrections parted(int number, String name, double mm) {
        BroughtPiece piece = piece(number);
        BroughtEdge edge = edge(piece, name);
        if (!(LEAST_PART_MM <= mm && mm <= edge.longMm() - LEAST_PART_MM)) {
            throw lost(
                    piece.name() + ", " + name,
                    String.format(
                            java.util.Locale.ROOT,
                            "It is %.1f mm long; part it between %.0f and %.1f mm from its beginning.",
                            edge.longMm(),
                            LEAST_PART_MM,
                            edge.longMm() - LEAST_PART_MM));
        }
        EdgeSaid first =
                new EdgeSaid(name, edge.role(), edge.from(), edge.line().pointAt(mm), OptionalDouble.of(mm));
        EdgeSaid second = new EdgeSaid(
                name + " 2", edge.role(), edge.line().pointAt(mm), edge.to(), OptionalDouble.of(edge.longMm() - mm));
        return about(number, p -> p.with(first).with(second));
    }

    /**
     * Something else about a piece.
     *
     * @param number the piece's place in the drawing
     * @param how what
     * @return the corrections
     */
    public Corrections piece(int number, UnaryOperator<PieceCorrection> how) {
        return about(number, how);
    }

    /**
     * Two edges are sewn together.
     *
     * @param name what the seam is called
     * @param first one edge
     * @param second the other one, the eased one of an eased seam
     * @param easeMm how much longer it is meant to be, mm
     * @return the corrections
     */
    public Corrections sewn(String name, EdgeRef first, EdgeRef second, double easeMm) {
        String plain = PieceCorrection.plainName(name);
        if (plain.isEmpty() || first.equals(second)) {
            throw lost("a seam", "It needs a name and two different edges.");
        }
        return said.with(new SeamSaid(plain, List.of(first), List.of(second), OptionalDouble.of(easeMm), true));
    }

    /**
     * What is taken for a seam is none.
     *
     * @param seam one of the seams, by its place
     * @return the corrections
     */
    public Corrections notSewn(int seam) {
        if (seam < 0 || seam >= brought.seams().size()) {
            throw lost("a seam", "It is not there any more; look at the seams again.");
        }
        SeamSaid there = brought.seams().get(seam).asSaid();
        return said.with(new SeamSaid("", there.first(), there.second(), OptionalDouble.empty(), false));
    }
}
