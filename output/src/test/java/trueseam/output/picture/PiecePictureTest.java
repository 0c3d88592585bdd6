package trueseam.output.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Shells;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.convert.Affine;
import trueseam.geometry.convert.PathData;
import trueseam.geometry.convert.Subpath;
import trueseam.intake.size.SizeTables;

class PiecePictureTest {

    /** Text is to 1/1000 mm in either coordinate. */
    private static final double TEXT_MM = 0.001;

    private static List<Pattern> shells() {
        DraftFigure figure = DraftFigure.of(SizeTables.named("misses"), "14");
        DraftEase ease = DraftEase.fitted();
        return List.of(Shells.bodice(figure, ease), Shells.dress(figure, ease), Shells.trousers(figure, ease));
    }

    private static List<Subpath> read(String text) {
        return PathData.read(text);
    }

    @Test
    void theStitchingLineReadsBackToTheOutline() {
        for (Pattern pattern : shells()) {
            for (Piece piece : pattern.pieces()) {
                List<Subpath> lines = read(PiecePicture.of(piece).stitching());
                assertThat(lines).hasSize(1);
                assertThat(lines.get(0).closed()).isTrue();
                Path drawn = Affine.UPSIDE_DOWN.apply(lines.get(0).path());
                Path outline = piece.outline();
                for (int i = 0; i < 60; i++) {
                    Point p = outline.pointAt(outline.length() * i / 60);
                    assertThat(drawn.nearest(p).point().distanceTo(p)).isLessThan(TEXT_MM);
                }
            }
        }
    }

    @Test
    void everyDartAndEveryCutOfANotchIsDrawn() {
        for (Pattern pattern : shells()) {
            for (Piece piece : pattern.pieces()) {
                PiecePicture picture = PiecePicture.of(piece);
                int cuts = piece.notches().stream()
                        .map(Notch::kind)
                        .mapToInt(Notch.Kind::cuts)
                        .sum();
                assertThat(read(picture.darts())).hasSameSizeAs(piece.darts());
                assertThat(read(picture.notches())).hasSize(cuts);
                for (Dart dart : piece.darts()) {
                    if (dart instanceof Dart.EdgeDart d) {
                        assertThat(picture.darts())
                                .contains(PathData.drawn(Path.through(d.apex(), d.apex()))
                                        .split("L")[1]);
                    }
                }
                assertThat(picture.levels()).isNotEmpty();
                assertThat(read(picture.grain())).hasSize(1);
            }
        }
    }

    @Test
    void theCuttingLineLiesOutsideTheStitchingLineByTheAllowance() {
        Piece front = shells().get(0).piece("bodice front");
        List<Subpath> lines = read(PiecePicture.cutting(front));
        assertThat(lines).hasSize(1);
        Path cutting = Affine.UPSIDE_DOWN.apply(lines.get(0).path());
        Path side = front.edge("side").path();
        Point middle = side.pointAt(side.length() / 2);
        double away = cutting.nearest(middle).point().distanceTo(middle);
        assertThat(away)
                .isBetween(
                        front.edge("side").allowanceMm() - 0.02,
                        front.edge("side").allowanceMm() + 0.02);
    }
}
