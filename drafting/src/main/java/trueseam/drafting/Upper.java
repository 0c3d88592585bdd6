package trueseam.drafting;

import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;

/**
 * Front, back and sleeve that go together: the armhole is made as deep as the sleeve needs for a cap of a fair height.
 *
 * @param plan what was to be measured
 * @param draft front and back
 * @param sleeve the sleeve
 */
record Upper(UpperPlan plan, UpperDraft draft, SleeveDraft sleeve) {

    /** Cap height over sleeve width that hangs well (our choice, in the range of common practice, a third to a half). */
    private static final double FAIR_CAP = 0.37;

    /** Lower than this a cap is no set-in cap any more. */
    private static final double LOWEST_CAP = 0.1;

    /** An armhole deeper than this below its ease would hinder the arm. */
    private static final double DEEPEST_MM = 75;

    private static final double LEAST_SIDE_LEFT_MM = 90;

    private static final double FAIR_WITHIN_MM = 0.5;
    private static final int ROUNDS = 6;

    static Upper of(String shell, GarmentKind kind, DraftFigure figure, DraftEase ease) {
        return of(UpperPlan.of(shell, kind, figure, ease), kind, figure, ease);
    }

    static Upper of(UpperPlan plan, GarmentKind kind, DraftFigure figure, DraftEase ease) {
        return of(new UpperDraft(plan), kind, figure, ease);
    }

    static Upper of(UpperDraft draft, GarmentKind kind, DraftFigure figure, DraftEase ease) {
        UpperPlan plan = draft.plan();
        String shell = plan.shell();
        UpperPlan.Sum sum = new UpperPlan.Sum(kind, figure, ease);
        double width = SleeveDraft.widthMm(sum);
        double deepest = Math.min(DEEPEST_MM, plan.backLength() - plan.scyeDepth() - LEAST_SIDE_LEFT_MM);
        double deeper = 0;
        double height = 0;
        double half = 0;
        for (int i = 0; i < ROUNDS; i++) {
            draft.roughly(deeper);
            double front = draft.frontArmhole().length() + ease.capMm() / 2;
            double back = draft.backArmhole().length() + ease.capMm() / 2;
            half = (front + back) / 2;
            height = Cap.heightMm(width, front, back);
            double lacking = FAIR_CAP * width - height;
            double next = Math.max(0, Math.min(deepest, deeper + lacking / gain(half, height)));
            if (Math.abs(next - deeper) < FAIR_WITHIN_MM) {
                break;
            }
            deeper = next;
        }
        if (height < LOWEST_CAP * width) {
            throw new DraftException(
                    shell,
                    Measure.UPPER_ARM_GIRTH,
                    width,
                    2 * half,
                    "the sleeve is too wide for its armhole; give less ease to the upper arm or more to the scye depth");
        }
        draft.exactly();
        double front = draft.frontArmhole().length() + ease.capMm() / 2;
        double back = draft.backArmhole().length() + ease.capMm() / 2;
        return new Upper(plan, draft, SleeveDraft.of(shell, sum, front, back));
    }

    /**
     * How much the cap rises as the armhole deepens. A half cap and the half sleeve are sides of one triangle, h dh = p dp,
     * and each half of the armhole grows by about the deepening.
     */
    private static double gain(double half, double height) {
        return half / Math.max(height, half / 3);
    }
}
