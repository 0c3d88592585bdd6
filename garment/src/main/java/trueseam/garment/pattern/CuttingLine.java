package trueseam.garment.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.geometry.Path;
import trueseam.geometry.offset.Margin;
import trueseam.geometry.offset.Offset;
import trueseam.geometry.polygon.Region;

/** Where a piece is cut: each stitching edge with its own allowance, corners mitred, nothing added at a fold. */
public final class CuttingLine {

    /** How far the drawn line may lie from the true one: a tenth of the finest line, mm. */
    public static final double TOLERANCE_MM = 0.01;

    private CuttingLine() {}

    /**
     * The cutting line of a piece, if it has one.
     *
     * @param piece any piece
     * @return its cutting line, or nothing if the outline crosses itself: what lies in and out cannot be told then
     */
    public static Optional<Path> find(Piece piece) {
        return Region.faultOf(piece.outline(), TOLERANCE_MM).isPresent() ? Optional.empty() : Optional.of(of(piece));
    }

    /**
     * The cutting line of a piece.
     *
     * @param piece the piece, its outline simple
     * @return a simple closed path, anticlockwise
     * @throws trueseam.geometry.GeometryException if the outline crosses itself
     */
    public static Path of(Piece piece) {
        List<Margin> margins = new ArrayList<>();
        boolean none = true;
        for (Edge edge : piece.edges()) {
            margins.add(new Margin(edge.path(), edge.allowanceMm()));
            none &= edge.allowanceMm() == 0;
        }
        return none ? piece.outline() : Offset.outline(margins, TOLERANCE_MM);
    }
}
