package trueseam.garment.pattern;

import java.util.Locale;
import java.util.Optional;

/** What a pattern piece is, in the trade's words. */
public enum PieceKind {
    /** Front of a fitted top that ends at the waist. */
    BODICE_FRONT,
    /** Back of a fitted top that ends at the waist. */
    BODICE_BACK,
    /** One-piece sleeve with one seam under the arm. */
    SLEEVE,
    /** Front of a dress or tunic without a waist seam. */
    DRESS_FRONT,
    /** Back of a dress or tunic without a waist seam. */
    DRESS_BACK,
    /** Front of a skirt. */
    SKIRT_FRONT,
    /** Back of a skirt. */
    SKIRT_BACK,
    /** Front of one leg of trousers. */
    TROUSER_FRONT,
    /** Back of one leg of trousers. */
    TROUSER_BACK,
    /** Band sewn to a waist. */
    WAISTBAND,
    /** Band sewn to the lower edge of a sleeve. */
    CUFF,
    /** Collar or neckband, sewn to a neck line. */
    COLLAR,
    /** Middle of a fitted front that is divided by seams from shoulder to waist. */
    BODICE_CENTRE_FRONT,
    /** Part of such a front beside the arm. */
    BODICE_SIDE_FRONT,
    /** Middle of a fitted back that is divided by seams from shoulder to waist. */
    BODICE_CENTRE_BACK,
    /** Part of such a back beside the arm. */
    BODICE_SIDE_BACK,
    /** Upper part of a back that is divided across, with the back neck and shoulder. */
    BACK_YOKE,
    /** The part of such a back below the yoke, to the waist. */
    BODICE_LOWER_BACK,
    /** Middle front gore of a skirt. */
    SKIRT_CENTRE_FRONT,
    /** Front gore of a skirt at the side. */
    SKIRT_SIDE_FRONT,
    /** Middle back gore of a skirt. */
    SKIRT_CENTRE_BACK,
    /** Back gore of a skirt at the side. */
    SKIRT_SIDE_BACK,
    /** Outer part of a sleeve of two pieces, with the crown. */
    UPPER_SLEEVE,
    /** Part of a sleeve of two pieces that lies under the arm. */
    UNDER_SLEEVE,
    /** Front of a top with the sleeve cut in one: one seam over shoulder and arm, one under the arm that runs into the side. */
    KIMONO_FRONT,
    /** Back of a top with the sleeve cut in one. */
    KIMONO_BACK,
    /** Front that ends at a seam from the neck to the underarm; the shoulder belongs to the sleeve. */
    RAGLAN_FRONT,
    /** Back that ends at a seam from the neck to the underarm. */
    RAGLAN_BACK,
    /** Sleeve whose seams run to the neck, with the shoulder in it. */
    RAGLAN_SLEEVE,
    /** Facing of an edge: drawn anew from the altered piece that it faces. */
    FACING,
    /** Lining of a piece that it has the outline of: it takes the same change. */
    LINING,
    /** Anything else: it is kept and printed, and not altered. */
    OTHER;

