package trueseam.worktable.cloth;

import java.util.List;
import java.util.Locale;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.lay.Lay;
import trueseam.garment.length.LengthFormat;
import trueseam.geometry.Bounds;
import trueseam.geometry.convert.PathData;
import trueseam.output.words.ClothWords;

/**
 * The cloth under the pieces; x along it and y down, mm.
 *
 * @param viewBox what is seen: the cloth with room to lay a piece farther on
 * @param unit how many mm a pixel is, where the picture is about as wide as the screen's room
 * @param left where the drawn cloth begins
 * @param top its upper edge
 * @param width how much of it is drawn
 * @param height from edge to edge
 * @param used how far the pieces reach
 * @param bought how far what is bought reaches, of one layer
 * @param selvages how wide a free selvage is, above and below
 * @param fold whether it is folded at its lower edge
 * @param lower where the lower free line is, down
 * @param upper where the upper free line is, down
 * @param flaws what is not to be covered
 * @param along the repeat along the cloth; 0 for none
 * @param across the repeat across it; 0 for none
 * @param says the cloth in words, for those who do not see it
 */
public record ClothPicture(
        String viewBox,
        double unit,
        double left,
        double top,
        double width,
        double height,
        double used,
        double bought,
        double selvages,
        boolean fold,
        double lower,
        double upper,
        List<Box> flaws,
        double along,
        double across,
        String says) {

    /**
     * A rectangle.
     *
     * @param x left
     * @param y top, down
     * @param width its width
     * @param height its height
     */
    public record Box(double x, double y, double width, double height) {}

    /** The picture is about so wide, in pixels of the style sheet. */
    private static final double PIXELS = 900;

    /** So much of the length is drawn beyond the last piece, so that one can be laid there. */
    private static final double ROOM = 0.22;

    private static final double LEAST_ROOM_MM = 150;

    static ClothPicture of(Lay lay, LengthFormat show) {
        Cloth cloth = lay.cloth();
        boolean fold = cloth.layers() == Layers.LENGTHWISE;
        double selvage = cloth.selvageMm();
        double top = -(cloth.usableMm() + selvage);
        double height = cloth.usableMm() + (fold ? selvage : 2 * selvage);
        double used = lay.usedMm();
        double layers = cloth.layers() == Layers.CROSSWISE ? 2 : 1;
        double bought = ClothWords.shop(show).roundUpMm(lay.toBuyMm()) * (1 - cloth.shrinkLength()) / layers;
        double end = cloth.haveMm().orElse(bought);
        double width = Math.max(used, Math.min(end, used * (1 + ROOM))) + Math.max(LEAST_ROOM_MM, ROOM * used);
        double rim = 0.02 * width;
        return new ClothPicture(
                PathData.number(-rim) + " " + PathData.number(top - 2 * rim) + " " + PathData.number(width + 2 * rim)
                        + " " + PathData.number(height + 4 * rim),
                width / PIXELS,
                0,
                top,
                width,
                height,
                used,
                Math.min(end, width),
                selvage,
                fold,
                0,
                -cloth.usableMm(),
                cloth.flaws().stream().map(f -> box(cloth.asLaid(f))).toList(),
                cloth.stripeAlongMm(),
                cloth.stripeAcrossMm(),
                String.format(
                        Locale.ROOT,
                        "The pieces on the cloth, %s wide, %s; %d pieces",
                        show.show(cloth.widthMm()),
                        cloth.layers().words(),
                        lay.pieces().size()));
    }

    private static Box box(Bounds at) {
        return new Box(at.minX(), -at.maxY(), at.width(), at.height());
    }
}
