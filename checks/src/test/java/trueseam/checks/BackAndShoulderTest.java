package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.work.Chapter;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** The numbers that handbooks give for back, shoulder and neck, on the drafted bodice of size 14. */
class BackAndShoulderTest {

    private static final double INCH = 25.4;
    private static final Pattern BODICE = DraftedGarments.inSizes("14").get(0);

    /** What a seam may change by when it is walked. */
    private static final double WALK_MM = 0.1;

    private static WorkedPattern worked(String name, String way, double mm) {
        Entry entry = Repertoire.named(name).orElseThrow();
        return WorkedPattern.altered(
                BODICE, List.of(new Applied(entry, entry.variant(way).orElseThrow(), mm, Optional.empty())));
    }

    private static Pattern altered(String name, String way, double mm) {
        return worked(name, way, mm).altered();
    }

    private static double longer(Pattern altered, String piece, String edge) {
        return altered.piece(piece).sewnLength(edge) - BODICE.piece(piece).sewnLength(edge);
    }

    private static double more(Pattern altered, Measure measure) {
        return FlatPattern.measure(altered, measure).orElseThrow().mm()
                - FlatPattern.measure(BODICE, measure).orElseThrow().mm();
    }

    @Test
    void halfAnInchSlashedIntoTheBackIsSharedByBackAndFrontArmholeAtTheShoulder() {
        // [ND1921], trade.md example 8: back spread 1/2, of which 1/4 comes off the back armhole edge at the shoulder
        // and 1/4 is
        // added to the front armhole edge, tapering to the notch. Spread on each half, so 1 inch across the whole back.
        Pattern altered = altered("across back", "slash", INCH);
        assertThat(longer(altered, "bodice back", "waist")).isEqualTo(INCH / 2, within(WALK_MM));
        assertThat(longer(altered, "bodice back", "shoulder")).isEqualTo(INCH / 4, within(WALK_MM));
        assertThat(longer(altered, "bodice front", "shoulder")).isEqualTo(INCH / 4, within(WALK_MM));
        assertThat(longer(altered, "bodice back", "armhole")).isEqualTo(0, within(WALK_MM));
        assertThat(longer(altered, "bodice front", "armhole")).isEqualTo(0, within(WALK_MM));
    }

    @Test
    void theQuarterInchOnTheFrontArmholeTapersToNothingAtTheNotch() {
        // [ND1921], trade.md example 8; as drawn, before truing smooths the armhole.
        Chapter drawn = worked("across back", "slash", INCH).chapters().stream()
                .filter(chapter -> chapter.after().name().equals("bodice front"))
                .findFirst()
                .orElseThrow();
        Path before = drawn.before().edge("armhole").path();
        Path after = drawn.after().edge("armhole").path();
        assertThat(after.end().distanceTo(before.end())).isBetween(INCH / 4, 0.3 * INCH);
        double notch = before.atLevel(drawn.before().level(LevelName.ACROSS).orElseThrow())
                .orElseThrow()
                .alongMm();
        for (double at = 0; at < notch; at += 5) {
            assertThat(after.pointAt(at).distanceTo(before.pointAt(at)))
                    .as("front armhole at " + at)
                    .isLessThan(1e-6);
        }
    }

    @ParameterizedTest
    // [HERTZ], trade.md example 13: back length by posture, in inches; the very bent at the upper end of 1/2 to 3/4.
    @CsvSource({
        "erect back, all across, 0.25, -0.25",
        "round back, neck dart, 0.25, 0.25",
        "round back, neck dart, 0.75, 0.75"
    })
    void backLengthFollowsPosture(String name, String way, double inches, double longerInches) {
        Pattern altered = altered(name, way, inches * INCH);
        assertThat(more(altered, Measure.BACK_WAIST_LENGTH)).isEqualTo(longerInches * INCH, within(WALK_MM));
        assertThat(longer(altered, "bodice back", "side")).isEqualTo(0, within(WALK_MM));
    }

