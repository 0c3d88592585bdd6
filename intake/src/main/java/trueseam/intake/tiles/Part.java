package trueseam.intake.tiles;

import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.intake.drawing.Stroke;

/**
 * What one page shows of a line, where it lies on the whole sheet.
 *
 * @param path the part
 * @param of the line
 * @param leaf the page
 * @param startMm how far from an edge to another page it begins, mm
 * @param endMm how far from one it ends
 * @param along whether it runs along such an edge
 */
record Part(Path path, Stroke of, int leaf, double startMm, double endMm, boolean along) {

    /** An end so near to an edge may have been cut there, mm: files cut a little before it or behind it. */
    private static final double AT_EDGE_MM = 0.5;

    /** An end so near to an edge was cut there, mm. */
    private static final double CUT_MM = 0.02;

    boolean mayGoOn(boolean last) {
        return !path.isClosed() && (last ? endMm : startMm) < AT_EDGE_MM;
    }

    /** One of its two ends. */
    record End(Part part, int number, boolean last) {

        Point at() {
            return last ? part.path.end() : part.path.start();
        }

        boolean isCut() {
            return (last ? part.endMm : part.startMm) < CUT_MM;
        }

        Vec outward() {
            return last ? part.path.endTangent() : part.path.startTangent().reversed();
        }
    }

    Stroke with(Path whole) {
        return new Stroke(whole, of.look(), of.layer(), of.label());
    }
}
