package trueseam.cloth.need;

import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.goods.Stuff;
import trueseam.cloth.lay.Lay;
import trueseam.cloth.lay.LayException;
import trueseam.cloth.lay.LayWishes;
import trueseam.cloth.lay.Laying;
import trueseam.cloth.packing.Patience;
import trueseam.garment.pattern.Pattern;

/**
 * How much cloth a pattern takes before it is altered and after: what is printed on its envelope holds no more.
 *
 * @param before the original pieces
 * @param after the altered ones, on the same cloth
 */
public record ClothChange(Lay before, Lay after) {

    private static final int ROUNDS = 5;

    /**
     * Lays both on plain cloth of one width: folded lengthwise, or in a single layer where a piece is wider than one half.
     *
     * @param original the pattern as bought
     * @param altered the pattern as altered
     * @param widthMm the cloth's width, mm
     * @return both layouts
     * @throws LayException if a piece is wider than the cloth
     */
    public static ClothChange of(Pattern original, Pattern altered, double widthMm) {
        try {
            return on(Cloth.plain(widthMm, Layers.LENGTHWISE), original, altered);
        } catch (LayException e) {
            if (!e.tooWide()) {
                throw e;
            }
            return on(Cloth.plain(widthMm, Layers.SINGLE), original, altered);
        }
    }

    private static ClothChange on(Cloth cloth, Pattern original, Pattern altered) {
        return new ClothChange(laid(cloth, original), laid(cloth, altered));
    }

    private static Lay laid(Cloth cloth, Pattern pattern) {
        return Laying.of(pattern, cloth, Stuff.FASHION, LayWishes.usual())
                .search(1, Patience.rounds(ROUNDS), found -> {});
    }
}
