package trueseam.intake.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.intake.bring.BringChoices;
import trueseam.intake.bring.Bringing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.nest.NestDrawing.By;
import trueseam.intake.nest.NestDrawing.Named;
import trueseam.intake.patternfile.PatternFile;
import trueseam.intake.size.SizeTables;
import trueseam.intake.svg.SvgDrawing;

/** Nests drawn of drafted garments: every size that is chosen comes back as it was drafted. */
class NestTest {

    private static final List<List<EdgeRole>> KIMONO =
            List.of(List.of(EdgeRole.SIDE, EdgeRole.UNDERARM), List.of(EdgeRole.SHOULDER, EdgeRole.OVERARM));

    private static final List<String> SIZES = List.of("8", "10", "12", "14", "16", "18");

    static List<Arguments> nests() {
        List<Arguments> all = new ArrayList<>();
        for (Garment garment : Garment.values()) {
            for (By by : By.values()) {
                all.add(Arguments.of(garment, by, Named.NOTHING, false));
            }
        }
        for (Garment garment : List.of(Garment.bodice, Garment.skirt, Garment.trousers)) {
            for (By by : By.values()) {
                all.add(Arguments.of(garment, by, Named.SAMPLES, true));
            }
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("nests")
    void everySizeComesBackWithItsPiecesAndEdges(Garment garment, By by, Named named, boolean shared) {
        NestDrawing made = new NestDrawing(garment, SIZES, by, named, shared, 0);
        Nest nest = Nest.of(made.drawing());
        assertThat(nest.sizes()).as(nest.told().word()).hasSize(SIZES.size());
        // One size of each nest, another one each time: bringing in is most of the time.
        int i = Math.floorMod((garment.name() + by).hashCode(), SIZES.size());
        Pattern back = Bringing.of(nest.drawing(nest.sizes().get(i)), BringChoices.usual(15))
                .pattern();
        assertSame(made.drafted(SIZES.get(i)), back);
    }

    private static void assertSame(Pattern drafted, Pattern back) {
        assertThat(back.pieces()).hasSameSizeAs(drafted.pieces());
        for (Piece piece : drafted.pieces()) {
            List<Piece> same =
                    back.pieces().stream().filter(p -> p.kind() == piece.kind()).toList();
            assertThat(same).as(piece.name()).hasSize(1);
            for (Edge edge : piece.edges()) {
                assertThat(length(same.get(0), edge))
                        .as(piece.name() + ", " + edge.role())
                        .isCloseTo(length(piece, edge), within(0.05));
            }
            long darts = piece.darts().stream()
                    .filter(d -> d instanceof trueseam.garment.pattern.Dart.EdgeDart)
                    .count();
            assertThat(same.get(0).darts()).as(piece.name()).hasSize((int) darts);
        }
    }

    /**
     * A kimono's side runs smoothly on under the arm, its shoulder over it: where the one ends and the other begins is anybody's choice, the
     * whole is not.
     */
    private static double length(Piece piece, Edge like) {
        return piece.edges().stream()
                .filter(e -> e.role() == like.role()
                        || (piece.kind().isKimono()
                                && KIMONO.stream().anyMatch(pair -> pair.containsAll(List.of(e.role(), like.role())))))
                .mapToDouble(Edge::length)
                .sum();
    }

    @Test
    void aSizeThatIsNotThereIsRefusedWithTheSizesThatAre() {
        Nest nest = Nest.of(new NestDrawing(Garment.skirt, SIZES, By.LAYER, Named.NOTHING, false, 0).drawing());
        assertThatThrownBy(() -> nest.drawing("13"))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("no size \"13\"")
                .hasMessageContaining("8, 10, 12, 14, 16, 18");
        assertThat(nest.question().toLowerCase(Locale.ROOT))
                .contains("6 sizes", "layers", "8, 10, 12, 14, 16, 18", "--size");
    }

    @ParameterizedTest
    @CsvSource({
        "LAYER, NOTHING",
        "COLOUR, COLOURED_WORDS",
        "DASH, SAMPLES",
        "LOOK, SAMPLES",
        "NESTING, ROW",
        "NESTING, NUMBERS",
        "COLOUR, NUMBERS"
    })
    void whatIsWrittenNamesTheSizes(By by, Named named) {
        Nest nest = Nest.of(new NestDrawing(Garment.skirt, SIZES, by, named, false, 0).drawing());
        assertThat(nest.sizes().stream().map(NestSize::name)).containsExactlyElementsOf(SIZES);
        assertThat(nest.findings()).isEmpty();
    }

    @Test
    void whereNothingIsWrittenTheSizesAreCountedFromTheSmallest() {
        Nest nest = Nest.of(new NestDrawing(Garment.skirt, SIZES, By.DASH, Named.NOTHING, false, 0).drawing());
        assertThat(nest.sizes().get(1).name()).isEqualTo("2 of 6");
        assertThat(nest.size("smallest").name()).isEqualTo("1 of 6");
        assertThat(nest.size("largest").name()).isEqualTo("6 of 6");
        assertThat(nest.sizes()).allMatch(s -> s.sure() < 0.7);
    }

    @ParameterizedTest
    @EnumSource(By.class)
    void cuttingAndStitchingLinesOfASizeGoTogether(By by) {
        NestDrawing made = new NestDrawing(Garment.trousers, SIZES, by, Named.NOTHING, false, 15);
        Nest nest = Nest.of(made.drawing());
        assertThat(nest.sizes()).hasSize(SIZES.size());
        Pattern back = Bringing.of(nest.drawing(nest.sizes().get(3)), BringChoices.usual(10))
                .pattern();
        assertSame(made.drafted("14"), back);
        assertThat(back.pieces())
                .allMatch(p -> p.edges().stream().allMatch(e -> Math.abs(e.allowanceMm() - 15) < 0.05));
    }

    @ParameterizedTest
    @EnumSource(Garment.class)
    void onePatternWithCuttingAndStitchingLinesIsNoNest(Garment garment) {
        Pattern drafted = garment.draft(DraftFigure.of(SizeTables.named("misses"), "16"), Allowances.inches());
        String bare = PatternFile.write(drafted)
                .replaceAll("(?s)<metadata.*?</metadata>", "")
                .replaceAll(" data-[a-z-]+=\"[^\"]*\"", "");
        assertThat(Nest.of(SvgDrawing.read("drawing.svg", bare, OptionalDouble.empty()))
                        .sizes())
                .isEmpty();
    }

    /** The drawings of other people in data/patterns (see its README) hold one size each. */
    @ParameterizedTest
    @ValueSource(strings = {"half-circle-skirt.svg", "kid-carrier.svg", "mitten.svg"})
    void otherPeoplesDrawingsOfOneSizeAreNoNest(String file) throws IOException {
        String text = Files.readString(Path.of("..", "data", "patterns", file));
        assertThat(Nest.of(SvgDrawing.read(file, text, OptionalDouble.empty())).sizes())
                .isEmpty();
    }
}
