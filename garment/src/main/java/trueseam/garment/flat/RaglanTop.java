package trueseam.garment.flat;

import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** The upper part of a raglan sleeve, which holds the shoulder: what a set-in sleeve has at its crown lies inside it here. */
final class RaglanTop {

    private RaglanTop() {}

    /** Along the front leg of the dart in the neck, from the neck to the shoulder point. */
    static Optional<FlatPart> shoulder(Piece sleeve) {
        Optional<Point> end = sleeve.landmark(Landmark.SHOULDER_POINT);
        return sleeve.firstOf(EdgeRole.NECK).flatMap(neck -> {
            List<Dart.EdgeDart> darts = sleeve.dartsOn(neck.name());
            return darts.size() != 1 || end.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new FlatPart(
                            sleeve.name(),
                            "along the dart from the neck to the shoulder point",
                            neck.path().pointAt(darts.get(0).fromMm()).distanceTo(end.get()),
                            1));
        });
    }

    /** Straight from underarm to underarm. */
    static Optional<FlatPart> upperArm(Piece sleeve) {
        List<Edge> seams = sleeve.edgesOf(EdgeRole.RAGLAN);
        if (seams.size() != 2) {
            return Optional.empty();
        }
        double mm = low(seams.get(0).path()).distanceTo(low(seams.get(1).path()));
        return Optional.of(new FlatPart(sleeve.name(), "underarm to underarm", mm, 1));
    }

    private static Point low(Path seam) {
        return seam.start().y() < seam.end().y() ? seam.start() : seam.end();
    }

    static Optional<FlatPart> toWrist(Piece sleeve) {
        Optional<Point> top = sleeve.landmark(Landmark.SHOULDER_POINT);
        return sleeve.firstOf(EdgeRole.WRIST).filter(wrist -> top.isPresent()).map(wrist -> {
            Point from = top.orElseThrow();
            double low = wrist.path().crossings(from, new Vec(0, 1)).stream()
                    .findFirst()
                    .map(place -> place.point().y())
                    .orElse(wrist.path().start().y());
            return new FlatPart(sleeve.name(), "shoulder point to wrist edge", from.y() - low, 1);
        });
    }

    static Optional<FlatPart> toElbow(Piece sleeve) {
        return sleeve.landmark(Landmark.SHOULDER_POINT)
                .filter(top -> sleeve.level(LevelName.ELBOW).isPresent())
                .map(top -> new FlatPart(
                        sleeve.name(),
                        "shoulder point to elbow level",
                        top.y() - sleeve.level(LevelName.ELBOW).getAsDouble(),
                        1));
    }
}
