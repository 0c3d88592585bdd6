package trueseam.drafting;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;

/**
 * Drafts bodices whose sleeves are not set in. Every method gives a whole pattern or refuses the figure with the reason.
 *
 * @see DraftException
 */
public final class SleevedShells {

    private SleevedShells() {}

    /**
     * A bodice with the sleeve cut in one with front and back.
     *
     * @param figure whom for
     * @param ease how much larger
     * @param allowances cloth outside the stitching lines
     * @return pieces {@code kimono front}, {@code kimono back}
     * @throws DraftException if the figure's measures do not go together
     */
    public static Pattern kimono(DraftFigure figure, DraftEase ease, Allowances allowances) {
        KimonoDraft draft = KimonoDraft.of(figure, ease);
        List<Measure> measures = common(figure);
        if (figure.build() == Build.WOMEN) {
            measures.addAll(List.of(Measure.FRONT_WAIST_LENGTH_OVER_BUST, Measure.BUST_POINT_HEIGHT));
        }
        return Shells.pattern(
                "kimono",
                figure,
                List.of(draft.front(allowances), draft.back(allowances)),
                KimonoDraft.seams(ease),
                new UpperPlan.Sum(GarmentKind.BODICE, figure, ease),
                measures);
    }

    /**
     * A bodice with sleeves whose seams run to the neck.
     *
     * @param figure whom for
     * @param ease how much larger; nothing is eased into the raglan seams
     * @param allowances cloth outside the stitching lines
     * @return pieces {@code raglan front}, {@code raglan back}, {@code raglan sleeve}
     * @throws DraftException if the figure's measures do not go together
     */
    public static Pattern raglan(DraftFigure figure, DraftEase ease, Allowances allowances) {
        RaglanDraft draft = RaglanDraft.of(figure, ease);
        List<Measure> measures = common(figure);
        measures.addAll(List.of(Measure.ELBOW_GIRTH, Measure.UPPER_ARM_LENGTH));
        return Shells.pattern(
                "raglan",
                figure,
                List.of(draft.front(allowances), draft.back(allowances), draft.sleeve(allowances)),
                RaglanDraft.seams(),
                new UpperPlan.Sum(GarmentKind.BODICE, figure, ease),
                measures);
    }

    private static List<Measure> common(DraftFigure figure) {
        List<Measure> measures = new ArrayList<>(List.of(
                figure.trunkGirth(),
                Measure.WAIST_GIRTH,
                Measure.SHOULDER_LENGTH,
                Measure.NECK_BASE_GIRTH,
                Measure.BACK_WAIST_LENGTH,
                Measure.UPPER_ARM_GIRTH,
                Measure.WRIST_GIRTH,
                Measure.ARM_LENGTH));
        if (figure.build() == Build.WOMEN) {
            measures.add(Measure.BUST_POINT_WIDTH);
        }
        return measures;
    }
}
