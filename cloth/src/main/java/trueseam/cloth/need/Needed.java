package trueseam.cloth.need;

import trueseam.cloth.goods.CutLength;
import trueseam.cloth.lay.Lay;

/**
 * What a layout takes.
 *
 * @param neededMm the length of washed cloth, mm
 * @param toBuyMm the length before it shrinks, not rounded to what shops cut, mm
 * @param density which part of it becomes garment, 0 to 1
 */
public record Needed(double neededMm, double toBuyMm, double density) {

    /**
     * What a layout takes.
     *
     * @param lay the layout
     * @return its lengths and density
     */
    public static Needed of(Lay lay) {
        return new Needed(lay.neededMm(), lay.toBuyMm(), lay.density());
    }

    /**
     * How much to buy.
     *
     * @param shop in what steps it is cut
     * @return mm, rounded up
     */
    public double toBuyMm(CutLength shop) {
        return shop.roundUpMm(toBuyMm);
    }
}
