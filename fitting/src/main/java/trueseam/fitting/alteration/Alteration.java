package trueseam.fitting.alteration;

import java.util.List;
import java.util.Set;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;

/** One alteration of a garment, with its amount: it writes down the steps for every piece that it touches. */
public interface Alteration {

    /**
     * What it does, for the top of the step sheet.
     *
     * @return for example {@code Bust, waist and hip girth at the side seams}
     */
    String title();

    /**
     * The steps, piece by piece.
     *
     * @param pattern the pattern as the alterations before left it
     * @return work on the pieces that it touches; empty where there is nothing to do
     */
    List<PieceWork> work(Pattern pattern);

    /**
     * Whether it gives the sleeve cap more or less to ease into its armhole because that was asked for. Then truing leaves the
     * armhole alone, and the cap ease need not be as before.
     *
     * @return false unless an alteration says otherwise
     */
    default boolean changesCapEase() {
        return false;
    }

    /**
     * The edges that are meant to change their length, so that what is sewn to them follows.
     *
     * @return empty unless the alteration says so
     */
    default Set<EdgeRole> lengthens() {
        return Set.of();
    }
}
