package trueseam.output.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.flat.Span;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Level;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.convert.PathData;

/**
 * The lines of one piece as path text.
 *
 * @param piece its name
 * @param stitching the stitching line, closed
 * @param fold the edge on the fold of the cloth; empty without one
 * @param darts legs of darts and whole darts inside; empty without one
 * @param notches the cuts of all notches, outwards; empty without one
 * @param grain the grainline
 * @param levels the lines across the grain
 * @param landmarks the named points inside
 */
public record PiecePicture(
        String piece,
        String stitching,
        String fold,
        String darts,
        String notches,
        String grain,
        List<LevelLine> levels,
        List<Landmark> landmarks) {

    /** As long as the notches of the pattern file, mm. */
    private static final double NOTCH_MM = 6;

    /** Between the cuts of a double or triple notch: 1/4 in, common practice. */
    private static final double CUTS_APART_MM = 6;

    // Immutable.
    public PiecePicture {
        levels = List.copyOf(levels);
        landmarks = List.copyOf(landmarks);
    }

    /**
     * A line across the grain.
     *
     * @param word its name
     * @param line path text, from outline to outline
     */
    public record LevelLine(String word, String line) {}

    /**
     * The picture of a piece.
     *
     * @param piece the piece
     * @return its lines
     */
    public static PiecePicture of(Piece piece) {
        return new PiecePicture(
                piece.name(),
                outline(piece),
                piece.fold().map(fold -> text(piece.edge(fold).path())).orElse(""),
                darts(piece),
                notches(piece),
                text(Path.through(piece.grain().from(), piece.grain().to())),
                levels(piece),
                piece.landmarks());
    }

    /**
     * The line that scissors follow. It takes longer to find than all others together.
     *
     * @param piece the piece
     * @return path text, closed; empty if the outline crosses itself, so that there is none
     */
    public static String cutting(Piece piece) {
        return CuttingLine.find(piece).map(path -> text(path) + "Z").orElse("");
    }

    /**
     * Any line.
     *
     * @param path the line, y upwards
     * @return path text, y downwards
     */
    public static String text(Path path) {
        return PathData.drawn(path);
    }

    /** Not as one path: making one would measure every stroke anew. */
    private static String outline(Piece piece) {
        StringBuilder all = new StringBuilder();
        for (Edge edge : piece.edges()) {
            String one = text(edge.path());
            all.append(all.isEmpty() ? one : one.substring(one.indexOf(firstCommand(edge.path()))));
        }
        return all.append('Z').toString();
    }

    private static char firstCommand(Path path) {
        Segment first = path.segments().get(0);
        return first instanceof Cubic ? 'C' : 'L';
    }

    private static String darts(Piece piece) {
        StringBuilder all = new StringBuilder();
        for (Dart dart : piece.darts()) {
            legs(piece, dart).ifPresent(path -> all.append(text(path)));
        }
        return all.toString();
    }

    private static Optional<Path> legs(Piece piece, Dart dart) {
        if (dart instanceof Dart.EdgeDart d) {
            Path edge = piece.edge(d.edge()).path();
            return Optional.of(
                    Path.through(edge.pointAt(d.fromMm()), d.apex(), edge.pointAt(Math.min(d.toMm(), edge.length()))));
        }
        if (dart instanceof Dart.DiamondDart d) {
            return Optional.of(Path.through(d.top(), d.left(), d.bottom(), d.right(), d.top()));
        }
        return Optional.empty();
    }

    private static String notches(Piece piece) {
        List<String> all = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            Path edge = piece.edge(notch.edge()).path();
            double at = Math.min(notch.atMm(), edge.length());
            Vec along = edge.tangentAt(at);
            int cuts = notch.kind().cuts();
            for (int i = 0; i < cuts; i++) {
                Point from = edge.pointAt(at).plus(along.times(CUTS_APART_MM * (i - (cuts - 1) / 2.0)));
                all.add(text(Path.through(from, from.plus(along.right().times(NOTCH_MM)))));
            }
        }
        return String.join("", all);
    }

    private static List<LevelLine> levels(Piece piece) {
        List<LevelLine> lines = new ArrayList<>();
        for (Level level : piece.levels()) {
            Span.at(piece, level.y())
                    .ifPresent(span -> lines.add(
                            new LevelLine(level.name().word(), text(Path.through(span.left(), span.right())))));
        }
        return lines;
    }
}
