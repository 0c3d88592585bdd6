package trueseam.intake.naming;

import java.util.List;
import trueseam.garment.pattern.EdgeRole;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * What is one stretch in a drawing and two edges in the trade, for no corner lies between them: a cap, whose halves meet at the crown; the
 * side of a kimono, which runs on into the seam under the arm; its overarm seam, which runs on into the shoulder.
 */
final class Parting {

    static final String CAP = "cap";
    static final String SIDE_AND_UNDERARM = "side and underarm";
    static final String OVERARM_AND_SHOULDER = "overarm and shoulder";

    private static final double STEP_MM = 0.25;

    /** Where nothing marks it, a shoulder ends 5 in from the neck (the mean of the women surveyed, from memory). */
    private static final double SHOULDER_MM = 127;

    private static final double MOST_SHOULDER_SHARE = 0.5;

    /** The curve under the arm is an inch and a half high here: it leaves the side so far before its corner. */
    private static final double BEFORE_CORNER_MM = 38.1;

    private Parting() {}

    /**
     * A part of a stretch.
     *
     * @param words what it is called
     * @param path its line
     */
    record Part(EdgeWords words, Path path) {}

    /** What the edges of a stretch are called, in its direction; most stretches are one edge. */
    static List<EdgeWords> words(KnownPiece.KnownEdge stretch) {
        return switch (stretch.name()) {
            case CAP -> List.of(new EdgeWords("cap front", EdgeRole.CAP), new EdgeWords("cap back", EdgeRole.CAP));
            case SIDE_AND_UNDERARM ->
                List.of(new EdgeWords("side", EdgeRole.SIDE), new EdgeWords("underarm", EdgeRole.UNDERARM));
            case OVERARM_AND_SHOULDER ->
                List.of(new EdgeWords("overarm", EdgeRole.OVERARM), new EdgeWords("shoulder", EdgeRole.SHOULDER));
            default -> List.of(new EdgeWords(stretch.name(), stretch.role()));
        };
    }

    /** The edges of a stretch, in its direction. */
    static List<Part> of(KnownPiece.KnownEdge stretch, Path path) {
        List<EdgeWords> words = words(stretch);
        if (words.size() == 1) {
            return List.of(new Part(words.get(0), path));
        }
        double at = at(stretch, path);
        return List.of(new Part(words.get(0), path.part(0, at)), new Part(words.get(1), path.part(at, path.length())));
    }

    private static double at(KnownPiece.KnownEdge stretch, Path path) {
        double whole = path.length();
        return switch (stretch.name()) {
            case CAP -> highest(path);
            case SIDE_AND_UNDERARM -> Math.max(STEP_MM, farthest(path) - BEFORE_CORNER_MM);
            default -> whole - Math.min(SHOULDER_MM, MOST_SHOULDER_SHARE * whole);
        };
    }

    /** Where the crown is. */
    private static double highest(Path path) {
        double at = 0;
        double top = Double.NEGATIVE_INFINITY;
        for (double mm = 0; mm <= path.length(); mm += STEP_MM) {
            double y = path.pointAt(mm).y();
            if (y > top) {
                top = y;
                at = mm;
            }
        }
        return at;
    }

    /** Where a line turns its corner: farthest from the straight line between its ends. */
    private static double farthest(Path path) {
        Point from = path.start();
        Vec chord = path.end().minus(from);
        double at = 0;
        double most = -1;
        for (double mm = 0; mm <= path.length(); mm += STEP_MM) {
            double off = Math.abs(chord.cross(path.pointAt(mm).minus(from)));
            if (off > most) {
                most = off;
                at = mm;
            }
        }
        return at;
    }
}
