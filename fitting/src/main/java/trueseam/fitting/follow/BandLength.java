package trueseam.fitting.follow;

import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Vec;

/**
 * Length of a band: it is cut across near one of its ends, and the end slides along the seam. Of a waistband or collar that end is the
 * centre back [ND1921]; of a cuff either.
 */
final class BandLength {

    /** How far from the end the band is cut across, mm. */
    private static final double FROM_END_MM = 12.7;

    private final Piece band;
    private final Edge sewn;
    private final boolean endIsAfter;
    private final Edge end;
    private final Edge free;

    BandLength(Piece band, String sewnEdge) {
        this.band = band;
        this.sewn = band.edge(sewnEdge);
        int n = band.edges().size();
        int i = band.indexOf(sewnEdge);
        Edge after = band.edges().get((i + 1) % n);
        Edge before = band.edges().get((i + n - 1) % n);
        this.endIsAfter = after.role() == EdgeRole.CENTRE || before.role() != EdgeRole.CENTRE;
        this.end = endIsAfter ? after : before;
        this.free = band.edges().get((i + (endIsAfter ? 2 : n - 2)) % n);
    }

    PieceWork longer(double mm) {
        double lap = Math.max(0, -mm);
        if (Math.min(sewn.length(), free.length()) < FROM_END_MM + lap + 1) {
            throw new AlterationException(
                    band.name(), sewn.name(), mm, "the band is too short to give so much; cut it new to its seam.");
        }
        Vec along = endIsAfter
                ? sewn.path().endTangent()
                : sewn.path().startTangent().times(-1);
        StepList list = new StepList(band);
        list.add(new Step.Slide(along.x() * mm, along.y() * mm));
        list.trace(end.name(), 0, end.length());
        part(list, sewn, endIsAfter, lap);
        part(list, free, !endIsAfter, lap);
        return new PieceWork(band.name(), list.finished());
    }

    /** The part of a long edge near the end goes with it; the rest stays, less what laps. */
    private static void part(StepList list, Edge edge, boolean atItsEnd, double lapMm) {
        double whole = edge.length();
        if (atItsEnd) {
            double at = whole - FROM_END_MM;
            list.trace(edge.name(), at, whole);
            list.join(edge.name(), at - lapMm, at, JoinForm.STRAIGHT);
        } else {
            list.trace(edge.name(), 0, FROM_END_MM);
            list.join(edge.name(), FROM_END_MM, FROM_END_MM + lapMm, JoinForm.STRAIGHT);
        }
    }
}