    /**
     * The word shown and written.
     *
     * @return for example {@code bodice front}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * Reads the word back.
     *
     * @param word as given by {@link #word}
     * @return the kind, or nothing if there is none of that word
     */
    public static Optional<PieceKind> ofWord(String word) {
        for (PieceKind kind : values()) {
            if (kind.word().equalsIgnoreCase(word.strip())) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    /**
     * The plain piece that it stands for: where seams divide what other garments have in one piece, or run elsewhere, as they do in a
     * kimono and a raglan.
     *
     * @return for a bodice side front or a kimono front the bodice front; the kind itself for a plain piece
     */
    public PieceKind whole() {
        return switch (this) {
            case BODICE_CENTRE_FRONT, BODICE_SIDE_FRONT, KIMONO_FRONT, RAGLAN_FRONT -> BODICE_FRONT;
            case BODICE_CENTRE_BACK, BODICE_SIDE_BACK, BACK_YOKE, BODICE_LOWER_BACK, KIMONO_BACK, RAGLAN_BACK ->
                BODICE_BACK;
            case SKIRT_CENTRE_FRONT, SKIRT_SIDE_FRONT -> SKIRT_FRONT;
            case SKIRT_CENTRE_BACK, SKIRT_SIDE_BACK -> SKIRT_BACK;
            case UPPER_SLEEVE, UNDER_SLEEVE, RAGLAN_SLEEVE -> SLEEVE;
            case BODICE_FRONT,
                    BODICE_BACK,
                    SLEEVE,
                    DRESS_FRONT,
                    DRESS_BACK,
                    SKIRT_FRONT,
                    SKIRT_BACK,
                    TROUSER_FRONT,
                    TROUSER_BACK,
                    WAISTBAND,
                    CUFF,
                    COLLAR,
                    FACING,
                    LINING,
                    OTHER -> this;
        };
    }

    /**
     * Whether it stands for a plain piece and is not one: what is written for the plain piece cannot be done on it unasked.
     *
     * @return true for panels, gores, yokes, the pieces of a two-piece sleeve, of a kimono and of a raglan
     */
    public boolean isPart() {
        return whole() != this;
    }

    /**
     * Whether it covers the front of the body.
     *
     * @return true for fronts and their parts
     */
    public boolean isFront() {
        PieceKind whole = whole();
        return whole == BODICE_FRONT || whole == DRESS_FRONT || whole == SKIRT_FRONT || whole == TROUSER_FRONT;
    }

    /**
     * Whether it covers the back of the body.
     *
     * @return true for backs and their parts
     */
    public boolean isBack() {
        PieceKind whole = whole();
        return whole == BODICE_BACK || whole == DRESS_BACK || whole == SKIRT_BACK || whole == TROUSER_BACK;
    }

    /**
     * Whether it belongs to a front or back with a shoulder and an armhole.
     *
     * @return true for bodice and dress pieces and their parts
     */
    public boolean isUpper() {
        PieceKind whole = whole();
        return whole == BODICE_FRONT || whole == BODICE_BACK || isDress();
    }

    /**
     * Whether it is a sleeve or one of its pieces.
     *
     * @return true for sleeves
     */
    public boolean isSleeve() {
        return whole() == SLEEVE;
    }

    /**
     * Whether it has the sleeve cut in one with it.
     *
     * @return true for kimono pieces
     */
    public boolean isKimono() {
        return this == KIMONO_FRONT || this == KIMONO_BACK;
    }

    /**
     * Whether it belongs to a top whose sleeves run to the neck.
     *
     * @return true for the front, the back and the sleeve of a raglan
     */
    public boolean isRaglan() {
        return this == RAGLAN_FRONT || this == RAGLAN_BACK || this == RAGLAN_SLEEVE;
    }

    /**
     * Whether it is a front or back of trousers.
     *
     * @return true for trouser pieces
     */
    public boolean isTrouser() {
        return this == TROUSER_FRONT || this == TROUSER_BACK;
    }

    /**
     * Whether it is a front or back of a skirt.
     *
     * @return true for skirt pieces and gores
     */
    public boolean isSkirt() {
        return whole() == SKIRT_FRONT || whole() == SKIRT_BACK;
    }

    /**
     * Whether it is a front or back of a dress.
     *
     * @return true for dress pieces
     */
    public boolean isDress() {
        return this == DRESS_FRONT || this == DRESS_BACK;
    }

    /**
     * Whether it is a band that is as long as what it is sewn to, and follows it.
     *
     * @return true for waistbands, cuffs, collars
     */
    public boolean isBand() {
        return this == WAISTBAND || this == CUFF || this == COLLAR;
    }

    /**
     * Whether it is altered only after what it is sewn to, by that piece's change.
     *
     * @return true for bands, facings and linings
     */
    public boolean isFollower() {
        return isBand() || this == FACING || this == LINING;
    }
}
