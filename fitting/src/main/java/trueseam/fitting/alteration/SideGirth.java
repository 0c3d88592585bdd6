package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.Tissue;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/**
 * Girth of bodice, dress, skirt or trousers at the side seams: bust, waist and hip, each larger or smaller, alone or
 * together. Front and back take the same change; the total is shared over the cut edges, four where there is one side seam on
 * either side (common practice).
 *
 * <p>Moves the side edges. Pins: shoulder point for the bust, underarm point for the waist, side waist for the hip. Must stay:
 * armhole length, shoulder, neck, centres, darts. Trued: underarm, side levels, waist and hem at the side.
 *
 * @param bustMm total at the underarm, mm
 * @param waistMm total at the waist, mm
 * @param hipMm total at the hip, mm
 * @param hem what happens below the hip of a dress or skirt
 */
public record SideGirth(double bustMm, double waistMm, double hipMm, HemChoice hem) implements Alteration {

    /** A hem so nearly level is left, mm. */
    private static final double LEVEL_MM = 0.25;

    @Override
    public String title() {
        List<String> levels = new ArrayList<>();
        if (bustMm != 0) {
            levels.add("bust");
        }
        if (waistMm != 0) {
            levels.add("waist");
        }
        if (hipMm != 0) {
            levels.add("hip");
        }
        String all = levels.isEmpty() ? "no" : String.join(" and ", levels);
        return Character.toUpperCase(all.charAt(0)) + all.substring(1) + " girth at the side seams";
    }

    /**
     * Over how many cut edges a girth of this pattern is shared.
     *
     * @param pattern the pattern
     * @return two for each half piece with a side edge, one for a piece of one side that is cut once
     */
    public static int cutEdges(Pattern pattern) {
        int edges = 0;
        for (Piece piece : pattern.pieces()) {
            if (isConcerned(piece)) {
                edges += piece.timesAround();
            }
        }
        return edges;
    }

    private static boolean isConcerned(Piece piece) {
        return (piece.kind().isFront() || piece.kind().isBack())
                && piece.edgesOf(EdgeRole.SIDE).size() == 1;
    }

    @Override
    public List<PieceWork> work(Pattern pattern) {
        int edges = cutEdges(pattern);
        List<PieceWork> work = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            if (isConcerned(piece)) {
                List<Step> steps = steps(piece, edges);
                if (!steps.isEmpty()) {
                    work.add(new PieceWork(piece.name(), steps));
                }
            }
        }
        return work;
    }

    private List<Step> steps(Piece piece, int edges) {
        Flank flank = new Flank(piece);
        List<SideLevel> levels = new ArrayList<>();
        PieceKind kind = piece.kind();
        if (kind.isUpper()) {
            levels.add(new SideLevel(flank.top("underarm point"), "bust mark", bustMm / edges));
            if (kind.isDress()) {
                levels.add(flank.level(LevelName.WAIST, "side waist", "waist mark", waistMm / edges));
                addHipAndHem(flank, levels, edges);
            } else {
                levels.add(new SideLevel(flank.bottom("side waist"), "waist mark", waistMm / edges));
            }
            return new SidePivots(flank, levels, kind.isDress() && isHemCarried(), 0).steps();
        }
        levels.add(new SideLevel(flank.top("side waist"), "waist mark", waistMm / edges));
        if (kind.isTrouser()) {
            levels.add(flank.level(LevelName.HIP, "hip point", "hip mark", hipMm / edges));
            levels.add(flank.level(LevelName.KNEE, "knee at the side", "knee mark", 0));
            levels.add(new SideLevel(flank.bottom("side hem"), "hem mark", 0));
            return ofLeg(flank, levels);
        }
        addHipAndHem(flank, levels, edges);
        return new SidePivots(flank, levels, isHemCarried(), 0).steps();
    }

    /**
     * A side seam that is pivoted out to the hip leans more and so ends higher than the inseam: its last part is let down along the
     * grain until the hem is level again (common practice; trade.md 5, hem squareness).
     */
    private static List<Step> ofLeg(Flank flank, List<SideLevel> levels) {
        List<Step> steps = new SidePivots(flank, levels, false, 0).steps();
        if (steps.isEmpty()) {
            return steps;
        }
        double before = lowY(flank.piece);
        double rise = lowY(Tissue.work(flank.piece, steps).piece()) - before;
        return Math.abs(rise) <= LEVEL_MM ? steps : new SidePivots(flank, levels, false, rise).steps();
    }

    private static double lowY(Piece piece) {
        var side = piece.only(EdgeRole.SIDE).path();
        return Math.min(side.start().y(), side.end().y());
    }

    private boolean isHemCarried() {
        return hem == HemChoice.CARRIED;
    }

    private void addHipAndHem(Flank flank, List<SideLevel> levels, int edges) {
        levels.add(flank.level(LevelName.HIP, "hip point", "hip mark", hipMm / edges));
        levels.add(new SideLevel(flank.bottom("side hem"), "hem mark", 0));
    }
}
