package trueseam.drafting.garment;

import trueseam.drafting.Allowances;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.PanelledShells;
import trueseam.drafting.Shells;
import trueseam.drafting.SleevedShells;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.pattern.Pattern;

/** The garments that can be drafted. */
public enum Garment {
    /** A fitted bodice with its sleeve. */
    bodice(GarmentKind.BODICE, "darts at bust and waist, with its sleeve"),
    /** A straight skirt. */
    skirt(GarmentKind.SKIRT, "straight, two pieces"),
    /** Trousers. */
    trousers(GarmentKind.TROUSERS, "two pieces to a leg"),
    /** A hip-length dress or tunic without a waist seam, with its sleeve. */
    dress(GarmentKind.DRESS, "without a waist seam, with its sleeve"),
    /** A bodice in panels, with its sleeve. */
    princess(GarmentKind.BODICE, "a bodice in panels, with its sleeve"),
    /** A skirt of six gores. */
    gored(GarmentKind.SKIRT, "a skirt of six gores"),
    /** A bodice with a sleeve of two pieces. */
    two_piece_sleeve(GarmentKind.BODICE, "a bodice whose sleeve has two pieces"),
    /** A bodice with a yoke across its back, with its sleeve. */
    yoke(GarmentKind.BODICE, "a bodice with a yoke across its back"),
    /** A bodice with the sleeve cut in one. */
    kimono(GarmentKind.BODICE, "a bodice with the sleeve cut in one"),
    /** A bodice with sleeves whose seams run to the neck. */
    raglan(GarmentKind.BODICE, "a bodice whose sleeve seams run to the neck");

    private final GarmentKind kind;
    private final String about;

    Garment(GarmentKind kind, String about) {
        this.kind = kind;
        this.about = about;
    }

    /**
     * The word that the command line knows.
     *
     * @return for example {@code two-piece-sleeve}
     */
    @Override
    public String toString() {
        return name().replace('_', '-');
    }

    /**
     * What it is.
     *
     * @return a few words
     */
    public String about() {
        return about;
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
        return draft(figure, DraftEase.fitted(), allowances);
    }

    /**
     * Drafts it with ease of one's own.
     *
     * @param figure whom for
     * @param ease how much larger than the figure
     * @param allowances cloth outside the stitching lines
     * @return the pattern
     */
    public Pattern draft(DraftFigure figure, DraftEase ease, Allowances allowances) {
        return switch (this) {
            case bodice -> Shells.bodice(figure, ease, allowances);
            case skirt -> Shells.skirt(figure, ease, allowances);
            case trousers -> Shells.trousers(figure, ease, allowances);
            case dress -> Shells.dress(figure, ease, allowances);
            case princess -> PanelledShells.princess(figure, ease, allowances);
            case gored -> PanelledShells.gored(figure, ease, allowances);
            case two_piece_sleeve -> PanelledShells.twoPieceSleeve(figure, ease, allowances);
            case yoke -> PanelledShells.yoke(figure, ease, allowances);
            case kimono -> SleevedShells.kimono(figure, ease, allowances);
            case raglan -> SleevedShells.raglan(figure, ease, allowances);
        };
    }
}
