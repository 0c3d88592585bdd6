package trueseam.intake.file;

import java.util.OptionalDouble;
import trueseam.intake.tiles.TileChoices;

/**
 * What whoever has the file says about how it is to be read.
 *
 * @param unitMm how long one unit of the drawing is, mm, where she knows better than the file
 * @param page the one page of a PDF that is meant, 1 for the first; 0: all
 * @param tiles how the pages of a PDF go together
 * @param testSquareMm what the printed test square is to measure, mm, where she confirms that the drawing is to be scaled by it
 */
public record ReadChoices(OptionalDouble unitMm, int page, TileChoices tiles, OptionalDouble testSquareMm) {

    /** Nothing said. */
    public static final ReadChoices NONE =
            new ReadChoices(OptionalDouble.empty(), 0, TileChoices.NONE, OptionalDouble.empty());

    /**
     * The same with a unit.
     *
     * @param mm how long one unit of the drawing is, mm
     * @return new choices
     */
    public ReadChoices withUnit(double mm) {
        return new ReadChoices(OptionalDouble.of(mm), page, tiles, testSquareMm);
    }

    /**
     * The same with a page.
     *
     * @param number 1 for the first, 0 for all
     * @return new choices
     */
    public ReadChoices withPage(int number) {
        return new ReadChoices(unitMm, number, tiles, testSquareMm);
    }

    /**
     * The same with a layout of pages.
     *
     * @param said how the pages go together
     * @return new choices
     */
    public ReadChoices withTiles(TileChoices said) {
        return new ReadChoices(unitMm, page, said, testSquareMm);
    }

    /**
     * The same with a confirmed test square.
     *
     * @param mm what it is to measure, mm
     * @return new choices
     */
    public ReadChoices withTestSquare(double mm) {
        return new ReadChoices(unitMm, page, tiles, OptionalDouble.of(mm));
    }
}
