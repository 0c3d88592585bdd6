package trueseam.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Marking;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Adds what is marked inside the pieces of a shell: buttonholes, pockets, the end of a placket, belt carriers. The measures are common
 * practice, from memory.
 */
public final class Marks {

    /** How far the front laps over the centre: 3/4 in; it is left as allowance, a fold of it faces the edge. */
    private static final double LAP_MM = 19.05;

    private static final double HOLE_MM = 25.4;
    private static final double OVER_CENTRE_MM = 3.175;
    private static final double FIRST_MM = 15.875;
    private static final double LAST_MM = 38.1;
    private static final double APART_MM = 88.9;

    /** A zip of 8 in. */
    private static final double PLACKET_MM = 203.2;

    private static final double STOP_MM = 12.7;
    private static final double POCKET_MM = 152.4;

    private Marks() {}

    /**
     * A front that is buttoned at the centre: no longer on the fold, with buttonholes at bust and waist level and evenly between.
     *
     * @param shell a bodice or dress
     * @return the shell with its buttonholes
     * @throws IllegalArgumentException if it has no front in one piece
     */
    public static Pattern withButtons(Pattern shell) {
        return with(
                shell,
                "buttoned front",
                piece -> piece.kind() == PieceKind.BODICE_FRONT || piece.kind() == PieceKind.DRESS_FRONT,
                Marks::buttoned);
    }

    /**
     * Pockets on the fronts of a skirt or trousers: the slanting opening of a pocket below the waist, beside the side seam.
     *
     * @param shell a skirt or trousers
     * @return the shell with its pockets
     * @throws IllegalArgumentException if it has none of these
     */
    public static Pattern withPockets(Pattern shell) {
        return with(
                shell,
                "pocket",
                piece -> (piece.kind().isSkirt() || piece.kind().isTrouser())
                        && piece.kind().isFront()
                        && piece.firstOf(EdgeRole.SIDE).isPresent(),
                Marks::pocketed);
    }

    /**
     * An opening of 8 in for a zip in the side seam of a skirt or trousers.
     *
     * @param shell a skirt or trousers
     * @return the shell with the lower end of the opening marked on front and back
     * @throws IllegalArgumentException if it has none of these
     */
    public static Pattern withPlacket(Pattern shell) {
        return with(
                shell,
                "placket",
                piece -> (piece.kind().isSkirt() || piece.kind().isTrouser())
                        && piece.firstOf(EdgeRole.SIDE).isPresent(),
                Marks::opened);
    }

    /**
     * Belt carriers on the waistband: half way to the side, at the side seam, near the centre back; with their other halves six, and as
     * long each as the band is high and 1 in.
     *
     * @param shell a skirt or trousers with a waistband
     * @return the shell with the places of its carriers
     * @throws IllegalArgumentException if it has no waistband
     */
    public static Pattern withCarriers(Pattern shell) {
        return with(shell, "belt carrier", piece -> piece.kind() == PieceKind.WAISTBAND, Marks::carrying);
    }

    private static Pattern with(
            Pattern shell, String what, java.util.function.Predicate<Piece> on, UnaryOperator<Piece> marked) {
        List<Piece> changed = new ArrayList<>();
        for (Piece piece : shell.pieces()) {
            if (on.test(piece)) {
                changed.add(marked.apply(piece));
            }
        }
        if (changed.isEmpty()) {
            throw new IllegalArgumentException("A " + what + " has nowhere to go on the " + shell.name()
                    + "; draft the piece that it belongs to as well.");
        }
        return shell.withPieces(changed);
    }

