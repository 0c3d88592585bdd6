package trueseam.fitting.repertoire;

import java.util.Locale;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;

/**
 * An edge whose sewn length must stay, whatever the amount.
 *
 * @param on the pieces that it is an edge of
 * @param role the edge
 */
public record Stay(On on, EdgeRole role) {

    /** Which pieces. */
    public enum On {
        /** Front pieces. */
        FRONT,
        /** Back pieces. */
        BACK,
        /** Every piece. */
        ALL
    }

    /**
     * On the front.
     *
     * @param role the edge
     * @return the edge that must stay
     */
    public static Stay front(EdgeRole role) {
        return new Stay(On.FRONT, role);
    }

    /**
     * On the back.
     *
     * @param role the edge
     * @return the edge that must stay
     */
    public static Stay back(EdgeRole role) {
        return new Stay(On.BACK, role);
    }

    /**
     * On every piece that has it.
     *
     * @param role the edge
     * @return the edge that must stay
     */
    public static Stay all(EdgeRole role) {
        return new Stay(On.ALL, role);
    }

    /**
     * In words.
     *
     * @return for example {@code front armhole}
     */
    public String words() {
        return on == On.ALL ? role.word() : on.name().toLowerCase(Locale.ROOT) + " " + role.word();
    }

    /**
     * Whether a piece is one of those meant.
     *
     * @param piece the piece
     * @return true if its edge must stay
     */
    public boolean concerns(Piece piece) {
        return switch (on) {
            case FRONT -> piece.kind().isFront();
            case BACK -> piece.kind().isBack();
            case ALL -> true;
        };
    }
}
