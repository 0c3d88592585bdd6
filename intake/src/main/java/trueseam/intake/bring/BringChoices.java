package trueseam.intake.bring;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.garment.pattern.PieceKind;

/**
 * What whoever knows the pattern says about it.
 *
 * @param name the pattern's name; empty: the file's
 * @param size its size
 * @param table the table that the size belongs to
 * @param cutAllowanceMm the seam allowance that lies within the drawn lines, mm, where they are cutting lines; empty: a second line tells,
 *     or they are stitching lines
 * @param allowanceMm the seam allowance that is to be cut, mm
 * @param kinds the kind of a piece by its place in the drawing, the largest piece being the first, where she knows better
 * @param layer only lines of layers whose name has this in it; empty: all
 */
public record BringChoices(
        String name,
        String size,
        String table,
        OptionalDouble cutAllowanceMm,
        double allowanceMm,
        Map<Integer, PieceKind> kinds,
        Optional<String> layer) {

    /** Does not change. */
    public BringChoices {
        kinds = Map.copyOf(kinds);
    }

    /**
     * Nothing said.
     *
     * @param allowanceMm the seam allowance that is to be cut, mm
     * @return the usual
     */
    public static BringChoices usual(double allowanceMm) {
        return new BringChoices("", "", "", OptionalDouble.empty(), allowanceMm, Map.of(), Optional.empty());
    }

    /**
     * The same in a size.
     *
     * @param name the size
     * @return these choices with it
     */
    public BringChoices withSize(String name) {
        return new BringChoices(this.name, name, table, cutAllowanceMm, allowanceMm, kinds, layer);
    }

    /**
     * The same with kinds that are known from elsewhere.
     *
     * @param known the kind of a piece by its place in the drawing
     * @return these choices with them in place of her own
     */
    public BringChoices withKinds(Map<Integer, PieceKind> known) {
        return new BringChoices(name, size, table, cutAllowanceMm, allowanceMm, known, layer);
    }
}
