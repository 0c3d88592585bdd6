package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;

/**
 * Girth of a bodice or skirt in panels or gores: bust, waist and hip, each larger or smaller, alone or together, shared over 2k
 * cut edges of k seams (common practice; [CWU17] divides by the seams, which gives the amount of two edges).
 *
 * <p>Moves the edges from top to bottom of every panel that takes part. Pins as at a side seam; at a seam that begins at the
 * shoulder the pin is its top. Must stay: armhole length, shoulder, neck, centres. Trued: underarm, side levels, waist and hem
 * beside each edge.
 *
 * @param bustMm total at the bust, mm
 * @param waistMm total at the waist, mm
 * @param hipMm total at the hip, mm
 * @param hem what happens below the hip of a skirt
 * @param seams which seams take part
 */
public record PanelGirth(double bustMm, double waistMm, double hipMm, HemChoice hem, PanelChoice seams)
        implements Alteration {

    @Override
    public String title() {
        String where =
                switch (seams) {
                    case ALL_SEAMS -> " at all seams";
                    case SIDE_PANELS -> " at the side panels";
                    case SIDE_SEAMS -> " at the side seams";
                    case PANEL_SEAMS -> " at the panel seams";
                };
        return new SideGirth(bustMm, waistMm, hipMm, hem).title().replace(" at the side seams", where);
    }

    /**
     * Whether front or back of a pattern are divided by seams from top to bottom.
     *
     * @param pattern the pattern
     * @return true for panels and gores
     */
    public static boolean isPanelled(Pattern pattern) {
        return pattern.pieces().stream().anyMatch(piece -> isBody(piece) && isSeamed(piece));
    }

    private static boolean isBody(Piece piece) {
        return piece.kind().isFront() || piece.kind().isBack();
    }

    private static boolean isSeamed(Piece piece) {
        return piece.firstOf(EdgeRole.PANEL).isPresent();
    }

    /**
     * Over how many cut edges a girth of this pattern is shared.
     *
     * @param pattern the pattern
     * @param seams which seams take part
     * @return the edges of all pieces, those of half pieces and of pieces cut twice counted twice
     */
    public static int cutEdges(Pattern pattern, PanelChoice seams) {
        int edges = 0;
        for (Piece piece : pattern.pieces()) {
            edges += edges(piece, seams).size() * piece.timesAround();
        }
        return edges;
    }

    private static List<Edge> edges(Piece piece, PanelChoice seams) {
        List<Edge> all = new ArrayList<>();
        boolean side = piece.firstOf(EdgeRole.SIDE).isPresent();
        for (Edge edge : isBody(piece) ? piece.edges() : List.<Edge>of()) {
            boolean panel = edge.role() == EdgeRole.PANEL
                    && switch (seams) {
                        case ALL_SEAMS, PANEL_SEAMS -> true;
                        case SIDE_PANELS -> side;
                        case SIDE_SEAMS -> false;
                    };
            if (panel || (edge.role() == EdgeRole.SIDE && seams != PanelChoice.PANEL_SEAMS)) {
                all.add(edge);
            }
        }
        return all;
    }

    @Override
    public List<PieceWork> work(Pattern pattern) {
        int edges = cutEdges(pattern, seams);
        List<PieceWork> work = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            StepList list = new StepList(piece);
            for (Flank flank : Flank.of(piece, edges(piece, seams))) {
                SidePivots pivots =
                        new SidePivots(flank, levels(flank, edges), hem == HemChoice.CARRIED && isSkirt(piece), list);
                if (pivots.isMoved()) {
                    if (!list.isEmpty()) {
                        list.add(new Step.LayBack());
                    }
                    pivots.added();
                }
            }
            if (!list.isEmpty()) {
                work.add(new PieceWork(piece.name(), list.finished()));
            }
        }
        return work;
    }

    private static boolean isSkirt(Piece piece) {
        return piece.kind().isSkirt();
    }

    private List<SideLevel> levels(Flank flank, int edges) {
        double bust = bustMm / edges;
        double waist = waistMm / edges;
        String at = flank.side.role() == EdgeRole.SIDE ? "side" : "panel seam";
        if (isSkirt(flank.piece)) {
            return List.of(
                    new SideLevel(flank.top("waist at the " + at), "waist mark, " + at, waist),
                    flank.level(LevelName.HIP, "hip at the " + at, "hip mark, " + at, hipMm / edges),
                    new SideLevel(flank.bottom("hem at the " + at), "hem mark, " + at, 0));
        }
        SideLevel bottom = new SideLevel(flank.bottom("waist at the " + at), "waist mark, " + at, waist);
        if (flank.side.role() == EdgeRole.SIDE) {
            return List.of(new SideLevel(flank.top("underarm point"), "bust mark, " + at, bust), bottom);
        }
        return List.of(
                new SideLevel(flank.top("top of the panel seam"), "top mark, " + at, 0),
                flank.level(LevelName.BUST, "bust level at the " + at, "bust mark, " + at, bust),
                bottom);
    }
}
