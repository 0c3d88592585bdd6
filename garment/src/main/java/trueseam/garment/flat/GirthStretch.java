package trueseam.garment.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trueseam.garment.pattern.EdgeRole;

/**
 * A stretch of a garment between two heights, made of the same pieces all the way. Its ends may be measured along an edge, as a
 * curved waist or hem is; next to such an end the ruler is laid only where it crosses whole pieces, and between the two the girth
 * is shared out evenly.
 *
 * @param pieces the pieces
 * @param top its upper end
 * @param bottom its lower end
 * @param highestWholeMm the highest height at which the ruler crosses whole pieces
 * @param lowestWholeMm the lowest
 */
record GirthStretch(List<LaidPiece> pieces, GirthAt top, GirthAt bottom, double highestWholeMm, double lowestWholeMm) {

    /** The ruler laid right on a straight hem or a corner may miss the piece by a rounding: it is laid this much inside. */
    private static final double INSIDE_MM = 1e-3;

    // Immutable, and a little inside the edges.
    GirthStretch {
        pieces = List.copyOf(pieces);
        highestWholeMm -= INSIDE_MM;
        lowestWholeMm += INSIDE_MM;
    }

    /** The girth at an upper end that is read across. */
    static double acrossBelow(List<LaidPiece> pieces, double topMm) {
        return across(pieces, topMm - INSIDE_MM);
    }

    /** The girth at a lower end that is read across. */
    static double acrossAbove(List<LaidPiece> pieces, double bottomMm) {
        return across(pieces, bottomMm + INSIDE_MM);
    }

    /** The ruler across all pieces. */
    private static double across(List<LaidPiece> pieces, double heightMm) {
        double sum = 0;
        for (LaidPiece piece : pieces) {
            sum += piece.girthMm(heightMm).orElse(0);
        }
        return sum;
    }

    boolean reaches(double heightMm) {
        return bottom.heightMm() <= heightMm && heightMm <= top.heightMm();
    }

    double at(double heightMm) {
        if (heightMm == top.heightMm()) {
            return top.girthMm();
        }
        if (heightMm == bottom.heightMm()) {
            return bottom.girthMm();
        }
        if (heightMm > highestWholeMm) {
            return between(top, new GirthAt(highestWholeMm, across(pieces, highestWholeMm)), heightMm);
        }
        if (heightMm < lowestWholeMm) {
            return between(bottom, new GirthAt(lowestWholeMm, across(pieces, lowestWholeMm)), heightMm);
        }
        return across(pieces, heightMm);
    }

    private static double between(GirthAt a, GirthAt b, double heightMm) {
        double share = (heightMm - a.heightMm()) / (b.heightMm() - a.heightMm());
        return a.girthMm() + share * (b.girthMm() - a.girthMm());
    }

    /** From top to bottom, no further apart than the step, with every whole height and both ends. */
    List<GirthAt> every(double stepMm) {
        List<GirthAt> all = new ArrayList<>();
        all.add(top);
        double from = Math.min(highestWholeMm, top.heightMm());
        double to = Math.max(lowestWholeMm, bottom.heightMm());
        int steps = Math.max(1, (int) Math.ceil((from - to) / stepMm));
        for (int i = 0; i <= steps; i++) {
            double height = from + (to - from) * i / steps;
            if (height < top.heightMm() && height > bottom.heightMm()) {
                all.add(new GirthAt(height, at(height)));
            }
        }
        all.add(bottom);
        return all;
    }

    /** On the front, by its side seam; of gores, which may have none, by the first seam. */
    OptionalDouble downTheSideMm(double lengthMm) {
        for (EdgeRole seam : List.of(EdgeRole.SIDE, EdgeRole.PANEL)) {
            for (LaidPiece piece : pieces) {
                OptionalDouble height = piece.downTheSideMm(seam, lengthMm);
                if (piece.piece().kind().isFront() && height.isPresent()) {
                    return height;
                }
            }
        }
        return OptionalDouble.empty();
    }
}
