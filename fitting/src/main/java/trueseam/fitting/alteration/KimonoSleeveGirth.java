package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Stretch;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.Pattern;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * Upper arm and wrist of a kimono sleeve, at the seam under the arm, front and back alike: half of the total on each.
 *
 * <pre>{@code
 *    S-----------------T     The pattern slides square to the overarm until Q is out far enough,
 *    |    _Q___________|     and is pivoted about Q until L meets its mark: the straight part of
 *    |   /             L     the seam is traced. The curve from U to Q is joined again.
 *    |  U
 * }</pre>
 *
 * <p>Must stay: the side seam, the overarm and its length, the neck. Source: common practice.
 *
 * @param armMm total at the upper arm, mm
 * @param wristMm total at the wrist, mm
 */
public record KimonoSleeveGirth(double armMm, double wristMm) implements Alteration {

    private static final String WRIST_MARK = "wrist mark";

    /** So much of the wrist edge is drawn new beside a corner that moved. */
    private static final double WRIST_SHARE = 0.6;

    @Override
    public String title() {
        String what = armMm == 0 ? "Wrist girth" : wristMm == 0 ? "Upper arm girth" : "Upper arm and wrist girth";
        return what + " at the seam under the arm";
    }

    @Override
    public List<PieceWork> work(Pattern pattern) {
        List<PieceWork> work = new ArrayList<>();
        if (armMm == 0 && wristMm == 0) {
            return work;
        }
        List<KimonoSleeve> sleeves = KimonoSleeve.of(pattern);
        double growth = Double.NEGATIVE_INFINITY;
        for (KimonoSleeve sleeve : sleeves) {
            growth = Math.max(growth, curveLengthMm(sleeve) - sleeve.turn().lengthMm());
        }
        for (KimonoSleeve sleeve : sleeves) {
            double least = sleeve.turn().lengthMm() + growth - KimonoSleeve.WALKED_MM;
            work.add(new PieceWork(sleeve.piece.name(), steps(sleeve, Math.max(least, curveLengthMm(sleeve)))));
        }
        return work;
    }

    private List<Step> steps(KimonoSleeve sleeve, double curveMm) {
        Vec arm = sleeve.down().times(armMm / 2);
        Vec wrist = sleeve.down().times(wristMm / 2);
        Place low = sleeve.underWrist();
        StepList list = new StepList(sleeve.piece);
        list.add(new Step.Mark(WRIST_MARK, low, wrist.x(), wrist.y()));
        if (armMm != 0) {
            list.add(new Step.Slide(arm.x(), arm.y()));
        }
        list.add(new Step.Pin(sleeve.upperArm()));
        list.add(new Step.Pivot(new Until.MeetsAlong(low, WRIST_MARK)));
        Stretch straight = sleeve.straight();
        list.trace(straight.edge(), straight.fromMm(), straight.toMm());
        Stretch turn = sleeve.turn();
        list.join(
                turn.edge(),
                turn.fromMm(),
                turn.toMm(),
                JoinForm.curveOfLength(Direction.AS_DRAWN, Direction.AS_DRAWN, curveMm));
        double whole = sleeve.wrist.length();
        boolean starts = sleeve.wrist.path().start().isNear(low.on(sleeve.piece), Path.CHAIN_MM);
        list.join(
                sleeve.wrist.name(),
                starts ? 0 : (1 - WRIST_SHARE) * whole,
                starts ? WRIST_SHARE * whole : whole,
                JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
        return list.finished();
    }

    /** The gentle curve from the side to where the straight part comes to lie, found beforehand so that front and back agree. */
    private double curveLengthMm(KimonoSleeve sleeve) {
        Path under = sleeve.under.path();
        Stretch turn = sleeve.turn();
        Vec arm = sleeve.down().times(armMm / 2);
        Point pin = sleeve.upperArm().on(sleeve.piece);
        Point low = sleeve.underWrist().on(sleeve.piece);
        Vec was = low.minus(pin);
        Vec wanted = was.plus(sleeve.down().times((wristMm - armMm) / 2));
        Motion swung = Motion.pivot(pin, was.angleTo(wanted)).then(Motion.slide(arm));
        boolean outwards = sleeve.isUnderOutwards();
        Point from = under.pointAt(turn.fromMm());
        Point to = under.pointAt(turn.toMm());
        Vec leaving = under.tangentAt(turn.fromMm());
        Vec arriving = under.tangentAt(turn.toMm());
        return outwards
                ? Joining.smooth(from, leaving, swung.apply(to), swung.apply(arriving))
                        .length()
                : Joining.smooth(swung.apply(from), swung.apply(leaving), to, arriving)
                        .length();
    }
}
