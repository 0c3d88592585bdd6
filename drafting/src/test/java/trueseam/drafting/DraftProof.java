package trueseam.drafting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.flat.FlatMeasure;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.polygon.Region;

/** What every draft has to hold, measured on the finished pattern with the tape of {@link FlatPattern}. */
final class DraftProof {

    static final double MEASURES_MM = 0.1;
    static final double WALKS_MM = 0.01;
    static final double LEGS_MM = 1e-6;
    static final double SMOOTH_DEGREES = 1;

    /** Fine enough that no crossing of lines drawn with a pencil is missed. */
    private static final double OUTLINE_MM = 0.05;

    private DraftProof() {}

    /** Everything that is wrong with a draft; empty for a good one. */
    static List<String> faults(Pattern pattern, DraftFigure figure) {
        List<String> faults = new ArrayList<>();
        for (Map.Entry<Measure, Double> ease : pattern.easeMm().entrySet()) {
            Optional<FlatMeasure> flat = FlatPattern.measure(pattern, ease.getKey());
            double wanted = figure.mm(ease.getKey()) + ease.getValue();
            if (flat.isEmpty() || !(Math.abs(flat.get().mm() - wanted) < MEASURES_MM)) {
                faults.add(ease.getKey().term() + " is " + flat.map(FlatMeasure::mm) + " instead of " + wanted);
            }
        }
        for (Seam seam : pattern.seams()) {
            double mm = pattern.mismatchMm(seam);
            if (!(Math.abs(mm) < WALKS_MM)) {
                faults.add("seam " + seam.name() + " is out by " + mm);
            }
        }
        for (Piece piece : pattern.pieces()) {
            if (!(piece.outline().signedArea() > 0)) {
                faults.add(piece.name() + " runs clockwise");
            }
            Region.faultOf(piece.outline(), OUTLINE_MM).ifPresent(f -> faults.add(piece.name() + ": " + f));
            for (Dart dart : piece.darts()) {
                if (dart instanceof Dart.EdgeDart d) {
                    addDartFaults(piece, d, faults);
                }
            }
        }
        return faults;
    }

    private static void addDartFaults(Piece piece, Dart.EdgeDart dart, List<String> faults) {
        Path edge = piece.edge(dart.edge()).path();
        Point from = edge.pointAt(dart.fromMm());
        Point to = edge.pointAt(dart.toMm());
        double legs = from.distanceTo(dart.apex()) - to.distanceTo(dart.apex());
        if (!(Math.abs(legs) < LEGS_MM)) {
            faults.add(piece.name() + ", " + dart.name() + ": legs differ by " + legs);
        }
        // Turning the first leg onto the second closes the dart; the edge must then go on in its direction.
        double turn = from.minus(dart.apex()).angleTo(to.minus(dart.apex()));
        Vec before = edge.tangentAt(Math.max(0, dart.fromMm() - 1e-3)).turned(turn);
        Vec after = edge.tangentAt(Math.min(edge.length(), dart.toMm() + 1e-3));
        double kink = Math.toDegrees(before.angleTo(after));
        if (!(Math.abs(kink) < SMOOTH_DEGREES)) {
            faults.add(piece.name() + ", " + dart.name() + ": closes with a kink of " + kink + " degrees");
        }
    }

    static void prove(Pattern pattern, DraftFigure figure) {
        assertThat(faults(pattern, figure)).as(pattern.name()).isEmpty();
    }
}
