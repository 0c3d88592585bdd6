package trueseam.intake.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.drafting.garment.Garment;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.intake.bring.BringChoices;
import trueseam.intake.bring.Bringing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.nest.NestDrawing.By;
import trueseam.intake.nest.NestDrawing.Named;

/** Nests drawn of drafted garments: every size that is chosen comes back as it was drafted. */
class NestTest {

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

    private static double length(Piece piece, Edge like) {
        return piece.edges().stream()
                .filter(e -> e.role() == like.role())
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
}
