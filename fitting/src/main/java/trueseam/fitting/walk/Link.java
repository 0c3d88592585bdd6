package trueseam.fitting.walk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.convert.Mirror;

/**
 * One edge of a side of a seam, in the direction of walking, darts left out.
 *
 * @param piece the piece
 * @param edge the edge
 * @param along whether walking goes with the outline, which runs anticlockwise
 * @param turnedOver whether the paper lies face down
 */
record Link(Piece piece, Edge edge, boolean along, boolean turnedOver) {

    private static final double NOTHING_MM = 1e-6;

    Link turned(boolean over) {
        return new Link(piece, edge, along, over);
    }

    /** The parts between darts, in the order and direction of walking, where the paper lies at first. */
    List<Path> parts() {
        List<Path> parts = new ArrayList<>();
        double from = 0;
        for (Dart.EdgeDart dart : piece.dartsOn(edge.name())) {
            add(parts, from, dart.fromMm());
            from = dart.toMm();
        }
        add(parts, from, edge.length());
        if (!along) {
            Collections.reverse(parts);
        }
        return parts;
    }

    private void add(List<Path> parts, double from, double to) {
        double end = Math.min(to, edge.length());
        if (end - from > NOTHING_MM) {
            Path part = edge.path().part(from, end);
            Path face = turnedOver ? Mirror.of(part) : part;
            parts.add(along ? face : face.reversed());
        }
    }

    double lengthMm() {
        return piece.sewnLength(edge.name());
    }

    /** How far from where walking begins on this edge a notch is; negative if it lies in the mouth of a dart. */
    double walkedTo(Notch notch) {
        double before = notch.atMm();
        for (Dart.EdgeDart dart : piece.dartsOn(edge.name())) {
            if (dart.toMm() <= notch.atMm()) {
                before -= dart.mouthMm();
            } else if (dart.fromMm() < notch.atMm()) {
                return -1;
            }
        }
        return along ? before : lengthMm() - before;
    }

    /** The paper as it lies, moved. */
    Sheet lying(Motion pose) {
        return new Sheet(piece.name(), turnedOver, pose);
    }
}
