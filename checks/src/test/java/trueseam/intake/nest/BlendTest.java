package trueseam.intake.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.drafting.garment.Garment;
import trueseam.garment.blend.SizesByLevel;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.polygon.Region;
import trueseam.intake.bring.BringChoices;
import trueseam.intake.bring.Brought;
import trueseam.intake.bring.BroughtPiece;
import trueseam.intake.nest.NestDrawing.By;
import trueseam.intake.nest.NestDrawing.Named;
import trueseam.intake.said.Corrections;

/** Patterns drawn across the nest, on nests drawn of drafted garments. */
class BlendTest {

    private static final List<String> SIZES = List.of("10", "12", "14", "16", "18");

    /** Girths that are taken at a level are exactly the size's (the bound of the proofs, design: 0.1 mm). */
    private static final double WIDTH_MM = 0.1;

    private static Nest nest(Garment garment) {
        return Nest.of(new NestDrawing(garment, SIZES, By.COLOUR, Named.SAMPLES, false, 0).drawing());
    }

    private static Brought across(Nest nest, String wanted) {
        return NestBringing.across(
                nest, SizesByLevel.parse(wanted).orElseThrow(), BringChoices.usual(15), Corrections.NONE);
    }

    private static Brought one(Nest nest, String size) {
        return NestBringing.one(nest, nest.size(size), BringChoices.usual(15), Corrections.NONE);
    }

    private static double girth(Pattern pattern, Measure measure) {
        return FlatPattern.measure(pattern, measure).orElseThrow().mm();
    }

    private static double length(Pattern pattern, EdgeRole role) {
        return pattern.pieces().stream()
                .flatMap(p -> p.edgesOf(role).stream())
                .mapToDouble(Edge::length)
                .sum();
    }

    @ParameterizedTest
    @CsvSource({
        "bodice, 12, 16, 16",
        "bodice, 18, 14, 14",
        "dress, 12, 14, 18",
        "dress, 16, 12, 14",
        "princess, 12, 14, 14",
        "yoke, 14, 12, 12",
        "raglan, 12, 14, 14",
        "kimono, 14, 16, 16"
    })
    void anUpperGarmentHasTheGirthOfEachSizeAtItsLevelAndTheFrameOfTheFirst(
            Garment garment, String bust, String waist, String hip) {
        Nest nest = nest(garment);
        boolean dress = garment == Garment.dress;
        Pattern drawn = across(nest, "bust " + bust + ", waist " + waist + (dress ? ", hip " + hip : ""))
                .pattern();
        assertThat(girth(drawn, Measure.BUST_GIRTH))
                .isCloseTo(girth(one(nest, bust).pattern(), Measure.BUST_GIRTH), within(WIDTH_MM));
        assertThat(girth(drawn, Measure.WAIST_GIRTH))
                .isCloseTo(girth(one(nest, waist).pattern(), Measure.WAIST_GIRTH), within(WIDTH_MM));
        if (dress) {
            assertThat(girth(drawn, Measure.HIP_GIRTH))
                    .isCloseTo(girth(one(nest, hip).pattern(), Measure.HIP_GIRTH), within(WIDTH_MM));
            assertThat(length(drawn, EdgeRole.HEM))
                    .isCloseTo(length(one(nest, hip).pattern(), EdgeRole.HEM), within(WIDTH_MM));
        }
        for (EdgeRole role : List.of(EdgeRole.NECK, EdgeRole.SHOULDER, EdgeRole.ARMHOLE, EdgeRole.CAP)) {
            assertThat(length(drawn, role))
                    .as(role.word())
                    .isCloseTo(length(one(nest, bust).pattern(), role), within(1e-6));
        }
    }

    @ParameterizedTest
    @CsvSource({"12, 16", "16, 12", "10, 14"})
    void aSkirtHasTheWaistWithItsDartsOfOneSizeAndHipAndHemOfTheOther(String waist, String hip) {
        Nest nest = nest(Garment.skirt);
        Pattern drawn = across(nest, "waist " + waist + ", hip " + hip).pattern();
        Pattern above = one(nest, waist).pattern();
        Pattern below = one(nest, hip).pattern();
        assertThat(girth(drawn, Measure.WAIST_GIRTH)).isCloseTo(girth(above, Measure.WAIST_GIRTH), within(WIDTH_MM));
        assertThat(girth(drawn, Measure.HIP_GIRTH)).isCloseTo(girth(below, Measure.HIP_GIRTH), within(WIDTH_MM));
        assertThat(length(drawn, EdgeRole.HEM)).isCloseTo(length(below, EdgeRole.HEM), within(1e-6));
        for (Piece piece : drawn.pieces()) {
            assertThat(piece.darts()).hasSameSizeAs(above.piece(piece.name()).darts());
        }
    }

    @ParameterizedTest
    @CsvSource({"12, 16, 14", "16, 12, 12"})
    void trousersHaveWaistHipAndKneeOfTheirSizes(String waist, String hip, String knee) {
        Nest nest = nest(Garment.trousers);
        Pattern drawn = across(nest, "waist " + waist + ", hip " + hip + ", knee " + knee)
                .pattern();
        assertThat(girth(drawn, Measure.WAIST_GIRTH))
                .isCloseTo(girth(one(nest, waist).pattern(), Measure.WAIST_GIRTH), within(WIDTH_MM));
        assertThat(girth(drawn, Measure.HIP_GIRTH))
                .isCloseTo(girth(one(nest, hip).pattern(), Measure.HIP_GIRTH), within(WIDTH_MM));
        assertThat(girth(drawn, Measure.KNEE_GIRTH))
                .isCloseTo(girth(one(nest, knee).pattern(), Measure.KNEE_GIRTH), within(WIDTH_MM));
    }

