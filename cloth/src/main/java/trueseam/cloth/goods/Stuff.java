package trueseam.cloth.goods;

import java.util.Locale;
import java.util.Optional;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/** What a piece is cut from. */
public enum Stuff {
    /** The cloth of the garment. */
    FASHION,
    /** The cloth inside. */
    LINING,
    /** What stiffens bands, collars, cuffs and facings. */
    INTERFACING;

    /**
     * The word shown and typed.
     *
     * @return for example {@code lining}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Reads the word.
     *
     * @param word as given by {@link #word}
     * @return what it is, or nothing
     */
    public static Optional<Stuff> ofWord(String word) {
        for (Stuff stuff : values()) {
            if (stuff.word().equalsIgnoreCase(word.strip())) {
                return Optional.of(stuff);
            }
        }
        return Optional.empty();
    }

    /**
     * Whether a piece is cut from it as a rule (common practice): linings of lining, all else of the fashion cloth; bands, collars, cuffs and
     * facings of interfacing too.
     *
     * @param piece any piece
     * @return whether it is
     */
    public boolean takes(Piece piece) {
        return switch (this) {
            case FASHION -> piece.kind() != PieceKind.LINING;
            case LINING -> piece.kind() == PieceKind.LINING;
            case INTERFACING ->
                piece.kind() == PieceKind.WAISTBAND
                        || piece.kind() == PieceKind.CUFF
                        || piece.kind() == PieceKind.COLLAR
                        || piece.kind() == PieceKind.FACING;
        };
    }
}
