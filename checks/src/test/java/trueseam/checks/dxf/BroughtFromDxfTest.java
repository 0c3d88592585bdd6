package trueseam.checks.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Vec;
import trueseam.intake.bring.BringChoices;
import trueseam.intake.bring.Bringing;
import trueseam.intake.bring.Brought;
import trueseam.intake.dxf.Dxf;
import trueseam.intake.size.SizeTables;
import trueseam.output.dxf.ApparelDxf;

/** Every drafted garment, written after ASTM D6673 and brought in by what the file itself names. */
class BroughtFromDxfTest {

    private static final double SAME_MM = 0.05;

    private static Pattern drafted(Garment garment) {
        return garment.draft(DraftFigure.of(SizeTables.named("misses"), "14"), Allowances.inches());
    }

    private static Brought brought(String dxf, BringChoices choices) {
        return Bringing.of(
                Dxf.read("x.dxf", dxf.getBytes(StandardCharsets.US_ASCII), Optional.empty())
                        .drawing(),
                choices);
    }

    @ParameterizedTest
    @EnumSource(Garment.class)
    void everyPieceComesBackWithItsNameItsEdgesAndWhatRidesOnIt(Garment garment) {
        Pattern drafted = drafted(garment);
        Brought brought = brought(ApparelDxf.write(drafted), BringChoices.usual(10));
        Pattern back = brought.pattern();
        assertThat(back.name()).isEqualTo(drafted.name());
        assertThat(back.size()).isEqualTo("14");
        assertThat(back.pieces())
                .extracting(Piece::name)
                .containsExactlyInAnyOrderElementsOf(
                        drafted.pieces().stream().map(Piece::name).toList());
        for (Piece piece : drafted.pieces()) {
            Piece same = back.pieces().stream()
                    .filter(p -> p.name().equals(piece.name()))
                    .findFirst()
                    .orElseThrow();
            String what = piece.name() + "; "
                    + brought.findings().stream().map(Finding::sentence).toList();
            assertThat(same.kind()).as(what).isEqualTo(piece.kind());
            assertThat(same.cutCount()).as(what).isEqualTo(piece.cutCount());
            assertThat(same.fold().isPresent()).as(what).isEqualTo(piece.fold().isPresent());
            assertThat(cuts(same)).as(what).isEqualTo(cuts(piece));
            assertThat(angle(same)).as(what).isCloseTo(angle(piece), within(1e-4));
            if (!piece.kind().isFollower()) {
                assertThat(mouths(same)).as(what).hasSameSizeAs(mouths(piece));
                sameEdges(piece, same);
            }
        }
    }

    private static int cuts(Piece piece) {
        return piece.notches().stream()
                .map(Notch::kind)
                .mapToInt(Notch.Kind::cuts)
                .sum();
    }

    private static double angle(Piece piece) {
        Vec grain = piece.grain().to().minus(piece.grain().from());
        return grain.angle();
    }

    private static List<Dart> mouths(Piece piece) {
        return piece.darts().stream().filter(d -> d instanceof Dart.EdgeDart).toList();
    }

    private static void sameEdges(Piece piece, Piece same) {
        for (Edge edge : piece.edges()) {
            assertThat(length(same, edge))
                    .as(piece.name() + ", " + edge.name())
                    .isCloseTo(length(piece, edge), within(SAME_MM));
            assertThat(allowance(same, edge))
                    .as(piece.name() + ", " + edge.name())
                    .isCloseTo(edge.allowanceMm(), within(0.1));
        }
    }

    private static double length(Piece piece, Edge like) {
        return piece.edges().stream()
                .filter(edge -> stretch(piece, edge.role()) == stretch(piece, like.role()))
                .mapToDouble(Edge::length)
                .sum();
    }

    /** What runs on without a corner in a kimono is one stretch of a file, and parted by rule. */
    private static EdgeRole stretch(Piece piece, EdgeRole role) {
        if (piece.kind().isKimono() && role == EdgeRole.UNDERARM) {
            return EdgeRole.SIDE;
        }
        return piece.kind().isKimono() && role == EdgeRole.SHOULDER ? EdgeRole.OVERARM : role;
    }

    private static double allowance(Piece piece, Edge like) {
        return piece.firstOf(like.role()).orElseThrow().allowanceMm();
    }

    /** Without sew lines, with the allowance said: corners, fold and edges as before. */
    @ParameterizedTest
    @EnumSource(
            value = Garment.class,
            names = {"bodice", "skirt", "trousers"})
    void boundariesAloneAreInsetByTheAllowanceThatIsSaid(Garment garment) {
        Pattern drafted = garment.draft(DraftFigure.of(SizeTables.named("misses"), "14"), new Allowances(15, 15));
        String dxf = ApparelDxf.write(drafted).replace("  8\r\n14\r\n", "  8\r\n87\r\n");
        Brought brought = brought(
                dxf, new BringChoices("", "", "", OptionalDouble.of(15), 15, java.util.Map.of(), Optional.empty()));
        for (Piece piece : drafted.pieces()) {
            Piece same = brought.pattern().firstOf(piece.kind()).orElseThrow();
            assertThat(same.fold().isPresent()).isEqualTo(piece.fold().isPresent());
            for (Edge edge : piece.edges()) {
                assertThat(length(same, edge))
                        .as(piece.name() + ", " + edge.name())
                        .isCloseTo(length(piece, edge), within(0.3));
            }
        }
    }
}
