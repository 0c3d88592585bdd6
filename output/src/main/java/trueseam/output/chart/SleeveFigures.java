package trueseam.output.chart;

import java.util.List;
import java.util.Optional;
import trueseam.garment.flat.FlatMeasure;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Point;

/**
 * What a change of sleeve girth may cost, measured on a pattern.
 *
 * @param capSeamMm both halves of the cap along the stitching line, mm
 * @param armholeMm front and back armhole along the stitching line, mm; 0 where the pattern has none
 * @param capHeightMm from the level of the underarm points up to the crown, mm
 * @param underarmSeamMm the seam under the arm, front and back in the mean, mm
 */
public record SleeveFigures(double capSeamMm, double armholeMm, double capHeightMm, double underarmSeamMm) {

    /**
     * Measures a pattern.
     *
     * @param pattern the pattern
     * @return the figures, or nothing if it has no one-piece sleeve
     */
    public static Optional<SleeveFigures> of(Pattern pattern) {
        return pattern.firstOf(PieceKind.SLEEVE)
                .filter(sleeve -> sleeve.edgesOf(EdgeRole.CAP).size() == 2
                        && !sleeve.edgesOf(EdgeRole.UNDERARM).isEmpty())
                .map(sleeve -> new SleeveFigures(
                        sewn(sleeve, EdgeRole.CAP),
                        FlatPattern.measure(pattern, Measure.ARMSCYE_GIRTH)
                                .map(FlatMeasure::mm)
                                .orElse(0.0),
                        capHeight(sleeve.edgesOf(EdgeRole.CAP)),
                        sewn(sleeve, EdgeRole.UNDERARM)
                                / sleeve.edgesOf(EdgeRole.UNDERARM).size()));
    }

    private static double sewn(Piece piece, EdgeRole role) {
        return piece.edgesOf(role).stream()
                .mapToDouble(edge -> piece.sewnLength(edge.name()))
                .sum();
    }

    private static double capHeight(List<Edge> caps) {
        Point right = caps.get(0).path().start();
        Point crown = caps.get(0).path().end();
        Point left = caps.get(1).path().end();
        return crown.y() - (right.y() + left.y()) / 2;
    }

    /**
     * How much is eased in.
     *
     * @return cap seam less armhole, mm
     */
    public double capEaseMm() {
        return capSeamMm - armholeMm;
    }
}
