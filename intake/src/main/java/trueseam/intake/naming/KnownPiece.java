package trueseam.intake.naming;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;
import trueseam.intake.sheet.Resources;
import trueseam.intake.sheet.Sheet;
import trueseam.intake.sheet.SheetRow;

/**
 * How a piece of a kind usually looks: mean and spread over drafted pieces of every size, the spreads widened because other people draw
 * otherwise. Kept in {@code edge-shapes.csv} and {@code piece-shapes.csv}.
 *
 * @param kind the kind
 * @param aspect natural logarithm of width over height
 * @param around natural logarithm of the outline's length in mm
 * @param darts how many darts it has
 * @param edges its edges, anticlockwise from the lower one
 */
record KnownPiece(PieceKind kind, Usual aspect, Usual around, Usual darts, List<KnownEdge> edges) {

    /**
     * A mean and how far others stray from it.
     *
     * @param mean the mean
     * @param spread one standard deviation, widened
     */
    record Usual(double mean, double spread) {

        /** How far off, in spreads, squared; no single thing counts for more than 4 spreads. */
        double off(double value) {
            double z = Math.min(4, Math.abs(value - mean) / spread);
            return z * z;
        }

        /** The same for a direction in degrees. */
        double offRound(double degrees) {
            double apart = Math.abs(degrees - mean) % 360;
            return new Usual(0, spread).off(Math.min(apart, 360 - apart));
        }
    }

    /**
     * An edge.
     *
     * @param role what it is
     * @param name what it is called
     * @param chord its direction in degrees
     * @param bulge how it bulges
     * @param share of the outline
     * @param across where across the piece
     * @param up where up the piece
     */
    record KnownEdge(EdgeRole role, String name, Usual chord, Usual bulge, Usual share, Usual across, Usual up) {

        /** How unlike an edge is: 0 for the very mean, about 1 for a usual one. */
        double unlike(EdgeShape shape) {
            return (chord.offRound(Math.toDegrees(shape.chordRad()))
                            + bulge.off(shape.bulge())
                            + share.off(shape.share())
                            + across.off(shape.across())
                            + up.off(shape.up()))
                    / 5;
        }
    }

    /** All kinds that can be told by their shape. */
    static List<KnownPiece> all() {
        Sheet pieces = Resources.sheet(KnownPiece.class, "piece-shapes.csv");
        Sheet edges = Resources.sheet(KnownPiece.class, "edge-shapes.csv");
        Map<String, List<KnownEdge>> byKind = new LinkedHashMap<>();
        for (SheetRow row : edges.rows()) {
            byKind.computeIfAbsent(row.cells().get(0), k -> new ArrayList<>())
                    .add(new KnownEdge(
                            EdgeRole.ofWord(row.cells().get(1)).orElseThrow(),
                            row.cells().get(2),
                            usual(row, 3),
                            usual(row, 5),
                            usual(row, 7),
                            usual(row, 9),
                            usual(row, 11)));
        }
        List<KnownPiece> known = new ArrayList<>();
        for (SheetRow row : pieces.rows()) {
            known.add(new KnownPiece(
                    PieceKind.ofWord(row.cells().get(0)).orElseThrow(),
                    usual(row, 1),
                    usual(row, 3),
                    usual(row, 5),
                    List.copyOf(byKind.get(row.cells().get(0)))));
        }
        return List.copyOf(known);
    }

    private static Usual usual(SheetRow row, int column) {
        return new Usual(
                Double.parseDouble(row.cells().get(column)),
                Double.parseDouble(row.cells().get(column + 1)));
    }
}
