package trueseam.fitting.follow;

import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * An altered piece with the dart that the alteration made in its neck folded closed, as it is laid under a facing: the shoulder side is
 * turned about the dart's point until its leg lies on the other (common practice: fold out darts, then trace).
 */
final class Folded {

    private final Piece after;
    private final Optional<Dart.EdgeDart> dart;
    private final boolean shoulderFirst;

    Folded(Piece before, Piece after) {
        this.after = after;
        this.dart = after.edgesOf(EdgeRole.NECK).stream()
                .flatMap(neck -> after.dartsOn(neck.name()).stream())
                .filter(d -> before.darts().stream().noneMatch(old -> old.name().equals(d.name())))
                .findFirst();
        List<Edge> shoulders = after.edgesOf(EdgeRole.SHOULDER);
        this.shoulderFirst = dart.isPresent()
                && !shoulders.isEmpty()
                && shoulders
                        .get(0)
                        .path()
                        .end()
                        .isNear(after.edge(dart.get().edge()).path().start(), Path.CHAIN_MM);
    }

    Path path(Edge original) {
        Path path = after.edge(original.name()).path();
        if (dart.isEmpty()) {
            return path;
        }
        Dart.EdgeDart d = dart.get();
        if (original.role() == EdgeRole.SHOULDER) {
            return path.moved(fold(d));
        }
        if (!original.name().equals(d.edge())) {
            return path;
        }
        Path first = path.part(0, d.fromMm());
        Path second = path.part(d.toMm(), path.length());
        return shoulderFirst ? first.moved(fold(d)).then(second) : first.then(second.moved(fold(d)));
    }

    private Motion fold(Dart.EdgeDart d) {
        Path path = after.edge(d.edge()).path();
        Point from = path.pointAt(d.fromMm());
        Point to = path.pointAt(Math.min(d.toMm(), path.length()));
        Vec one = (shoulderFirst ? from : to).minus(d.apex());
        Vec other = (shoulderFirst ? to : from).minus(d.apex());
        return Motion.pivot(d.apex(), one.angleTo(other));
    }
}
