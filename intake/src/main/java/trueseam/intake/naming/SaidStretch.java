package trueseam.intake.naming;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.garment.pattern.EdgeRole;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;

/**
 * A stretch of an outline of which somebody said which edge it is.
 *
 * @param name what it is called
 * @param role what it is
 * @param fromMm where it begins, mm along the outline
 * @param toMm where it ends, on from there in the outline's direction; less than {@code fromMm} if it runs over the outline's beginning
 */
public record SaidStretch(String name, EdgeRole role, double fromMm, double toMm) {

    /** Ends nearer than this along the outline are one. */
    static final double SAME_MM = 0.5;

    /**
     * The stretch between two points.
     *
     * @param name what it is called
     * @param role what it is
     * @param outline the outline, closed
     * @param corners its corners, mm along it: an end near to one is that corner
     * @param from one end
     * @param to the other end
     * @param longMm how long it is, mm: which way round is meant; empty: the shorter one
     * @param withinMm how near the ends must be to the outline, mm
     * @return the stretch, or nothing if it does not fit the outline
     */
    public static Optional<SaidStretch> between(
            String name,
            EdgeRole role,
            Path outline,
            List<Double> corners,
            Point from,
            Point to,
            OptionalDouble longMm,
            double withinMm) {
        OptionalDouble a = place(outline, corners, from, withinMm);
        OptionalDouble b = place(outline, corners, to, withinMm);
        if (a.isEmpty() || b.isEmpty()) {
            return Optional.empty();
        }
        double around = outline.length();
        double on = ahead(a.getAsDouble(), b.getAsDouble(), around);
        double back = around - on;
        if (Math.min(on, back) < 2 * SAME_MM) {
            return Optional.empty();
        }
        double wanted = longMm.orElse(Math.min(on, back));
        boolean isOn = Math.abs(on - wanted) <= Math.abs(back - wanted);
        if (Math.abs((isOn ? on : back) - wanted) > 3 * withinMm + 0.1 * wanted) {
            return Optional.empty();
        }
        return Optional.of(
                isOn
                        ? new SaidStretch(name, role, a.getAsDouble(), b.getAsDouble())
                        : new SaidStretch(name, role, b.getAsDouble(), a.getAsDouble()));
    }

    private static OptionalDouble place(Path outline, List<Double> corners, Point p, double withinMm) {
        double best = withinMm;
        OptionalDouble at = OptionalDouble.empty();
        for (double corner : corners) {
            double apart = outline.pointAt(corner).distanceTo(p);
            if (apart <= best) {
                best = apart;
                at = OptionalDouble.of(corner);
            }
        }
        if (at.isPresent()) {
            return at;
        }
        PathPlace nearest = outline.nearest(p);
        return nearest.point().isNear(p, withinMm)
                ? OptionalDouble.of(nearest.alongMm() >= outline.length() - 1e-9 ? 0 : nearest.alongMm())
                : OptionalDouble.empty();
    }

    /** How far it is from one place on to another. */
    static double ahead(double from, double to, double around) {
        return ((to - from) % around + around) % around;
    }

    /** Whether a place lies in it and is neither of its ends. */
    boolean holds(double at, double around) {
        double into = ahead(fromMm, at, around);
        return SAME_MM < into && into < ahead(fromMm, toMm, around) - SAME_MM;
    }

    /** Whether an edge that is known by its shape may be this one: by its name, or by its role where nothing in the piece has the name. */
    boolean mayBe(KnownPiece.KnownEdge edge, KnownPiece piece) {
        boolean half = Parting.words(edge).stream().anyMatch(word -> word.name().equals(name));
        boolean named = piece.edges().stream().anyMatch(e -> e.name().equals(name));
        return role == EdgeRole.OTHER || edge.name().equals(name) || half || (!named && edge.role() == role);
    }
}
