package trueseam.garment.flat;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;

/**
 * A tape stood on its edge along the stitching line between two places of a piece, both ways round, and a ruler laid straight across.
 *
 * <p>Laws: (1) the two ways round add up to the whole outline; (2) no way is shorter than the straight line; (3) the way from one
 * place to the other is the other way round from the other to the one.
 *
 * @param from where it begins
 * @param to where it ends
 * @param onMm along the stitching line in the direction of the outline, anticlockwise, mm
 * @param onSewnMm the same with darts closed, mm
 * @param backMm along the stitching line the other way round, mm
 * @param backSewnMm the same with darts closed, mm
 * @param straightMm by a ruler, mm
 */
public record OutlineTape(
        OutlinePlace from,
        OutlinePlace to,
        double onMm,
        double onSewnMm,
        double backMm,
        double backSewnMm,
        double straightMm) {

    private static final double NOTHING_MM = 1e-9;

    /**
     * Lays tape and ruler between two places.
     *
     * @param piece the piece
     * @param from one place of its stitching line
     * @param to another
     * @return what they read
     */
    public static OutlineTape between(Piece piece, OutlinePlace from, OutlinePlace to) {
        double whole = 0;
        double closed = 0;
        for (Edge edge : piece.edges()) {
            whole += edge.length();
            closed += piece.sewnLength(edge.name());
        }
        double on = alongOutline(piece, to, false) - alongOutline(piece, from, false);
        double onSewn = alongOutline(piece, to, true) - alongOutline(piece, from, true);
        boolean round = on < 0;
        on += round ? whole : 0;
        onSewn += round ? closed : 0;
        return new OutlineTape(
                from, to, on, onSewn, whole - on, closed - onSewn, from.point().distanceTo(to.point()));
    }

    private static double alongOutline(Piece piece, OutlinePlace place, boolean dartsClosed) {
        double along = 0;
        for (Edge edge : piece.edges()) {
            boolean here = edge.name().equals(place.edge());
            along += here ? place.alongMm() : edge.length();
            if (dartsClosed) {
                for (Dart.EdgeDart dart : piece.dartsOn(edge.name())) {
                    double end = here ? Math.min(place.alongMm(), dart.toMm()) : dart.toMm();
                    along -= Math.max(0, end - dart.fromMm());
                }
            }
            if (here) {
                return along;
            }
        }
        throw new IllegalArgumentException(
                piece.name() + " has no edge \"" + place.edge() + "\" to lay the tape along.");
    }

    /**
     * Where the tape lies in the direction of the outline.
     *
     * @param piece the piece that was measured
     * @return the stretches of its edges in order; none if both places are one
     */
    public List<Path> on(Piece piece) {
        return way(piece, from, to, onMm);
    }

    /**
     * Where the tape lies the other way round.
     *
     * @param piece the piece that was measured
     * @return the stretches of its edges in the order of the outline; none if both places are one
     */
    public List<Path> back(Piece piece) {
        return way(piece, to, from, backMm);
    }

    private static List<Path> way(Piece piece, OutlinePlace from, OutlinePlace to, double wayMm) {
        List<Path> stretches = new ArrayList<>();
        List<Edge> edges = piece.edges();
        int i = piece.indexOf(from.edge());
        double start = from.alongMm();
        double still = wayMm;
        while (still > NOTHING_MM) {
            Edge edge = edges.get(i % edges.size());
            boolean last =
                    still <= edge.length() - start + NOTHING_MM && edge.name().equals(to.edge());
            double end = last ? Math.max(start, to.alongMm()) : edge.length();
            if (end - start > NOTHING_MM) {
                stretches.add(edge.path().part(start, end));
            }
            still = last ? 0 : still - (end - start);
            start = 0;
            i++;
        }
        return List.copyOf(stretches);
    }
}
