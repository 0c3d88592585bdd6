package trueseam.fitting.alteration;

import java.util.List;
import java.util.OptionalDouble;
import trueseam.fitting.tissue.Place;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.OutOfReachException;
import trueseam.geometry.Point;

/**
 * One half of a one-piece sleeve: its cap, its underarm seam and its end of the wrist. The outline is anticlockwise, so the
 * right half's cap runs from the underarm to the crown and the left half's from the crown to the underarm.
 *
 * @param piece the sleeve
 * @param right whether it lies to the right of the crown
 * @param cap its half of the cap
 * @param seam its seam under the arm
 */
public record SleeveHalf(Piece piece, boolean right, Edge cap, Edge seam) {

    /** Where no notch says where the ease begins: this share of the half cap, from the underarm. */
    private static final double LOWER_SHARE = 0.4;

    private static final double SAME_PLACE_MM = 1e-6;

    /**
     * The halves of a sleeve.
     *
     * @param piece a one-piece sleeve
     * @return right half, left half
     */
    public static List<SleeveHalf> of(Piece piece) {
        List<Edge> caps = piece.edgesOf(EdgeRole.CAP);
        List<Edge> seams = piece.edgesOf(EdgeRole.UNDERARM);
        if (caps.size() != 2 || seams.size() != 2) {
            throw new AlterationException(
                    piece.name(),
                    "cap",
                    0,
                    "a one-piece sleeve has two cap edges and two underarm edges, and " + caps.size() + " and "
                            + seams.size() + " were found; name its edges.");
        }
        boolean firstIsRight =
                caps.get(0).path().end().isNear(caps.get(1).path().start(), SAME_PLACE_MM);
        Edge rightCap = firstIsRight ? caps.get(0) : caps.get(1);
        Edge leftCap = firstIsRight ? caps.get(1) : caps.get(0);
        Edge rightSeam =
                seams.get(0).path().end().isNear(rightCap.path().start(), SAME_PLACE_MM) ? seams.get(0) : seams.get(1);
        Edge leftSeam = rightSeam.equals(seams.get(0)) ? seams.get(1) : seams.get(0);
        return List.of(
                new SleeveHalf(piece, true, rightCap, rightSeam), new SleeveHalf(piece, false, leftCap, leftSeam));
    }

    /**
     * Which way its outside lies.
     *
     * @return 1 to the right, -1 to the left
     */
    public double outward() {
        return right ? 1 : -1;
    }

    /**
     * What to call it.
     *
     * @return front or back, from the edge's own name
     */
    public String word() {
        String name = cap.name();
        return name.contains("front") ? "front" : name.contains("back") ? "back" : right ? "right" : "left";
    }

    /**
     * Whether it is sewn into the back armhole: by its name, else by its notch of two cuts, else the left one.
     *
     * @return true for the back half
     */
    public boolean isBack() {
        String word = word();
        if (word.equals("front") || word.equals("back")) {
            return word.equals("back");
        }
        for (Notch notch : piece.notches()) {
            if (notch.edge().equals(cap.name()) && notch.kind() == Notch.Kind.DOUBLE) {
                return true;
            }
        }
        return !right;
    }

    /**
     * The crown.
     *
     * @return its place on this half's cap
     */
    public Place crown() {
        return right ? Place.endOf(piece, cap.name(), "crown") : Place.startOf(cap.name(), "crown");
    }

    /**
     * The underarm point.
     *
     * @return its place on the seam
     */
    public Place underarm() {
        String said = word() + " underarm point";
        return right ? Place.endOf(piece, seam.name(), said) : Place.startOf(seam.name(), said);
    }

    /**
     * The lower end of the seam.
     *
     * @return its place on the seam
     */
    public Place wristCorner() {
        String said = word() + " wrist corner";
        return right ? Place.startOf(seam.name(), said) : Place.endOf(piece, seam.name(), said);
    }

    /**
     * A place of the seam.
     *
     * @param mm how far from the underarm
     * @return along the seam's own direction, mm
     */
    public double seamBelowUnderarm(double mm) {
        return right ? seam.length() - mm : mm;
    }

    /**
     * A place of the cap.
     *
     * @param mm how far from the underarm
     * @return along the cap's own direction, mm
     */
    public double capFromUnderarm(double mm) {
        return right ? mm : cap.length() - mm;
    }

    /**
     * From the underarm to the first notch of the cap: the part below the ease.
     *
     * @return mm
     */
    public double lowerCapMm() {
        double nearest = Double.POSITIVE_INFINITY;
        for (Notch notch : piece.notches()) {
            if (notch.edge().equals(cap.name())) {
                double from = right ? notch.atMm() : cap.length() - notch.atMm();
                if (from > 1) {
                    nearest = Math.min(nearest, from);
                }
            }
        }
        return nearest < 0.7 * cap.length() ? nearest : LOWER_SHARE * cap.length();
    }

    /**
     * Where a level crosses the seam.
     *
     * @param level the level
     * @return along the seam's own direction, mm; nothing if the level is missing or does not cross it
     */
    public OptionalDouble seamAt(LevelName level) {
        OptionalDouble y = piece.level(level);
        if (y.isEmpty()) {
            return OptionalDouble.empty();
        }
        var place = seam.path().atLevel(y.getAsDouble());
        return place.isPresent() ? OptionalDouble.of(place.get().alongMm()) : OptionalDouble.empty();
    }

    /** How much the underarm rises when the half cap pivots about the crown until the underarm is so far out. */
    double rise(double outMm) throws OutOfReachException {
        Point pin = crown().on(piece);
        Point q = underarm().on(piece);
        return Motion.pivotAcross(pin, q, outward() * outMm).apply(q).y() - q.y();
    }
}
