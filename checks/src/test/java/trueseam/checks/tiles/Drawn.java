package trueseam.checks.tiles;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Vec;
import trueseam.intake.drawing.Look;
import trueseam.intake.drawing.Stroke;

/** A drafted garment as its maker might draw it: cutting lines, dashed stitching lines, grainlines, piece beside piece. */
final class Drawn {

    static final Look CUTTING = new Look("#000000", 0.6, List.of());
    static final Look STITCHING = new Look("#336699", 0.3, List.of(4.0, 2.0));
    static final Look GRAIN = new Look("#000000", 0.3, List.of());

    private Drawn() {}

    static List<Stroke> lines(Pattern pattern) {
        List<Stroke> lines = new ArrayList<>();
        double left = 0;
        for (Piece piece : pattern.pieces()) {
            Path cutting = CuttingLine.of(piece);
            Bounds box = cutting.bounds();
            Motion there = Motion.slide(new Vec(left - box.minX(), -box.minY()));
            lines.add(new Stroke(cutting.moved(there), CUTTING, "", ""));
            lines.add(new Stroke(piece.outline().moved(there), STITCHING, "", ""));
            lines.add(new Stroke(
                    Path.through(piece.grain().from(), piece.grain().to()).moved(there), GRAIN, "", ""));
            left += box.width() + 23.7;
        }
        return lines;
    }

    static Bounds bounds(List<Stroke> lines) {
        Bounds box = lines.get(0).path().bounds();
        for (Stroke line : lines) {
            box = box.with(line.path().bounds());
        }
        return box;
    }
}
