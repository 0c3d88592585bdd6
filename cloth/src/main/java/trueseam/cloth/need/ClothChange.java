package trueseam.cloth.need;

import java.util.List;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.goods.Stuff;
import trueseam.cloth.lay.LayException;
import trueseam.cloth.lay.LayWishes;
import trueseam.cloth.lay.Laying;
import trueseam.cloth.packing.Patience;
import trueseam.garment.pattern.Pattern;

/**
 * How much cloth a pattern takes before it is altered and after, both searched equally long: what is printed on its envelope holds no more.
 *
 * @param cloth the cloth as it lies for both
 * @param before what the original pieces take
 * @param after what the altered ones take
 */
public record ClothChange(Cloth cloth, Needed before, Needed after) {

    private static final int ROUNDS = 5;

    /**
     * Lays both on plain cloth of one width: folded lengthwise, or in a single layer where a piece is wider than one half.
     *
     * @param original the pattern as bought
     * @param altered the pattern as altered
     * @param widthMm the cloth's width, mm
     * @return what both take
     * @throws LayException if a piece is wider than the cloth
     */
    public static ClothChange of(Pattern original, Pattern altered, double widthMm) {
        Cloth folded = Cloth.plain(widthMm, Layers.LENGTHWISE);
        try {
            return on(folded, Stuff.FASHION, LayWishes.usual(), original, altered);
        } catch (LayException e) {
            if (!e.tooWide()) {
                throw e;
            }
            return on(folded.laid(Layers.SINGLE), Stuff.FASHION, LayWishes.usual(), original, altered);
        }
    }

    /**
     * Lays both on one cloth.
     *
     * @param cloth the cloth as it lies
     * @param stuff which pieces
     * @param wishes what is wanted; what was laid by hand is left out
     * @param original the pattern as bought
     * @param altered the pattern as altered
     * @return what both take
     * @throws LayException if a piece of either does not fit
     */
    public static ClothChange on(Cloth cloth, Stuff stuff, LayWishes wishes, Pattern original, Pattern altered) {
        return new ClothChange(cloth, taken(cloth, stuff, wishes, original), taken(cloth, stuff, wishes, altered));
    }

    private static Needed taken(Cloth cloth, Stuff stuff, LayWishes wishes, Pattern pattern) {
        return Needed.of(Laying.of(pattern, cloth, stuff, wishes.withByHand(List.of()))
                .search(1, Patience.rounds(ROUNDS), found -> {}));
    }
}
