package trueseam.intake.file;

import java.util.OptionalDouble;
import trueseam.intake.tiles.TileChoices;

/**
 * What whoever has the file says about how it is to be read.
 *
 * @param unitMm how long one unit of the drawing is, mm, where she knows better than the file
 * @param page the one page of a PDF that is meant, 1 for the first; 0: all
 * @param tiles how the pages of a PDF go together
 */
public record ReadChoices(OptionalDouble unitMm, int page, TileChoices tiles) {

    /** Nothing said. */
    public static final ReadChoices NONE = new ReadChoices(OptionalDouble.empty(), 0, TileChoices.NONE);

    /**
     * The same with a unit.
     *
     * @param mm how long one unit of the drawing is, mm
     * @return new choices
     */
    public ReadChoices withUnit(double mm) {
        return new ReadChoices(OptionalDouble.of(mm), page, tiles);
    }

    /**
     * The same with a page.
     *
     * @param number 1 for the first, 0 for all
     * @return new choices
     */
    public ReadChoices withPage(int number) {
        return new ReadChoices(unitMm, number, tiles);
    }

    /**
     * The same with a layout of pages.
     *
     * @param said how the pages go together
     * @return new choices
     */
    public ReadChoices withTiles(TileChoices said) {
        return new ReadChoices(unitMm, page, said);
    }
}
