package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Stretch;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Point;

/**
 * The part of a skirt or of trousers above the hip line, swung about the hip at the side seam so that the centre of the waist rises or
 * falls, to nothing at the side. The centre comes back to its line; what that adds to the waist the darts take, each its share.
 *
 * <pre>{@code
 *     ___ /\ ____.W        the centre rises, the side goes out a little at the waist,
 *    |    \/     \         the dart takes what the centre is brought back
 *    |-------------H       cut along the hip line to the hinge at the side
 *    |             |
 * }</pre>
 */
final class UpperSwing {

    /** Where a dart that is made anew ends, as a share of the way from waist to hip (common practice). */
    private static final double NEW_DART_SHARE = 0.6;

    private final StepList list;
    private final Piece piece;
    private final SeamLine side;
    private final SeamLine centre;
    private final Edge waist;
    private final Place hip;
    private final Place centreHip;
    private final Place centreWaist;
    private final Place sideWaist;

    private UpperSwing(StepList list, Piece piece) {
        this.list = list;
        this.piece = piece;
        this.side = new SeamLine(piece, EdgeRole.SIDE);
        this.centre = new SeamLine(piece, piece.kind().isTrouser() ? EdgeRole.CROTCH : EdgeRole.CENTRE);
        this.waist = piece.only(EdgeRole.WAIST);
        this.hip = side.at(LevelName.HIP, "hip point");
        this.centreHip = centre.at(LevelName.HIP, "centre at the hip line");
        Corners corners = new Corners(piece);
        this.centreWaist = corners.centreWaist();
        this.sideWaist = corners.at(EdgeRole.WAIST, EdgeRole.SIDE, "side waist");
    }

    /**
     * Writes the steps down.
     *
     * @param upMm how far the waist rises at the centre, mm
     * @param wideMm how far the side goes out from the hip down, mm
     */
    static void write(StepList list, Piece piece, double upMm, double wideMm) {
        new UpperSwing(list, piece).write(upMm, wideMm);
    }

    /**
     * Tilts the waist line alone about the side waist, without cutting.
     *
     * @param upMm how far the waist rises at the centre, mm
     */
    static void tiltWaist(StepList list, Piece piece, double upMm) {
        UpperSwing tilt = new UpperSwing(list, piece);
        Point was = tilt.centreWaist.on(piece);
        Motion swing = Swing.along(piece, Spot.of(piece, tilt.sideWaist), Spot.of(piece, tilt.centreWaist), upMm);
        double over = swing.apply(was).x() - was.x();
        if (!piece.dartsOn(tilt.waist.name())
                .isEmpty()) { // without one, ruling the centre fills or trims a hair's breadth
            tilt.requireDarts(tilt.side.outward() * over, upMm);
        }
        list.add(new Step.Mark("waist mark", tilt.centreWaist, 0, upMm));
        list.add(new Step.Pin(tilt.sideWaist));
        list.add(new Step.Pivot(new Until.MeetsAlong(tilt.centreWaist, "waist mark")));
        tilt.traceWaist(over, false);
        list.add(new Step.Straighten(tilt.centre.edge.name()));
    }

    private void write(double upMm, double wideMm) {
        double out = side.outward();
        Point was = centreWaist.on(piece);
        Motion swing = Swing.along(piece, Spot.of(piece, hip), Spot.of(piece, centreWaist), upMm);
        double over = swing.apply(was).x() - was.x() + out * wideMm;
        requireDarts(out * over, upMm);
        if (wideMm != 0) {
            list.add(new Step.Slide(out * wideMm, 0));
            list.trace(side.bottom(""), hip);
            side.joinBeside(list, EdgeRole.HEM, false);
            list.add(new Step.LayBack());
        }
        list.cut("upper part", centreHip, List.of(), hip, centreWaist);
        list.add(new Step.Spread(Spot.of(piece, hip), new Until.MovesAlong(Spot.of(piece, centreWaist), upMm)));
        if (wideMm != 0) {
            list.add(new Step.Slide(out * wideMm, 0));
        }
        list.trace(hip, side.top(""));
        traceWaist(over, true);
        if (piece.kind().isTrouser()) {
            list.join(centre.top(""), centreHip, JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
        } else {
            list.add(new Step.Straighten(centre.edge.name()));
        }
    }

    /** From the side to the centre; what lies beyond each dart is brought back by one share more. */
    private void traceWaist(double overMm, boolean cut) {
        boolean sideFirst = sideWaist.alongMm() < centreWaist.alongMm();
        List<Dart.EdgeDart> darts = new ArrayList<>(piece.dartsOn(waist.name()));
        if (!sideFirst) {
            Collections.reverse(darts);
        }
        double at = sideWaist.alongMm();
        if (darts.isEmpty() && cut && overMm != 0) {
            at = newDart(overMm, at);
        }
        int part = 1;
        for (Dart.EdgeDart dart : darts) {
            trace(at, sideFirst ? dart.fromMm() : dart.toMm());
            at = sideFirst ? dart.toMm() : dart.fromMm();
            if (cut) {
                cutLoose(partWord(part++, darts.size()), at, new Spot(dart.apex(), "point of the " + dart.name()));
            }
            list.add(new Step.Slide(-overMm / darts.size(), 0));
            list.join(waist.name(), dart.fromMm(), dart.toMm(), JoinForm.REFIT);
        }
        trace(at, centreWaist.alongMm());
    }

    private static String partWord(int part, int darts) {
        return part == darts ? "centre part" : "part between the darts";
    }

    private void cutLoose(String part, double fromMm, Spot turn) {
        list.cut(
                part,
                new Place(waist.name(), fromMm, "leg of the dart nearer the centre"),
                List.of(turn),
                centreHip,
                centreWaist);
    }

    private double newDart(double overMm, double sideMm) {
        double middle = waist.length() / 2;
        Point mouth = waist.path().pointAt(middle);
        double hipY = hip.on(piece).y();
        Spot point = new Spot(
                new Point(mouth.x(), mouth.y() + NEW_DART_SHARE * (hipY - mouth.y())), "point of the new dart");
        trace(sideMm, middle);
        cutLoose(partWord(1, 1), middle, point);
        list.add(new Step.Slide(-overMm, 0));
        list.join(waist.name(), middle, middle, JoinForm.STRAIGHT);
        list.add(new Step.NewDart("waist dart", new Stretch(waist.name(), middle, middle), point));
        return middle;
    }

    private void trace(double oneMm, double otherMm) {
        list.trace(waist.name(), Math.min(oneMm, otherMm), Math.max(oneMm, otherMm));
    }

    private void requireDarts(double widerMm, double amountMm) {
        List<Dart.EdgeDart> darts = piece.dartsOn(waist.name());
        if (darts.isEmpty() && widerMm < 0) {
            throw new AlterationException(
                    piece.name(),
                    "waist",
                    amountMm,
                    "there is no dart to take the width from; take it at the side seams or take the next size.");
        }
        for (Dart.EdgeDart dart : darts) {
            WaistDarts.requireHolds(piece, dart, widerMm / darts.size(), amountMm);
        }
    }
}
