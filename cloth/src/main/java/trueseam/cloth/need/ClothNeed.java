package trueseam.cloth.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Stuff;
import trueseam.cloth.lay.LayException;
import trueseam.cloth.lay.LayWishes;
import trueseam.cloth.lay.Laying;
import trueseam.cloth.packing.Patience;
import trueseam.garment.pattern.Pattern;

/** How much cloth a pattern takes in the widths that are sold. */
public final class ClothNeed {

    /** The usual widths, mm: 90, 115, 140, 150 cm, and 45, 54, 60 in (trade.md section 9, [THR151]). */
    public static final List<Double> USUAL_WIDTHS_MM = Stream.of(
                    900.0, 1150.0, 1400.0, 1500.0, 45 * 25.4, 54 * 25.4, 60 * 25.4)
            .sorted()
            .toList();

    /** How long each width is searched: enough to round up to what shops cut. */
    public static final int USUAL_ROUNDS = 4;

    private ClothNeed() {}

    /**
     * Lays a pattern on cloth of each width.
     *
     * @param pattern the pattern
     * @param cloth everything but its width
     * @param stuff which pieces
     * @param wishes what is wanted; what was laid by hand is left out, as it lies on one width only
     * @param widthsMm the widths, mm
     * @param seed where chance begins
     * @param rounds how long each width is searched
     * @return the need in each, in the order asked
     */
    public static List<WidthNeed> in(
            Pattern pattern, Cloth cloth, Stuff stuff, LayWishes wishes, List<Double> widthsMm, long seed, int rounds) {
        List<WidthNeed> needs = new ArrayList<>();
        for (double width : widthsMm) {
            try {
                Laying laying = Laying.of(pattern, cloth.wide(width), stuff, wishes.withByHand(List.of()));
                Needed needed = Needed.of(laying.search(seed, Patience.rounds(rounds), found -> {}));
                needs.add(new WidthNeed(width, Optional.of(needed), ""));
            } catch (LayException e) {
                needs.add(new WidthNeed(width, Optional.empty(), e.place() + ": " + e.getMessage()));
            }
        }
        return List.copyOf(needs);
    }
}
