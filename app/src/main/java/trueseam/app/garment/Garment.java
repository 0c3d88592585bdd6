package trueseam.app.garment;

import trueseam.drafting.Allowances;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Shells;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.pattern.Pattern;

/** The garments that can be drafted. */
public enum Garment {
    /** A fitted bodice with its sleeve. */
    bodice(GarmentKind.BODICE),
    /** A straight skirt. */
    skirt(GarmentKind.SKIRT),
    /** Trousers. */
    trousers(GarmentKind.TROUSERS),
    /** A hip-length dress or tunic without a waist seam, with its sleeve. */
    dress(GarmentKind.DRESS);

    private final GarmentKind kind;

    Garment(GarmentKind kind) {
        this.kind = kind;
    }

    /**
     * The kind of garment in the engine's words.
     *
     * @return the kind
     */
    public GarmentKind kind() {
        return kind;
    }

    /**
     * The garment of a kind.
     *
     * @param kind the kind
     * @return the garment
     */
    public static Garment of(GarmentKind kind) {
        return switch (kind) {
            case BODICE -> bodice;
            case DRESS -> dress;
            case SKIRT -> skirt;
            case TROUSERS -> trousers;
        };
    }

    /**
     * Drafts it.
     *
     * @param figure whom for
     * @param allowances cloth outside the stitching lines
     * @return the pattern
     */
    public Pattern draft(DraftFigure figure, Allowances allowances) {
        DraftEase ease = DraftEase.fitted();
        return switch (this) {
            case bodice -> Shells.bodice(figure, ease, allowances);
            case skirt -> Shells.skirt(figure, ease, allowances);
            case trousers -> Shells.trousers(figure, ease, allowances);
            case dress -> Shells.dress(figure, ease, allowances);
        };
    }
}