    @Test
    void anErectBackLosesAtTheBackArmholeWhatItLosesAtTheCentre() {
        // [HERTZ], trade.md example 13: the same amount off the back armhole.
        Pattern altered = altered("erect back", "all across", INCH / 4);
        assertThat(longer(altered, "bodice back", "armhole")).isEqualTo(-INCH / 4, within(WALK_MM));
        assertThat(longer(altered, "bodice front", "armhole")).isEqualTo(0, within(WALK_MM));
    }

    @Test
    void aRoundBackKeepsItsNeckByADartAndItsArmhole() {
        // Common practice: the gained width is given to a dart, so that neck and armhole are sewn as before.
        Pattern altered = altered("round back", "neck dart", INCH / 2);
        assertThat(longer(altered, "bodice back", "neck")).isEqualTo(0, within(WALK_MM));
        assertThat(longer(altered, "bodice back", "armhole")).isEqualTo(0, within(WALK_MM));
        assertThat(altered.piece("bodice back").dartsOn("neck")).hasSize(1);
    }

    @Test
    void shoulderBladesEnlargeTheDartByTheAmount() {
        // Common practice: the dart takes the amount and the shoulder is sewn as long as before.
        Pattern altered = altered("shoulder blades", "", INCH / 4);
        assertThat(mouth(altered) - mouth(BODICE)).isEqualTo(INCH / 4, within(WALK_MM));
        assertThat(longer(altered, "bodice back", "shoulder")).isEqualTo(0, within(WALK_MM));
    }

    @Test
    void aSquareShoulderRaisesArmholeAndUnderarmAndLengthensTheSideByAsMuch() {
        // trade.md example 33 (common practice): shoulder point + 1/2, armhole and underarm + 1/2, armhole as long;
        // side + 1/2.
        double half = INCH / 2;
        Pattern altered = altered("square shoulder", "armhole end", half);
        for (String piece : List.of("bodice front", "bodice back")) {
            Path before = BODICE.piece(piece).edge("armhole").path();
            Path after = altered.piece(piece).edge("armhole").path();
            assertThat(after.end().y() - before.end().y()).isEqualTo(half, within(0.5));
            // Front and back side seams slant differently: level within the proof's 0.5 mm and of one length.
            assertThat(after.start().y() - before.start().y()).isEqualTo(half, within(0.5));
            assertThat(after.start().x()).isEqualTo(before.start().x(), within(0.5));
            assertThat(longer(altered, piece, "armhole")).isEqualTo(0, within(WALK_MM));
            assertThat(longer(altered, piece, "shoulder")).isEqualTo(0, within(WALK_MM));
            assertThat(longer(altered, piece, "side")).isEqualTo(half, within(0.5));
        }
        assertThat(longer(altered, "bodice front", "side") - longer(altered, "bodice back", "side"))
                .isEqualTo(0, within(WALK_MM));
    }

    @Test
    void atTheNeckEndASquareShoulderLeavesArmholeAndSideAlone() {
        // [WSU2246], trade.md 11: a slender figure's seam is taken up at the neck.
        Pattern altered = altered("square shoulder", "neck end", INCH / 4);
        for (String piece : List.of("bodice front", "bodice back")) {
            assertThat(longer(altered, piece, "armhole")).isEqualTo(0, within(WALK_MM));
            assertThat(longer(altered, piece, "side")).isEqualTo(0, within(WALK_MM));
        }
        assertThat(more(altered, Measure.NECK_BASE_GIRTH)).isEqualTo(0, within(4 * WALK_MM));
    }

