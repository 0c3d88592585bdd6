package trueseam.worktable.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.output.picture.PiecePicture;

/**
 * A piece on the page.
 *
 * @param name its name
 * @param x where it lies on the table, mm
 * @param y where it lies on the table, mm
 * @param altered whether anything was done to it
 * @param before its lines as bought
 * @param now its lines as altered
 * @param cutting the cutting line as altered
 * @param face {@code front}, {@code back} or empty
 * @param centre where the centre meets the waist or its lower end, for laying front on back: x y, y downwards
 * @param side where the side begins below, for laying front on back: x y, y downwards
 * @param places corners and notches, for a tape to be laid between
 */
public record PieceView(
        String name,
        double x,
        double y,
        boolean altered,
        PieceLines before,
        PieceLines now,
        String cutting,
        String face,
        String centre,
        String side,
        List<NamedPoint> places) {

    /** Does not change. */
    public PieceView {
        places = List.copyOf(places);
    }

    /**
     * A place with a name.
     *
     * @param name what it is
     * @param edge the edge it is on
     * @param alongMm how far along, mm
     */
    public record NamedPoint(String name, String edge, double alongMm) {}

    static PieceView of(AlteredPiece piece, Places.At at) {
        Piece now = piece.now();
        return new PieceView(
                now.name(),
                Numbers.rounded(at.x()),
                Numbers.rounded(at.y()),
                piece.isAltered(),
                PieceLines.of(piece.original()),
                PieceLines.of(now),
                PiecePicture.cutting(now),
                now.kind().isFront() ? "front" : now.kind().isBack() ? "back" : "",
                now.firstOf(EdgeRole.CENTRE)
                        .or(() -> now.firstOf(EdgeRole.CROTCH))
                        .map(edge -> words(lower(edge.path())))
                        .orElse(""),
                now.firstOf(EdgeRole.SIDE)
                        .map(edge -> words(lower(edge.path())))
                        .orElse(""),
                places(now));
    }

    private static Point lower(Path path) {
        return path.start().y() < path.end().y() ? path.start() : path.end();
    }

    private static String words(Point p) {
        return Numbers.text(p.x()) + " " + Numbers.text(-p.y());
    }

    private static List<NamedPoint> places(Piece piece) {
        List<NamedPoint> places = new ArrayList<>();
        Optional<Edge> last = Optional.of(piece.edges().get(piece.edges().size() - 1));
        for (Edge edge : piece.edges()) {
            places.add(new NamedPoint(last.orElseThrow().name() + " to " + edge.name(), edge.name(), 0));
            int number = 0;
            for (Notch notch : piece.notches()) {
                if (notch.edge().equals(edge.name())) {
                    number++;
                    places.add(new NamedPoint(
                            "notch " + number + " of " + edge.name(),
                            edge.name(),
                            Math.min(notch.atMm(), edge.length())));
                }
            }
            last = Optional.of(edge);
        }
        return places;
    }
}
