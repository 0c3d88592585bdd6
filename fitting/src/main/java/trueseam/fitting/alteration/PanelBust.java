package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;

/**
 * Bust of a front in panels, fuller or smaller, at the panel seams alone: N/4 at each of the four edges of the two seams, running
 * out to nothing at the top of the seam and at the waist (common practice).
 *
 * <p>Moves the panel edges of the front. Pins: the top of the seam, then the bust level on it. Must stay: shoulder, armhole, side,
 * waist, the back. Trued: the seam at the bust level.
 *
 * @param totalMm at the bust level, mm
 */
public record PanelBust(double totalMm) implements Alteration {

    private static final int EDGES = 4;

    @Override
    public String title() {
        return "Bust at the front panel seams";
    }

    @Override
    public List<PieceWork> work(Pattern pattern) {
        List<PieceWork> work = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            List<Edge> edges = piece.edgesOf(EdgeRole.PANEL);
            if (piece.kind().isUpper() && piece.kind().isFront() && edges.size() == 1 && totalMm != 0) {
                StepList list = new StepList(piece);
                Flank flank = Flank.of(piece, edges).get(0);
                new SidePivots(flank, levels(flank), false, list).added();
                work.add(new PieceWork(piece.name(), list.finished()));
            }
        }
        return work;
    }

    private List<SideLevel> levels(Flank flank) {
        double bust = flank.alongAt(LevelName.BUST)
                .orElseThrow(() -> new AlterationException(
                        flank.piece.name(),
                        flank.side.name(),
                        totalMm,
                        "the bust level does not cross this edge; mark the level on the piece."));
        return List.of(
                new SideLevel(flank.top("top of the panel seam"), "top mark", 0),
                new SideLevel(
                        new Place(flank.side.name(), bust, "bust level at the panel seam"),
                        "bust mark",
                        totalMm / EDGES),
                new SideLevel(flank.bottom("waist at the panel seam"), "waist mark", 0));
    }
}
