package trueseam.fitting.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import trueseam.fitting.alteration.Alteration;
import trueseam.fitting.alteration.CrotchLength;
import trueseam.fitting.alteration.LengthAtLine;
import trueseam.fitting.alteration.SideGirth;
import trueseam.fitting.alteration.SleeveGirth;
import trueseam.fitting.alteration.WristGirth;
import trueseam.fitting.compare.FitChoices;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.PieceKind;

/**
 * The alterations for given amounts, in the order of work: lengths first, because they move the levels at which widths are measured;
 * then the crotch, the widths, the sleeve (common practice).
 */
final class WorkOrder {

    private static final Set<PieceKind> UPPER =
            Set.of(PieceKind.BODICE_FRONT, PieceKind.BODICE_BACK, PieceKind.DRESS_FRONT, PieceKind.DRESS_BACK);
    private static final Set<PieceKind> BELOW_HIP =
            Set.of(PieceKind.SKIRT_FRONT, PieceKind.SKIRT_BACK, PieceKind.DRESS_FRONT, PieceKind.DRESS_BACK);
    private static final Set<PieceKind> TROUSERS = Set.of(PieceKind.TROUSER_FRONT, PieceKind.TROUSER_BACK);
    private static final Set<PieceKind> SLEEVE = Set.of(PieceKind.SLEEVE);

    /** The farthest that a crotch point is moved; the rest of a crotch length goes to the waist at the centre: 3/4 in, ours. */
    private static final double CROTCH_POINT_MM = 19.05;

    private final Amounts amounts;
    private final FitChoices choices;

    WorkOrder(Amounts amounts, FitChoices choices) {
        this.amounts = amounts;
        this.choices = choices;
    }

    List<Alteration> alterations() {
        List<Alteration> all = new ArrayList<>();
        lengths(all);
        crotch(all);
        double bust = amounts.of(Measure.BUST_GIRTH);
        double waist = amounts.of(Measure.WAIST_GIRTH);
        double hip = amounts.of(Measure.HIP_GIRTH);
        if (bust != 0 || waist != 0 || hip != 0) {
            all.add(new SideGirth(bust, waist, hip, choices.hem()));
        }
        if (amounts.of(Measure.UPPER_ARM_GIRTH) != 0) {
            all.add(new SleeveGirth(amounts.of(Measure.UPPER_ARM_GIRTH), choices.cap(), choices.reach()));
        }
        if (amounts.of(Measure.WRIST_GIRTH) != 0) {
            all.add(new WristGirth(amounts.of(Measure.WRIST_GIRTH)));
        }
        return all;
    }

    private void lengths(List<Alteration> all) {
        add(all, "Bodice length", LevelName.BODICE_LENGTH, UPPER, amounts.of(Measure.BACK_WAIST_LENGTH));
        double below = amounts.of(Measure.SKIRT_LENGTH);
        if (amounts.has(Measure.DRESS_LENGTH)) {
            below += amounts.of(Measure.DRESS_LENGTH) - amounts.of(Measure.BACK_WAIST_LENGTH);
        }
        add(all, "Length below the hip", LevelName.SKIRT_LENGTH, BELOW_HIP, below);
        add(all, "Crotch depth", LevelName.CROTCH_DEPTH, TROUSERS, amounts.of(Measure.BODY_RISE));
        double leg = amounts.of(Measure.INSIDE_LEG_LENGTH);
        if (amounts.has(Measure.TROUSER_LENGTH)) {
            // The depth does part of it: the outseam grows by both.
            leg += amounts.of(Measure.TROUSER_LENGTH) - amounts.of(Measure.BODY_RISE);
        }
        add(all, "Leg length", LevelName.ABOVE_KNEE, TROUSERS, leg / 2);
        add(all, "Leg length", LevelName.BELOW_KNEE, TROUSERS, leg / 2);
        double arm = amounts.of(Measure.ARM_LENGTH);
        double upper = amounts.has(Measure.UPPER_ARM_LENGTH) ? amounts.of(Measure.UPPER_ARM_LENGTH) : arm / 2;
        add(all, "Sleeve length", LevelName.ABOVE_ELBOW, SLEEVE, upper);
        add(all, "Sleeve length", LevelName.BELOW_ELBOW, SLEEVE, arm - upper);
    }

    private static void add(List<Alteration> all, String what, LevelName line, Set<PieceKind> on, double longerMm) {
        if (longerMm != 0) {
            all.add(new LengthAtLine(what, line, on, longerMm));
        }
    }

    private void crotch(List<Alteration> all) {
        double front = amounts.of(Measure.FRONT_CROTCH_LENGTH);
        double back = amounts.of(Measure.BACK_CROTCH_LENGTH);
        if (front != 0 || back != 0) {
            double frontPoint = Math.max(-CROTCH_POINT_MM, Math.min(CROTCH_POINT_MM, front));
            double backPoint = Math.max(-CROTCH_POINT_MM, Math.min(CROTCH_POINT_MM, back));
            all.add(new CrotchLength(frontPoint, front - frontPoint, backPoint, back - backPoint));
        }
    }
}