    @ParameterizedTest
    @CsvSource({"bodice, 'bust 12, waist 16'", "dress, 'bust 16, waist 12, hip 14'", "trousers, 'waist 12, hip 14'"})
    void sideSeamsStayBetweenTheSizesAndRunSmoothly(Garment garment, String wanted) {
        Nest nest = nest(garment);
        Brought drawn = across(nest, wanted);
        List<Brought> sizes = new ArrayList<>();
        for (String size : SizesByLevel.parse(wanted).orElseThrow().sizes()) {
            sizes.add(one(nest, size));
        }
        String lying = garment == Garment.trousers ? "hip" : "waist";
        Brought base = one(nest, wanted.replaceAll(".*" + lying + " (\\d+).*", "$1"));
        for (Piece piece : drawn.pattern().pieces()) {
            if (piece.kind().isSleeve()) {
                continue;
            }
            BroughtPiece like = piece(base, piece);
            Region all = Region.within(piece(sizes.get(0), piece).outline(), 0.01);
            Region common = all;
            for (Brought size : sizes) {
                Region own = Region.within(piece(size, piece).outline(), 0.01);
                all = all.union(own);
                common = common.intersection(own);
            }
            Region between = all.difference(common).grown(0.05);
            Path side = like.lies().undone(piece.only(EdgeRole.SIDE).path());
            for (int i = 0; i <= 100; i++) {
                Point p = side.pointAt(i * side.length() / 100);
                assertThat(between.contains(p)).as(piece.name() + " at " + p).isTrue();
            }
            if (piece.kind().isBack()) {
                assertRunsSmoothly(piece.only(EdgeRole.SIDE).path());
            }
        }
    }

    private static BroughtPiece piece(Brought brought, Piece like) {
        return brought.pieces().stream()
                .filter(p -> p.kind().value() == like.kind())
                .findFirst()
                .orElseThrow();
    }

    /** No corner that a drafted side seam does not have: they run smooth within 0.1 degrees. */
    private static void assertRunsSmoothly(Path path) {
        for (int i = 1; i < path.segments().size(); i++) {
            double turn = path.segments()
                    .get(i - 1)
                    .tangent(1)
                    .angleTo(path.segments().get(i).tangent(0));
            assertThat(Math.toDegrees(Math.abs(turn))).isLessThan(0.1);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "bodice, 'bust 12, waist 14'",
        "dress, 'bust 12, waist 14, hip 16'",
        "skirt, 'waist 14, hip 12'",
        "trousers, 'waist 12, hip 14'"
    })
    void seamsWalkOrWhatIsLeftIsTold(Garment garment, String wanted) {
        Brought drawn = across(nest(garment), wanted);
        for (Seam seam : drawn.pattern().seams()) {
            boolean told = drawn.findings().stream().anyMatch(f -> f.place().equals(seam.name() + " seam"));
            if (seam.name().equals("side") || seam.name().equals("inseam")) {
                // Front and back lean differently, so that one way across is longer: less than 1/8 in is eased in
                // (common practice).
                assertThat(Math.abs(seam.easeMm())).as(seam.name()).isLessThan(told ? 3.2 : 0.1);
            }
        }
    }

    @Test
    void oneSizeAtEveryLevelIsThatSize() {
        Nest nest = nest(Garment.dress);
        Pattern drawn = across(nest, "bust 14, hip 14").pattern();
        Pattern whole = one(nest, "14").pattern();
        for (Piece piece : whole.pieces()) {
            Piece same = drawn.piece(piece.name());
            assertThat(same.edges()).hasSameSizeAs(piece.edges());
            for (Edge edge : piece.edges()) {
                assertThat(same.edge(edge.name()).length()).isCloseTo(edge.length(), within(1e-6));
            }
            assertThat(same.darts()).hasSameSizeAs(piece.darts());
        }
    }

    @Test
    void aWiderUpperArmTakesTheCapAlongAndTellsItsEase() {
        Nest nest = nest(Garment.bodice);
        Brought drawn = across(nest, "bust 12, bicep 16, wrist 14");
        assertThat(girth(drawn.pattern(), Measure.UPPER_ARM_GIRTH))
                .isCloseTo(girth(one(nest, "16").pattern(), Measure.UPPER_ARM_GIRTH), within(WIDTH_MM));
        assertThat(length(drawn.pattern(), EdgeRole.WRIST))
                .isCloseTo(length(one(nest, "14").pattern(), EdgeRole.WRIST), within(WIDTH_MM));
        assertThat(drawn.findings()).anyMatch(f -> f.place().equals("armhole seam"));
    }

    @Test
    void sizesNestedAtTheUnderarmAreLaidTogetherAtTheCentre() {
        Nest nest = Nest.of(new NestDrawing(Garment.dress, SIZES, By.COLOUR, Named.SAMPLES, false, 0)
                .atUnderarm()
                .drawing());
        Brought drawn = across(nest, "bust 12, waist 16");
        Piece front = drawn.pattern().piece("dress front");
        Edge centre = front.only(EdgeRole.CENTRE);
        assertThat(centre.length())
                .isCloseTo(centre.path().start().distanceTo(centre.path().end()), within(1e-9));
        assertThat(drawn.findings())
                .anyMatch(f ->
                        f.place().equals("dress front") && f.sentence().contains("laid on one another at the centre"));
        assertThat(girth(drawn.pattern(), Measure.BUST_GIRTH))
                .isCloseTo(girth(one(nest, "12").pattern(), Measure.BUST_GIRTH), within(WIDTH_MM));
    }
}
