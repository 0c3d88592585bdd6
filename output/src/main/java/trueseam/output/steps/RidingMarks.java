package trueseam.output.steps;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.tissue.Stretch;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * The notches and darts that ride on parts of edges and are copied together with them.
 *
 * @param piece the pattern
 */
record RidingMarks(Piece piece) {

    /** A place at the very end of a stretch belongs to it: a tenth of a pencil line, mm. */
    private static final double END_MM = 0.05;

    /** A notch as it is drawn: where, and which way is out of the piece. */
    record Tick(Point at, Vec outward, int cuts) {}

    /** All notches of the pattern. */
    List<Tick> ticks() {
        return piece.notches().stream().map(this::tick).toList();
    }

    /** The notches on parts of edges. */
    List<Tick> ticks(List<Stretch> stretches) {
        return notches(stretches).stream().map(this::tick).toList();
    }

    private Tick tick(Notch notch) {
        var path = piece.edge(notch.edge()).path();
        double at = Math.min(notch.atMm(), path.length());
        return new Tick(
                path.pointAt(at), path.tangentAt(at).right(), notch.kind().cuts());
    }

    private List<Notch> notches(List<Stretch> stretches) {
        List<Notch> on = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            if (holds(stretches, notch.edge(), notch.atMm(), notch.atMm())) {
                on.add(notch);
            }
        }
        return on;
    }

    private static boolean holds(List<Stretch> stretches, String edge, double fromMm, double toMm) {
        for (Stretch s : stretches) {
            if (s.edge().equals(edge) && s.fromMm() - END_MM <= fromMm && toMm <= s.toMm() + END_MM) {
                return true;
            }
        }
        return false;
    }

    /** For example {@code the waist dart}, {@code 2 notches}. */
    List<String> words(List<Stretch> stretches) {
        List<String> words = new ArrayList<>();
        for (Dart dart : piece.darts()) {
            if (dart instanceof Dart.EdgeDart d && holds(stretches, d.edge(), d.fromMm(), d.toMm())) {
                words.add("the " + d.name());
            }
        }
        int notches = notches(stretches).size();
        if (notches > 0) {
            words.add(notches == 1 ? "the notch" : notches + " notches");
        }
        return words;
    }
}
