package trueseam.output.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.garment.length.LengthFormat;
import trueseam.geometry.Bounds;
import trueseam.output.Fits;
import trueseam.output.drawing.PdfPages;

/** The map of the pages, against the file that is printed. */
class PrintMapTest {

    private static FullSizePrint print(Paper paper) {
        LengthFormat inches = LengthFormat.inches(8);
        return FullSizePrint.of(Fits.fit(inches), PrintOptions.usual(paper, inches, "Rosalind"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a4", "letter", "a3", "a0"})
    void theMapHasAsManyPagesAsTheFile(String paper) {
        FullSizePrint print = print(Paper.ofWord(paper).orElseThrow());
        assertThat(print.map().pages()).isEqualTo(PdfPages.count(print.pdf()));
    }

    @Test
    void everyPieceLiesOnThePagesAndPageOneBesideThem() {
        PrintMap map = print(Paper.A4).map();
        assertThat(map.cover()).hasSize(1);
        Bounds cover = map.cover().get(0);
        for (Tile tile : map.tiles()) {
            assertThat(cover.maxX()).isLessThan(tile.window().minX());
        }
        for (PrintMap.Outline outline : map.pieces()) {
            Bounds at = outline.path().bounds();
            assertThat(map.all().with(at)).as(outline.piece()).isEqualTo(map.all());
            assertThat(map.tiles())
                    .as(outline.piece())
                    .anySatisfy(tile -> assertThat(tile.frame().meets(at, 0)).isTrue());
        }
    }

    @Test
    void aPictureOfAPageHasItsShapeAndIsNotWhite() throws IOException {
        byte[] pdf = print(Paper.A4).pdf();
        BufferedImage page = ImageIO.read(new ByteArrayInputStream(PdfPages.png(pdf, 1, 594)));
        // ISO 216: 210 mm by 297 mm, two pixels a millimetre.
        assertThat(page.getHeight()).isBetween(593, 595);
        assertThat(page.getWidth()).isBetween(419, 421);
        boolean dark = false;
        for (int x = 0; x < page.getWidth(); x++) {
            for (int y = 0; y < page.getHeight(); y++) {
                dark |= (page.getRGB(x, y) & 0xff) < 100;
            }
        }
        assertThat(dark).isTrue();
        assertThatThrownBy(() -> PdfPages.png(pdf, 999, 594))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no page 999");
    }
}
