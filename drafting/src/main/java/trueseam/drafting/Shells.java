package trueseam.drafting;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Path;

/**
 * Drafts fitting shells. Every method gives a whole pattern or refuses the figure with the reason.
 *
 * @see DraftException
 */
public final class Shells {

    private Shells() {}

    /**
     * A fitted bodice to the waist with its set-in sleeve.
     *
     * @param figure whom for
     * @param ease how much larger
     * @return pieces {@code bodice front}, {@code bodice back}, {@code sleeve}
     * @throws DraftException if the figure's measures do not go together
     */
    public static Pattern bodice(DraftFigure figure, DraftEase ease) {
        return bodice(figure, ease, Allowances.inches());
    }

    /**
     * A fitted bodice to the waist with its set-in sleeve.
     *
     * @param figure whom for
     * @param ease how much larger
     * @param allowances cloth outside the stitching lines
     * @return pieces {@code bodice front}, {@code bodice back}, {@code sleeve}
     * @throws DraftException if the figure's measures do not go together
     */
    public static Pattern bodice(DraftFigure figure, DraftEase ease, Allowances allowances) {
        Upper upper = Upper.of("bodice", GarmentKind.BODICE, figure, ease);
        UpperPieces pieces = new UpperPieces(upper.draft(), upper.plan(), allowances);
        UpperPlan.Sum sum = new UpperPlan.Sum(GarmentKind.BODICE, figure, ease);
        return pattern(
                "bodice",
                figure,
                List.of(pieces.bodiceFront(), pieces.bodiceBack(), sleeve(upper, allowances)),
                UpperPieces.seams("bodice", ease),
                sum,
                upperMeasures(figure));
    }

    /**
     * A straight skirt.
     *
     * @param figure whom for; its skirt length is kept
     * @param ease how much larger
     * @return pieces {@code skirt front}, {@code skirt back}
     * @throws DraftException if the figure's measures do not go together
     */
    public static Pattern skirt(DraftFigure figure, DraftEase ease) {
        return skirt(figure, ease, Allowances.inches());
    }

    /**
     * A straight skirt.
     *
     * @param figure whom for; its skirt length is kept
     * @param ease how much larger
     * @param allowances cloth outside the stitching lines
     * @return pieces {@code skirt front}, {@code skirt back}
     * @throws DraftException if the figure's measures do not go together
     */
    public static Pattern skirt(DraftFigure figure, DraftEase ease, Allowances allowances) {
        SkirtDraft draft = SkirtDraft.of(figure, ease);
        return pattern(
                "skirt",
                figure,
                List.of(draft.front(allowances), draft.back(allowances)),
                SkirtDraft.seams(),
                new UpperPlan.Sum(GarmentKind.SKIRT, figure, ease),
                List.of(Measure.WAIST_GIRTH, Measure.HIP_GIRTH, Measure.WAIST_TO_HIP, Measure.SKIRT_LENGTH));
    }

    /**
     * A dress or top without waist seam, with its set-in sleeve.
     *
     * @param figure whom for; its dress length is kept
     * @param ease how much larger
     * @return pieces {@code dress front}, {@code dress back}, {@code sleeve}
     * @throws DraftException if the figure's measures do not go together
     */
    public static Pattern dress(DraftFigure figure, DraftEase ease) {
        return dress(figure, ease, Allowances.inches());
    }

    /**
     * A dress or top without waist seam, with its set-in sleeve.
     *
     * @param figure whom for; its dress length is kept
     * @param ease how much larger
     * @param allowances cloth outside the stitching lines
     * @return pieces {@code dress front}, {@code dress back}, {@code sleeve}
     * @throws DraftException if the figure's measures do not go together
     */
    public static Pattern dress(DraftFigure figure, DraftEase ease, Allowances allowances) {
        Upper upper = Upper.of("dress", GarmentKind.DRESS, figure, ease);
        DressPieces pieces = new DressPieces(upper.draft(), upper.plan(), allowances);
        List<Measure> measures = upperMeasures(figure);
        measures.addAll(List.of(Measure.HIP_GIRTH, Measure.DRESS_LENGTH));
        return pattern(
                "dress",
                figure,
                List.of(pieces.front(), pieces.back(), sleeve(upper, allowances)),
                UpperPieces.seams("dress", ease),
                new UpperPlan.Sum(GarmentKind.DRESS, figure, ease),
                measures);
    }

    /**
     * Trousers with a straight leg to the floor; shorten at the lines for a finished length.
     *
     * @param figure whom for
     * @param ease how much larger
     * @return pieces {@code trouser front}, {@code trouser back}
     * @throws DraftException if the figure's measures do not go together
     */
    public static Pattern trousers(DraftFigure figure, DraftEase ease) {
        return trousers(figure, ease, Allowances.inches());
    }

    /**
     * Trousers with a straight leg to the floor; shorten at the lines for a finished length.
     *
     * @param figure whom for
     * @param ease how much larger
     * @param allowances cloth outside the stitching lines
     * @return pieces {@code trouser front}, {@code trouser back}
     * @throws DraftException if the figure's measures do not go together
     */
    public static Pattern trousers(DraftFigure figure, DraftEase ease, Allowances allowances) {
        TrouserDraft draft = TrouserDraft.of(figure, ease);
        return pattern(
                "trousers",
                figure,
                List.of(draft.front(allowances), draft.back(allowances)),
                TrouserDraft.seams(),
                new UpperPlan.Sum(GarmentKind.TROUSERS, figure, ease),
                List.of(
                        Measure.WAIST_GIRTH,
                        Measure.HIP_GIRTH,
                        Measure.BODY_RISE,
                        Measure.FRONT_CROTCH_LENGTH,
                        Measure.BACK_CROTCH_LENGTH,
                        Measure.KNEE_GIRTH,
                        Measure.INSIDE_LEG_LENGTH));
    }

    /** What an upper shell is drafted to; over the bust only where it is shaped there. */
    static List<Measure> upperMeasures(DraftFigure figure) {
        List<Measure> measures = new ArrayList<>(List.of(
                figure.trunkGirth(),
                Measure.WAIST_GIRTH,
                Measure.ACROSS_FRONT_WIDTH,
                Measure.ACROSS_BACK_WIDTH,
                Measure.SHOULDER_LENGTH,
                Measure.NECK_BASE_GIRTH,
                Measure.BACK_WAIST_LENGTH,
                Measure.UPPER_ARM_GIRTH,
                Measure.ELBOW_GIRTH,
                Measure.WRIST_GIRTH,
                Measure.ARM_LENGTH,
                Measure.UPPER_ARM_LENGTH));
        if (figure.build() == Build.WOMEN) {
            measures.addAll(
                    List.of(Measure.FRONT_WAIST_LENGTH_OVER_BUST, Measure.BUST_POINT_HEIGHT, Measure.BUST_POINT_WIDTH));
        }
        return measures;
    }

    static Piece sleeve(Upper upper, Allowances allowances) {
        Path front = upper.draft().frontArmhole();
        Path back = upper.draft().backArmhole();
        return upper.sleeve().piece(allowances, UpperPieces.notchMm(front), UpperPieces.notchMm(back));
    }

    static Pattern pattern(
            String shell,
            DraftFigure figure,
            List<Piece> pieces,
            List<Seam> seams,
            UpperPlan.Sum sum,
            List<Measure> stated) {
        return new Pattern(
                shell + " for " + figure.label(),
                figure.size(),
                figure.sizeTable(),
                "A fitting shell drafted by Trueseam to the measures of " + figure.label() + ".",
                pieces,
                seams,
                sum.eases(stated));
    }
}
