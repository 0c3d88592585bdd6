package trueseam.checks.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.goods.Stuff;
import trueseam.cloth.lay.Lay;
import trueseam.cloth.lay.LayWishes;
import trueseam.cloth.lay.Laying;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.geometry.Bounds;
import trueseam.geometry.convert.PathData;
import trueseam.intake.size.SizeTables;
import trueseam.output.cloth.LaySvg;

/** The drawing of a layout shows the pieces where they lie: on the cloth. */
class LaySvgTest {

    private static final Pattern PIECE = Pattern.compile("<path data-piece=\"[^\"]*\" d=\"([^\"]*)\"");
    private static final Pattern MOVED = Pattern.compile("<g transform=\"translate\\(0 ([0-9.]+)\\)\">");
    private static final Pattern BOX = Pattern.compile("viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\"");

    @ParameterizedTest
    @EnumSource(Layers.class)
    void everyPieceIsDrawnWhereItLiesOnTheCloth(Layers layers) {
        Lay lay = Laying.of(
                        Garment.bodice.draft(DraftFigure.of(SizeTables.named("misses"), "14"), Allowances.inches()),
                        Cloth.plain(1500, layers),
                        Stuff.FASHION,
                        LayWishes.usual())
                .first(1);
        String svg = LaySvg.of("bodice", lay);
        Matcher box = BOX.matcher(svg);
        Matcher moved = MOVED.matcher(svg);
        assertThat(box.find() && moved.find()).isTrue();
        double down = Double.parseDouble(moved.group(1));
        double high = Double.parseDouble(box.group(2));
        List<Bounds> drawn = new ArrayList<>();
        Matcher piece = PIECE.matcher(svg);
        while (piece.find()) {
            drawn.add(PathData.read(piece.group(1)).get(0).path().bounds());
        }
        assertThat(drawn).hasSameSizeAs(lay.pieces());
        for (int i = 0; i < drawn.size(); i++) {
            Bounds at = drawn.get(i);
            Bounds lies = lay.pieces().get(i).cutting().bounds();
            assertThat(at.minY() + down).as("top of %d", i).isGreaterThanOrEqualTo(0);
            assertThat(at.maxY() + down).as("bottom of %d", i).isLessThanOrEqualTo(high);
            // From the lower edge of the drawing it lies as far up as on the cloth.
            assertThat(-at.maxY()).isCloseTo(lies.minY(), org.assertj.core.data.Offset.offset(0.01));
            assertThat(at.minX()).isCloseTo(lies.minX(), org.assertj.core.data.Offset.offset(0.01));
        }
    }
}
