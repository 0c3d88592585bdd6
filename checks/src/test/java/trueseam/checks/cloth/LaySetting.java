package trueseam.checks.cloth;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Flaw;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.goods.Stuff;
import trueseam.cloth.lay.LayWishes;
import trueseam.cloth.need.ClothNeed;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * One way to lay a garment: of everything that may be set, one of its levels.
 *
 * @param levels the level of each {@link Factor}
 */
record LaySetting(Map<Factor, Integer> levels) {

    /** What may be set, and in how many ways the checks set it. */
    enum Factor {
        WIDTH(ClothNeed.USUAL_WIDTHS_MM.size()),
        LAYERS(HOW_IT_LIES.size()),
        NAP(2),
        SHRINKAGE(SHRINKAGE_BY.length),
        SELVAGE(SELVAGE_MM.length),
        STRIPES(STRIPES_MM.length),
        REMNANT(3),
        GAP(GAP_MM.length),
        TILT(TILT_DEGREES.length),
        STUFF(STUFFS.size());

        final int levels;

        Factor(int levels) {
            this.levels = levels;
        }
    }

    /** What the search keeps round every piece beside half the gap: pieces so much narrower than the cloth must be laid, mm. */
    private static final double SURE_MM = 1.5;

    private static final List<Layers> HOW_IT_LIES = List.of(Layers.values());
    private static final List<Stuff> STUFFS = List.of(Stuff.values());
    private static final double[][] SHRINKAGE_BY = {{0, 0}, {0.05, 0.03}};
    private static final double[] SELVAGE_MM = {10, 0, 25};
    // None, lengthwise stripes, crosswise stripes, plaid: along and across the cloth.
    private static final double[][] STRIPES_MM = {{0, 0}, {0, 60}, {50, 0}, {80, 60}};
    private static final double[] GAP_MM = {LayWishes.USUAL_GAP_MM, 0, 10};
    private static final double[] TILT_DEGREES = {0, 2};
    private static final double REMNANT_MM = 2000;

    /** Plain cloth of one width that lies so. */
    static LaySetting plain(double widthMm, Layers layers) {
        Map<Factor, Integer> levels = new EnumMap<>(Factor.class);
        for (Factor factor : Factor.values()) {
            levels.put(factor, 0);
        }
        levels.put(Factor.WIDTH, ClothNeed.USUAL_WIDTHS_MM.indexOf(widthMm));
        levels.put(Factor.LAYERS, HOW_IT_LIES.indexOf(layers));
        return new LaySetting(Map.copyOf(levels));
    }

    int level(Factor factor) {
        return levels.get(factor);
    }

    Layers layers() {
        return HOW_IT_LIES.get(level(Factor.LAYERS));
    }

    Stuff stuff() {
        return STUFFS.get(level(Factor.STUFF));
    }

    LayWishes wishes() {
        return new LayWishes(
                GAP_MM[level(Factor.GAP)], TILT_DEGREES[level(Factor.TILT)], Set.of(), Optional.empty(), List.of());
    }

    Cloth cloth() {
        double width = ClothNeed.USUAL_WIDTHS_MM.get(level(Factor.WIDTH));
        double[] shrinkage = SHRINKAGE_BY[level(Factor.SHRINKAGE)];
        double[] stripes = STRIPES_MM[level(Factor.STRIPES)];
        int remnant = level(Factor.REMNANT);
        // One near a selvage, one across the middle, where the cloth may be folded.
        List<Flaw> flaws = remnant < 2
                ? List.of()
                : List.of(new Flaw(150, 230, 60, 140), new Flaw(600, 640, width / 2 - 50, width / 2 + 20));
        return new Cloth(
                width,
                layers(),
                level(Factor.NAP) == 1,
                shrinkage[0],
                shrinkage[1],
                SELVAGE_MM[level(Factor.SELVAGE)],
                stripes[0],
                stripes[1],
                remnant == 0 ? OptionalDouble.empty() : OptionalDouble.of(REMNANT_MM),
                flaws);
    }

    /** Whether it can be asked for at all: cloth folded crosswise has no way up, no stripes to match and no flaws to go round. */
    boolean askable() {
        return layers() != Layers.CROSSWISE
                || (level(Factor.NAP) == 0 && level(Factor.STRIPES) == 0 && level(Factor.REMNANT) < 2);
    }

    /** Whether every piece is narrow enough for certain, wherever the stripes fall. */
    boolean surelyFits(Pattern pattern) {
        double stripe = STRIPES_MM[level(Factor.STRIPES)][1];
        // And the gap more: half of it is kept from the fold, and what it is grown by is mitred at corners.
        double sure = freeMm() - SURE_MM - GAP_MM[level(Factor.GAP)];
        return pieces(pattern).stream()
                .allMatch(p -> across(p) <= sure - (layers() == Layers.LENGTHWISE && foldsAlongGrain(p) ? 0 : stripe));
    }

    /** Whether some piece is too wide for certain, however it is tilted. */
    boolean surelyTooNarrow(Pattern pattern) {
        return level(Factor.TILT) == 0 && pieces(pattern).stream().anyMatch(p -> across(p) > freeMm());
    }

    List<Piece> pieces(Pattern pattern) {
        return pattern.pieces().stream().filter(stuff()::takes).toList();
    }

    /** From the fold, or from one selvage, to the other, without what is kept free; after the first wash. */
    double freeMm() {
        double washed =
                ClothNeed.USUAL_WIDTHS_MM.get(level(Factor.WIDTH)) * (1 - SHRINKAGE_BY[level(Factor.SHRINKAGE)][1]);
        double open = washed - 2 * SELVAGE_MM[level(Factor.SELVAGE)];
        return layers() == Layers.LENGTHWISE ? open / 2 : open;
    }

    /** Whether a piece has a fold that can lie at the fold of the cloth: that of a waistband cut along the cloth runs across its grain. */
    static boolean foldsAlongGrain(Piece piece) {
        if (piece.fold().isEmpty()) {
            return false;
        }
        Path fold = piece.edge(piece.fold().orElseThrow()).path();
        double turned = fold.end().minus(fold.start()).angle()
                - piece.grain().to().minus(piece.grain().from()).angle();
        return Math.abs(Math.sin(turned)) < 1e-6;
    }

    /** How wide a piece is across its grain as it is laid: opened unless the cloth has a fold for it. */
    private double across(Piece piece) {
        Point from = piece.grain().from();
        Point to = piece.grain().to();
        List<Double> places = new ArrayList<>();
        for (Point p : CuttingLine.of(piece).flattened(0.01)) {
            places.add(((to.x() - from.x()) * (p.y() - from.y()) - (to.y() - from.y()) * (p.x() - from.x()))
                    / from.distanceTo(to));
        }
        double low = places.stream().mapToDouble(d -> d).min().orElseThrow();
        double high = places.stream().mapToDouble(d -> d).max().orElseThrow();
        return (high - low) * (foldsAlongGrain(piece) && layers() != Layers.LENGTHWISE ? 2 : 1);
    }
}
