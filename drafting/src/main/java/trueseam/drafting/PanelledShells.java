package trueseam.drafting;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;

/**
 * Drafts shells in more parts: the same measures as {@link Shells}, with seams where those have darts. Every method gives a whole
 * pattern or refuses the figure with the reason.
 *
 * @see DraftException
 */
public final class PanelledShells {

    /** How far each seam edge of a gored skirt swings out from hip to hem: 1 1/2 in (our choice). */
    public static final double FLARE_MM = 38.1;

    private PanelledShells() {}

    /**
     * A princess bodice: front and back each in a centre and a side panel, with the seams from the shoulder over bust point and
     * shoulder blade to the waist and all darts taken into them; with its set-in sleeve.
     *
     * @param figure whom for
     * @param ease how much larger
     * @param allowances cloth outside the stitching lines
     * @return pieces {@code bodice centre front}, {@code bodice side front}, {@code bodice side back}, {@code bodice centre back},
     *     {@code sleeve}
     * @throws DraftException if the figure's measures do not go together
     */
    public static Pattern princess(DraftFigure figure, DraftEase ease, Allowances allowances) {
        PrincessDraft draft = PrincessDraft.of(figure, ease);
        List<Piece> pieces = new ArrayList<>(draft.pieces(allowances));
        pieces.add(Shells.sleeve(draft.upper(), allowances));
        return Shells.pattern(
                "princess bodice",
                figure,
                pieces,
                PrincessDraft.seams(ease),
                new UpperPlan.Sum(GarmentKind.BODICE, figure, ease),
                Shells.upperMeasures(figure));
    }

    /**
     * A skirt of six gores.
     *
     * @param figure whom for; its skirt length is kept
     * @param ease how much larger
     * @param allowances cloth outside the stitching lines
     * @return pieces {@code skirt centre front}, {@code skirt side front}, {@code skirt side back}, {@code skirt centre back}
     * @throws DraftException if the figure's measures do not go together
     */
    public static Pattern gored(DraftFigure figure, DraftEase ease, Allowances allowances) {
        GoredDraft draft = GoredDraft.of(figure, ease, FLARE_MM);
        return Shells.pattern(
                "gored skirt",
                figure,
                List.of(
                        draft.centreGore(true, allowances),
                        draft.sideGore(true, allowances),
                        draft.sideGore(false, allowances),
                        draft.centreGore(false, allowances)),
                GoredDraft.seams(),
                new UpperPlan.Sum(GarmentKind.SKIRT, figure, ease),
                List.of(Measure.WAIST_GIRTH, Measure.HIP_GIRTH, Measure.WAIST_TO_HIP, Measure.SKIRT_LENGTH));
    }

    /**
     * The fitted bodice with a set-in sleeve of two pieces.
     *
     * @param figure whom for
     * @param ease how much larger
     * @param allowances cloth outside the stitching lines
     * @return pieces {@code bodice front}, {@code bodice back}, {@code upper sleeve}, {@code under sleeve}
     * @throws DraftException if the figure's measures do not go together
     */
    public static Pattern twoPieceSleeve(DraftFigure figure, DraftEase ease, Allowances allowances) {
        Upper upper = Upper.of("bodice with two-piece sleeve", GarmentKind.BODICE, figure, ease);
        UpperPieces bodice = new UpperPieces(upper.draft(), upper.plan(), allowances);
        UpperPlan.Sum sum = new UpperPlan.Sum(GarmentKind.BODICE, figure, ease);
        TwoPieceSleeveDraft sleeve = TwoPieceSleeveDraft.of(
                upper.plan().shell(),
                sum,
                upper.draft().frontArmhole().length() + ease.capMm() / 2,
                upper.draft().backArmhole().length() + ease.capMm() / 2);
        double frontNotch = UpperPieces.notchMm(upper.draft().frontArmhole());
        double backNotch = UpperPieces.notchMm(upper.draft().backArmhole());
        List<Seam> seams = new ArrayList<>(UpperPieces.seams("bodice", ease).subList(0, 2));
        seams.addAll(TwoPieceSleeveDraft.seams(ease));
        return Shells.pattern(
                "bodice with two-piece sleeve",
                figure,
                List.of(
                        bodice.bodiceFront(),
                        bodice.bodiceBack(),
                        sleeve.upper(allowances, frontNotch, backNotch),
                        sleeve.under(allowances, frontNotch, backNotch)),
                seams,
                sum,
                Shells.upperMeasures(figure));
    }

    /**
     * The fitted bodice with a yoke across its back, the shoulder dart taken into the yoke seam; with its set-in sleeve.
     *
     * @param figure whom for
     * @param ease how much larger
     * @param allowances cloth outside the stitching lines
     * @return pieces {@code bodice front}, {@code back yoke}, {@code bodice lower back}, {@code sleeve}
     * @throws DraftException if the figure's measures do not go together
     */
    public static Pattern yoke(DraftFigure figure, DraftEase ease, Allowances allowances) {
        Upper upper = Upper.of("bodice with yoke", GarmentKind.BODICE, figure, ease);
        YokeDraft yoke = new YokeDraft(upper, allowances);
        return Shells.pattern(
                "bodice with yoke",
                figure,
                List.of(
                        new UpperPieces(upper.draft(), upper.plan(), allowances).bodiceFront(),
                        yoke.yoke(),
                        yoke.lowerBack(),
                        Shells.sleeve(upper, allowances)),
                YokeDraft.seams(ease),
                new UpperPlan.Sum(GarmentKind.BODICE, figure, ease),
                Shells.upperMeasures(figure));
    }
}