    private static Piece buttoned(Piece front) {
        Edge centre = front.only(EdgeRole.CENTRE);
        double x = centre.path().start().x();
        double inward = Math.signum(
                front.outline().bounds().maxX() + front.outline().bounds().minX() - 2 * x);
        List<Edge> edges = front.edges().stream()
                .map(edge -> edge.name().equals(centre.name())
                        ? new Edge(edge.name(), edge.role(), edge.path(), LAP_MM)
                        : edge)
                .toList();
        Piece whole = new Piece(
                front.name(),
                front.kind(),
                2,
                java.util.Optional.empty(),
                edges,
                front.darts(),
                front.notches(),
                front.landmarks(),
                front.levels(),
                front.markings(),
                front.grain());
        PieceBuilder piece = whole.toBuilder();
        int number = 1;
        for (double y : heights(front, centre.path())) {
            // From inside to 1/8 in beyond the centre, where the button pulls.
            piece.marking(new Marking(
                    Marking.BUTTONHOLE + " " + number,
                    Path.through(
                            new Point(x + inward * (HOLE_MM - OVER_CENTRE_MM), y),
                            new Point(x - inward * OVER_CENTRE_MM, y))));
            number++;
        }
        return piece.build();
    }

    private static List<Double> heights(Piece front, Path centre) {
        double top = centre.bounds().maxY() - FIRST_MM;
        double bottom = centre.bounds().minY() + LAST_MM;
        List<Double> kept = new ArrayList<>(List.of(top));
        for (LevelName level : List.of(LevelName.BUST, LevelName.WAIST)) {
            OptionalDouble y = front.level(level);
            if (y.isPresent() && bottom + LAST_MM < y.getAsDouble() && y.getAsDouble() < top - LAST_MM) {
                kept.add(y.getAsDouble());
            }
        }
        kept.add(bottom);
        List<Double> all = new ArrayList<>(List.of(top));
        for (int k = 1; k < kept.size(); k++) {
            double from = kept.get(k - 1);
            double to = kept.get(k);
            int gaps = (int) Math.max(1, Math.round((from - to) / APART_MM));
            for (int i = 1; i <= gaps; i++) {
                all.add(from + (to - from) * i / gaps);
            }
        }
        return all;
    }

    private static Piece pocketed(Piece front) {
        Path side = downwards(front.only(EdgeRole.SIDE).path());
        Point low = side.pointAt(Math.min(POCKET_MM, side.length() / 2));
        double inward = inward(front, low);
        Point high = new Point(low.x() + inward * 0.3 * POCKET_MM, side.start().y() - STOP_MM);
        return front.toBuilder()
                .marking(new Marking(
                        Marking.POCKET, Path.through(high, new Point(low.x() + inward * 2 * OVER_CENTRE_MM, low.y()))))
                .build();
    }

    private static Piece opened(Piece piece) {
        Path side = downwards(piece.only(EdgeRole.SIDE).path());
        Point end = side.pointAt(Math.min(PLACKET_MM, side.length() / 2));
        return piece.toBuilder()
                .marking(new Marking(
                        Marking.PLACKET, Path.through(end, end.plus(new Vec(inward(piece, end) * STOP_MM, 0)))))
                .build();
    }

    private static double inward(Piece piece, Point onSide) {
        double middle =
                (piece.outline().bounds().minX() + piece.outline().bounds().maxX()) / 2;
        return Math.signum(middle - onSide.x());
    }

    private static Path downwards(Path path) {
        return path.start().y() > path.end().y() ? path : path.reversed();
    }

    private static Piece carrying(Piece band) {
        Path sewn = band.only(EdgeRole.WAIST).path();
        double side = band.notches().isEmpty()
                ? sewn.length() / 2
                : band.notches().get(0).atMm();
        double high = band.outline().bounds().maxX() - band.outline().bounds().minX();
        PieceBuilder piece = band.toBuilder();
        int number = 1;
        for (double at : List.of(side / 2, side, sewn.length() - HOLE_MM)) {
            PathPlace place = sewn.nearest(sewn.pointAt(at));
            piece.marking(new Marking(
                    Marking.CARRIER + " " + number,
                    Path.through(place.point(), place.point().plus(new Vec(-high, 0)))));
            number++;
        }
        return piece.build();
    }
}
