package trueseam.cloth.need;

import java.util.Optional;
import trueseam.cloth.goods.CutLength;
import trueseam.cloth.lay.Lay;

/**
 * How much cloth of one width is needed.
 *
 * @param widthMm the width from selvage to selvage, mm
 * @param lay the layout on it; empty where a piece does not fit
 * @param why why there is none; empty where there is one
 */
public record WidthNeed(double widthMm, Optional<Lay> lay, String why) {

    /**
     * How much to buy.
     *
     * @param shop in what steps it is cut
     * @return mm, rounded up; empty where it cannot be laid
     */
    public Optional<Double> toBuyMm(CutLength shop) {
        return lay.map(l -> shop.roundUpMm(l.toBuyMm()));
    }
}