    @Test
    void theShoulderSwingsOutAsItRises() {
        // trade.md 4.2 (derived): from a neck point, shoulder point at (118, -42): up 6.35 is 3.0557 degrees and 2.07
        // mm outward.
        double turn =
                Math.atan2(-42 + 6.35, Math.sqrt(118 * 118 + 42 * 42 - Math.pow(-42 + 6.35, 2))) - Math.atan2(-42, 118);
        assertThat(Math.toDegrees(turn)).isEqualTo(3.0557, within(5e-5));
        Pattern round = roundNecked(118, -42);
        Entry entry = Repertoire.named("square shoulder").orElseThrow();
        Chapter drawn = WorkedPattern.altered(
                        round, List.of(new Applied(entry, entry.variants().get(0), 6.35, Optional.empty())))
                .chapters()
                .get(0);
        Path before = drawn.before().edge("shoulder").path();
        Path after = drawn.after().edge("shoulder").path();
        assertThat(after.start().x() - before.start().x()).isEqualTo(2.07, within(0.005));
        assertThat(after.length()).isEqualTo(before.length(), within(1e-9));
    }

    @Test
    void aNeckThatNeedsThreeQuartersOfAnInchIsLoweredByAnEighth() {
        // trade.md example 34 (derived): 3/4 / (2 pi) = 0.119, about 1/8; true of a neck whose shoulders do not slope.
        Pattern flat = roundNecked(120, 0);
        Entry entry = Repertoire.named("neck").orElseThrow();
        Pattern altered = WorkedPattern.altered(
                        flat, List.of(new Applied(entry, entry.variants().get(0), 0.75 * INCH, Optional.empty())))
                .altered();
        for (Piece piece : flat.pieces()) {
            double lowered = piece.edge("centre").length()
                    - altered.piece(piece.name()).edge("centre").length();
            assertThat(lowered / INCH).isEqualTo(0.119, within(0.0005));
        }
        double more = FlatPattern.measure(altered, Measure.NECK_BASE_GIRTH)
                        .orElseThrow()
                        .mm()
                - FlatPattern.measure(flat, Measure.NECK_BASE_GIRTH)
                        .orElseThrow()
                        .mm();
        assertThat(more).isEqualTo(0.75 * INCH, within(WALK_MM));
    }

    /** Front and back with quarter circles for a neck, and the shoulder point so far from the neck point. */
    private static Pattern roundNecked(double acrossMm, double upMm) {
        double radius = 60;
        double handle = 0.5523 * radius; // the usual cubic of a quarter circle, from memory
        List<Piece> pieces = new ArrayList<>();
        for (PieceKind kind : List.of(PieceKind.BODICE_FRONT, PieceKind.BODICE_BACK)) {
            Point neck = new Point(radius, 460);
            Point shoulder = new Point(radius + acrossMm, 460 + upMm);
            Point underarm = new Point(250, 220);
            Path neckLine = Path.of(Cubic.of(neck, new Vec(0, -handle), new Vec(handle, 0), new Point(0, 400)));
            Path armhole = Path.of(
                    Cubic.of(underarm, new Vec(-60, 0), new Vec(0, -60), new Point(175, 320)),
                    Cubic.of(new Point(175, 320), new Vec(0, 30), new Vec(0, -30), shoulder));
            pieces.add(new PieceBuilder(kind.word(), kind)
                    .edge("waist", EdgeRole.WAIST, Path.through(new Point(0, 0), new Point(230, 0)), 0)
                    .edge("side", EdgeRole.SIDE, Path.through(new Point(230, 0), underarm), 0)
                    .edge("armhole", EdgeRole.ARMHOLE, armhole, 0)
                    .edge("shoulder", EdgeRole.SHOULDER, Path.through(shoulder, neck), 0)
                    .edge("neck", EdgeRole.NECK, neckLine, 0)
                    .edge("centre", EdgeRole.CENTRE, Path.through(new Point(0, 400), new Point(0, 0)), 0)
                    .onFold("centre")
                    .level(LevelName.ACROSS, 320)
                    .grain(new Grain(new Point(60, 50), new Point(60, 300)))
                    .build());
        }
        return new Pattern("round neck", "", "", "", pieces, List.of(), Map.of());
    }

    private static double mouth(Pattern pattern) {
        Piece back = pattern.piece("bodice back");
        var dart = back.dartsOn("shoulder").get(0);
        return back.edge("shoulder")
                .path()
                .pointAt(dart.fromMm())
                .distanceTo(back.edge("shoulder").path().pointAt(dart.toMm()));
    }
}
