package trueseam.garment.blend;

import java.util.List;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Level;
import trueseam.garment.pattern.Marking;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Point;

/** A piece laid elsewhere: slid, or turned a little as its nest has it. */
final class Lie {

    private Lie() {}

    static Piece moved(Piece piece, Motion motion) {
        List<Edge> edges = piece.edges().stream()
                .map(e -> e.withPath(e.path().moved(motion)))
                .toList();
        List<Dart> darts = piece.darts().stream().map(d -> moved(d, motion)).toList();
        List<Landmark> landmarks = piece.landmarks().stream()
                .map(l -> new Landmark(l.name(), motion.apply(l.at())))
                .toList();
        List<Level> levels = piece.levels().stream()
                .map(l -> new Level(l.name(), motion.apply(new Point(0, l.y())).y()))
                .toList();
        List<Marking> markings = piece.markings().stream()
                .map(m -> new Marking(m.name(), m.path().moved(motion)))
                .toList();
        return piece.toBuilder()
                .edges(edges)
                .darts(darts)
                .landmarks(landmarks)
                .levels(levels)
                .markings(markings)
                .grain(piece.grain().moved(motion))
                .build();
    }

    private static Dart moved(Dart dart, Motion motion) {
        return dart instanceof Dart.EdgeDart d
                ? new Dart.EdgeDart(d.name(), d.edge(), d.fromMm(), d.toMm(), motion.apply(d.apex()))
                : ((Dart.DiamondDart) dart).moved(motion);
    }
}
