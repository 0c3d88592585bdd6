package trueseam.worktable.pattern;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.intake.bring.BroughtPiece;
import trueseam.intake.bring.BroughtPiece.BroughtEdge;
import trueseam.intake.bring.BroughtPiece.BroughtMark;
import trueseam.intake.naming.EdgeWords;
import trueseam.intake.said.LineTaken;
import trueseam.output.picture.PiecePicture;

/**
 * One piece of a drawing, as it is shown to be confirmed.
 *
 * @param of the piece as brought in
 * @param box the picture's frame as SVG has it
 * @param letterMm how tall the numbers at the edges are, mm
 * @param lines its lines; empty of a piece that is left out
 * @param outline the outline of a piece that is left out
 * @param edges its edges
 * @param kinds what it may be: the likely ones first
 * @param others all other kinds
 */
public record PieceCard(
        BroughtPiece of,
        String box,
        String letterMm,
        Optional<PiecePicture> lines,
        String outline,
        List<EdgeRow> edges,
        List<PieceKind> kinds,
        List<PieceKind> others) {

    /** Room round a picture, as a share of its size. */
    private static final double ROOM = 0.04;

    private static final double LETTER = 1 / 26.0;

    /** Does not change. */
    public PieceCard {
        edges = List.copyOf(edges);
        kinds = List.copyOf(kinds);
        others = List.copyOf(others);
    }

    /**
     * An edge.
     *
     * @param of the edge as brought in
     * @param line its line
     * @param x where its number stands
     * @param y where its number stands, y downwards
     * @param usual the words that pieces of the kind have for their edges
     * @param besides the other words
     */
    public record EdgeRow(BroughtEdge of, String line, String x, String y, List<String> usual, List<String> besides) {

        /** Does not change. */
        public EdgeRow {
            usual = List.copyOf(usual);
            besides = List.copyOf(besides);
        }

        /**
         * Its length.
         *
         * @return such as {@code 233.0 mm}
         */
        public String length() {
            return mm(of.longMm());
        }
    }

    static String mm(double mm) {
        return String.format(Locale.ROOT, "%.1f mm", mm);
    }

    static PieceCard of(BroughtPiece piece) {
        Bounds bounds = piece.piece().map(p -> p.outline().bounds()).orElseGet(() -> piece.outline()
                .bounds());
        double size = Math.max(bounds.width(), bounds.height());
        double room = ROOM * size;
        List<PieceKind> likely = Stream.concat(
                        Stream.of(piece.kind().value()), piece.others().stream().limit(3))
                .distinct()
                .toList();
        return new PieceCard(
                piece,
                number(bounds.minX() - room) + " " + number(-bounds.maxY() - room) + " "
                        + number(bounds.width() + 2 * room) + " " + number(bounds.height() + 2 * room),
                number(size * LETTER),
                piece.piece().map(PiecePicture::of),
                piece.piece().isPresent() ? "" : PiecePicture.text(piece.outline()),
                piece.piece().map(p -> rows(piece, p, size)).orElse(List.of()),
                likely,
                Arrays.stream(PieceKind.values())
                        .filter(k -> !likely.contains(k))
                        .toList());
    }

    private static List<EdgeRow> rows(BroughtPiece piece, Piece lying, double size) {
        List<String> usual =
                EdgeWords.of(piece.kind().value()).stream().map(EdgeWords::name).toList();
        List<String> besides = EdgeWords.besides(piece.kind().value()).stream()
                .map(EdgeWords::name)
                .toList();
        List<EdgeRow> rows = new ArrayList<>();
        for (int i = 0; i < piece.edges().size(); i++) {
            BroughtEdge edge = piece.edges().get(i);
            Edge line = lying.edges().get(i);
            Point at = inside(line.path(), size * LETTER);
            String name = edge.name().value();
            boolean known = usual.contains(name) || besides.contains(name);
            rows.add(new EdgeRow(
                    edge,
                    PiecePicture.text(line.path()),
                    number(at.x()),
                    number(-at.y()),
                    known
                            ? usual
                            : Stream.concat(Stream.of(name), usual.stream()).toList(),
                    besides));
        }
        return rows;
    }

    /** Beside the middle of an edge, inside the piece. */
    private static Point inside(Path edge, double mm) {
        Point middle = edge.pointAt(edge.length() / 2);
        return middle.plus(edge.tangentAt(edge.length() / 2).left().times(mm));
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    /**
     * What it is called in addresses and marks of the page.
     *
     * @return its number
     */
    public int number() {
        return of.number();
    }

    /**
     * Whether it is left out.
     *
     * @return true if so
     */
    public boolean leftOut() {
        return of.piece().isEmpty();
    }

    /**
     * Which line may be which.
     *
     * @return two or three
     */
    public List<LineTaken> lineChoices() {
        return Arrays.stream(LineTaken.values())
                .filter(l -> l != LineTaken.INNER || of.hasInner())
                .toList();
    }

    /**
     * Its seam allowance.
     *
     * @return such as {@code 15.9 mm}
     */
    public String allowance() {
        return mm(of.allowanceMm());
    }

    /**
     * Its size.
     *
     * @return how wide and high it is as drawn
     */
    public String size() {
        return String.format(
                Locale.ROOT,
                "%.0f mm wide and %.0f mm high as drawn",
                of.frame().wide(),
                of.frame().high());
    }

    /**
     * What a dart or notch is called in its list.
     *
     * @param mark the mark
     * @return such as {@code dart on the side}
     */
    public static String called(BroughtMark mark) {
        return mark.what().name().toLowerCase(Locale.ROOT) + " on the " + mark.edge();
    }
}
