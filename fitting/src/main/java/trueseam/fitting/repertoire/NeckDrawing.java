package trueseam.fitting.repertoire;

import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.geometry.Motion;
import trueseam.geometry.Vec;

/** Draws a neck line whose two ends move by their own ways: either end is traced as it is, and a smooth line joins them. */
final class NeckDrawing {

    /** How much of the centre is ruled new below the neck, beside what the neck goes down, mm. */
    private static final double CENTRE_MM = 5;

    /** How much of the neck line is drawn new beside a seam that was turned. */
    private static final double BESIDE_TURNED_SHARE = 0.75;

    private final StepList list;
    private final UpperPart part;

    NeckDrawing(StepList list, UpperPart part) {
        this.list = list;
        this.part = part;
    }

    /** Traces the part of the neck line beside the neck point where the pattern lies now. */
    void traceTop(double share) {
        Place neck = part.neckTop();
        part.trace(neck, 0, share * part.length(neck));
    }

    /** Traces the neck at the centre so much higher. */
    void traceCentre(double upMm, double share) {
        if (upMm != 0) {
            Place neck = part.neckTop();
            double whole = part.length(neck);
            list.add(new Step.Slide(0, upMm));
            part.trace(neck, (1 - share) * whole, whole);
            list.add(new Step.LayBack());
            part.join(part.centreTop(), 0, Math.max(0, -upMm) + CENTRE_MM, JoinForm.STRAIGHT);
        }
    }

    /**
     * Joins the line between the two ends in its own length, or says that it cannot be drawn so.
     *
     * @param top where the pattern lay when the part beside the neck point was traced
     * @param upMm how much higher the part beside the centre was traced
     * @param share how much of either end was traced
     */
    void between(Motion top, double upMm, double share, double mm) {
        Place neck = part.neckTop();
        double whole = part.length(neck);
        double end = share * whole;
        part.joinOfLength(neck, end, whole - end, top, Motion.slide(new Vec(0, upMm)), whole - 2 * end, mm);
    }

    /** The same, but longer by so much, as nearly as it can be drawn. */
    void betweenLonger(Motion top, double upMm, double share, double longerMm) {
        Place neck = part.neckTop();
        double whole = part.length(neck);
        double end = share * whole;
        double wanted = whole - 2 * end + longerMm;
        part.joinNearLength(neck, end, whole - end, top, Motion.slide(new Vec(0, upMm)), wanted);
    }

    /** Draws the neck line in its length to a seam that was turned about the neck point, so that their corner keeps its angle. */
    void besideTurned(Motion seam, double mm) {
        Place neck = part.neckTop();
        double drawn = BESIDE_TURNED_SHARE * part.length(neck);
        part.joinOfLength(neck, 0, drawn, seam, Motion.NONE, drawn, mm);
    }
}
