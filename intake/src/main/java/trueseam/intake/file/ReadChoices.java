package trueseam.intake.file;

import java.util.OptionalDouble;

/**
 * What whoever has the file says about how it is to be read.
 *
 * @param unitMm how long one unit of the drawing is, mm, where she knows better than the file
 * @param page the one page of a PDF that is meant, 1 for the first; 0: all
 */
public record ReadChoices(OptionalDouble unitMm, int page) {

    /** Nothing said. */
    public static final ReadChoices NONE = new ReadChoices(OptionalDouble.empty(), 0);

    /**
     * The same with a unit.
     *
     * @param mm how long one unit of the drawing is, mm
     * @return new choices
     */
    public ReadChoices withUnit(double mm) {
        return new ReadChoices(OptionalDouble.of(mm), page);
    }

    /**
     * The same with a page.
     *
     * @param number 1 for the first, 0 for all
     * @return new choices
     */
    public ReadChoices withPage(int number) {
        return new ReadChoices(unitMm, number);
    }
}
