package trueseam.fitting.alteration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.fitting.Blocks;
import trueseam.fitting.Drafted;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.proof.Proof;
import trueseam.fitting.proof.Prover;
import trueseam.fitting.tissue.BeyondReachException;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;

/** What each choice keeps and what it costs, and what an alteration refuses. */
class ChoicesTest {

    private static final double HALF_INCH = 12.7;

    private static double lengthOf(Pattern pattern, EdgeRole role) {
        return pattern.pieces().stream()
                .flatMap(p -> p.edgesOf(role).stream())
                .mapToDouble(e -> e.length())
                .sum();
    }

    private static double capHeight(Piece sleeve) {
        double crown = sleeve.outline().bounds().maxY();
        List<Double> underarms = sleeve.edgesOf(EdgeRole.CAP).stream()
                .map(cap -> Math.min(cap.path().start().y(), cap.path().end().y()))
                .toList();
        return crown - underarms.stream().mapToDouble(y -> y).average().orElseThrow();
    }

    private static double capEase(Pattern pattern) {
        for (Seam seam : pattern.seams()) {
            if (pattern.piece(seam.second().get(0).piece())
                            .edge(seam.second().get(0).edge())
                            .role()
                    == EdgeRole.CAP) {
                return pattern.sewnLength(seam.second()) - pattern.sewnLength(seam.first());
            }
        }
        throw new IllegalStateException("no cap is sewn");
    }

    @ParameterizedTest
    @CsvSource({"SKIRT, 50", "SKIRT, -40", "DRESS, 30", "DRESS, -30"})
    void aCarriedHemGrowsWithTheHipAndAHemLetBackKeepsItsSweep(GarmentKind kind, double hipMm) {
        // Section 4.3, common practice: slide out from hip to hem to keep the line, hem sweep + N; or pivot back.
        Pattern shell = Drafted.shell(kind, "14");
        FitResult carried =
                Drafted.altered(shell, Map.of(Measure.HIP_GIRTH, hipMm), Drafted.USUAL.withHem(HemChoice.CARRIED));
        FitResult back =
                Drafted.altered(shell, Map.of(Measure.HIP_GIRTH, hipMm), Drafted.USUAL.withHem(HemChoice.LET_BACK));
        double sweep = 2 * lengthOf(shell, EdgeRole.HEM);
        // What smoothing takes at the hip is added to the amount, and a hem square to a swung side is a little longer.
        assertThat(2 * lengthOf(carried.worked().altered(), EdgeRole.HEM) - sweep)
                .isCloseTo(hipMm, within(2.5));
        assertThat(2 * lengthOf(back.worked().altered(), EdgeRole.HEM) - sweep).isCloseTo(0, within(2.5));
        assertThat(carried.report().failures()).isEmpty();
        assertThat(back.report().failures()).isEmpty();
    }

    @Test
    void keepingTheCapSeamCostsCapHeight() {
        // Table 4.2, derived: half an inch an edge at (160, -130) from the crown costs 17.4 mm of cap height.
        Pattern sleeve = Blocks.sleevePattern();
        WorkedPattern worked = WorkedPattern.altered(
                sleeve, List.of(new SleeveGirth(2 * HALF_INCH, CapChoice.KEEP_CAP_SEAM, SleeveReach.UPPER_ARM)));
        double lower =
                capHeight(sleeve.piece("sleeve")) - capHeight(worked.altered().piece("sleeve"));
        assertThat(lower).isCloseTo(17.418, within(0.5));
        assertThat(lengthOf(worked.altered(), EdgeRole.CAP)).isCloseTo(lengthOf(sleeve, EdgeRole.CAP), within(0.8));
    }

    @ParameterizedTest
    @ValueSource(doubles = {20, 4, -4, -18})
    void eachCapChoiceKeepsOneThingAndCostsTheOther(double girthMm) {
        Pattern bodice = Drafted.shell(GarmentKind.BODICE, "14");
        Map<Measure, Double> byMm = Map.of(Measure.UPPER_ARM_GIRTH, girthMm);
        FitResult seam =
                Drafted.altered(bodice, byMm, Drafted.USUAL.withSleeve(CapChoice.KEEP_CAP_SEAM, SleeveReach.UPPER_ARM));
        FitResult height = Drafted.altered(
                bodice, byMm, Drafted.USUAL.withSleeve(CapChoice.KEEP_CAP_HEIGHT, SleeveReach.UPPER_ARM));
        double before = capHeight(bodice.piece("sleeve"));
        assertThat(capEase(seam.worked().altered()) - capEase(bodice)).isCloseTo(0, within(0.5));
        assertThat((before - capHeight(seam.worked().altered().piece("sleeve"))) * Math.signum(girthMm))
                .as("a wider sleeve has a lower cap, a narrower one a higher cap")
                .isGreaterThan(Math.abs(girthMm) / 4);
        assertThat(capHeight(height.worked().altered().piece("sleeve"))).isCloseTo(before, within(1e-6));
        assertThat((capEase(height.worked().altered()) - capEase(bodice)) * Math.signum(girthMm))
                .as("a wider sleeve has more to ease in, a narrower one less")
                .isGreaterThan(Math.abs(girthMm) / 4);
    }

    @ParameterizedTest
    @ValueSource(doubles = {3, -3, 20, -18})
    void aCapThatWasAskedToChangeLeavesTheArmholeAloneHoweverSmallTheChange(double girthMm) {
        Pattern bodice = Drafted.shell(GarmentKind.BODICE, "16");
        FitResult fit = Drafted.altered(
                bodice,
                Map.of(Measure.UPPER_ARM_GIRTH, girthMm),
                Drafted.USUAL.withSleeve(CapChoice.KEEP_CAP_HEIGHT, SleeveReach.UPPER_ARM));
        assertThat(fit.worked().capEaseAsked()).isTrue();
        for (String piece : List.of("bodice front", "bodice back")) {
            assertThat(fit.worked().altered().piece(piece)).isEqualTo(bodice.piece(piece));
        }
        assertThat(fit.report().proofs()).noneMatch(p -> p.kind() == Proof.Kind.CAP);
    }

    @Test
    void aBodiceWidthChangeDoesNotAskForAnotherCapEase() {
        FitResult fit = Drafted.altered(
                Drafted.shell(GarmentKind.BODICE, "14"),
                Map.of(Measure.BUST_GIRTH, 40.0),
                Drafted.USUAL.withSleeve(CapChoice.KEEP_CAP_HEIGHT, SleeveReach.UPPER_ARM));
        assertThat(fit.worked().capEaseAsked()).isFalse();
        assertThat(fit.report().proofs()).anyMatch(p -> p.kind() == Proof.Kind.CAP);
    }

    @ParameterizedTest
    @ValueSource(doubles = {40, -40})
    void girthsLeaveTheBustPointWhereItWas(double mm) {
        Pattern bodice = Drafted.shell(GarmentKind.BODICE, "12");
        FitResult fit =
                Drafted.altered(bodice, Map.of(Measure.BUST_GIRTH, mm, Measure.WAIST_GIRTH, mm / 2), Drafted.USUAL);
        assertThat(fit.worked().altered().piece("bodice front").landmark(Landmark.BUST_POINT))
                .isEqualTo(bodice.piece("bodice front").landmark(Landmark.BUST_POINT));
    }

    @ParameterizedTest
    @CsvSource({"INSIDE_LEG_LENGTH, KNEE, 20, 10", "BODY_RISE, KNEE, 20, 20", "BODY_RISE, CROTCH, -15, -15"})
    void levelsBelowTheLineSlideWithIt(Measure measure, LevelName level, double mm, double downMm) {
        Pattern trousers = Drafted.shell(GarmentKind.TROUSERS, "14");
        FitResult fit = Drafted.altered(trousers, Map.of(measure, mm), Drafted.USUAL);
        for (Piece piece : trousers.pieces()) {
            double before = piece.level(level).orElseThrow();
            double after =
                    fit.worked().altered().piece(piece.name()).level(level).orElseThrow();
            assertThat(before - after).isCloseTo(downMm, within(0.3));
        }
    }

    @Test
    void theCrotchPointMovesOutToNothingAtTheKneeAndTheInseamKeepsItsLength() {
        Pattern trousers = Drafted.shell(GarmentKind.TROUSERS, "14");
        WorkedPattern worked = WorkedPattern.altered(trousers, List.of(new CrotchLength(12, 0, 15, 0)));
        assertMoved(trousers, worked, "trouser front", 12);
        assertMoved(trousers, worked, "trouser back", 15);
    }

    private static void assertMoved(Pattern before, WorkedPattern worked, String name, double outMm) {
        var was = before.piece(name).only(EdgeRole.INSEAM).path();
        var is = worked.altered().piece(name).only(EdgeRole.INSEAM).path();
        boolean top = was.start().y() > was.end().y();
        double moved = Math.abs((top ? was.start() : was.end()).x() - (top ? is.start() : is.end()).x());
        assertThat(moved).as(name).isCloseTo(outMm, within(0.1));
        double knee = before.piece(name).level(LevelName.KNEE).orElseThrow() - 30;
        assertThat(is.atLevel(knee).orElseThrow().point().x())
                .as(name + " below the knee")
                .isCloseTo(was.atLevel(knee).orElseThrow().point().x(), within(1e-6));
        assertThat(is.length()).as(name + " inseam").isCloseTo(was.length(), within(0.1));
    }

    @ParameterizedTest
    @CsvSource({"0, -200, waist at the centre", "-150, 0, crotch point"})
    void aCrotchSeamIsNotShortenedUntilItFolds(double pointMm, double waistMm, String where) {
        Pattern trousers = Drafted.shell(GarmentKind.TROUSERS, "14");
        Alteration tooMuch = new CrotchLength(pointMm, waistMm, 0, 0);
        assertThatThrownBy(() -> tooMuch.work(trousers))
                .isInstanceOf(AlterationException.class)
                .hasMessageContaining("trouser front, crotch")
                .hasMessageContaining(where)
                .hasMessageContaining("would fold at more than")
                .hasMessageContaining("alter the crotch depth");
    }

    @ParameterizedTest
    @ValueSource(strings = {"8", "14", "20"})
    void aCrotchSeamShortenedToTheLimitStillHasASimpleOutline(String size) {
        // The largest that the sentence of the refusal names, on both ends and both pieces.
        Pattern trousers = Drafted.shell(GarmentKind.TROUSERS, size);
        for (Alteration most : List.of(
                new CrotchLength(-limit(trousers, true, true), 0, 0, 0),
                new CrotchLength(0, -limit(trousers, true, false), 0, 0),
                new CrotchLength(0, 0, -limit(trousers, false, true), 0),
                new CrotchLength(0, 0, 0, -limit(trousers, false, false)))) {
            WorkedPattern worked = WorkedPattern.altered(trousers, List.of(most));
            assertThat(Prover.prove(worked, Map.of(), false).failures())
                    .as("%s", most)
                    .noneMatch(p -> p.kind() == Proof.Kind.SIMPLE);
        }
    }

    private static double limit(Pattern trousers, boolean front, boolean point) {
        double far = -500;
        Alteration tooMuch = new CrotchLength(
                front && point ? far : 0,
                front && !point ? far : 0,
                !front && point ? far : 0,
                !front && !point ? far : 0);
        try {
            tooMuch.work(trousers);
        } catch (AlterationException e) {
            String said = e.getMessage().replaceAll(".*would fold at more than (\\d+) mm.*", "$1");
            return Double.parseDouble(said);
        }
        throw new AssertionError("half a metre was not refused");
    }

    @Test
    void aGirthBeyondReachNamesThePinThePlaceAndTheLargestAmount() {
        // |(30, -190)| = 192.354 mm from the shoulder point: 162.4 mm outwards and no farther (closed form).
        Alteration far = new SideGirth(4 * 200, 0, 0, HemChoice.CARRIED);
        assertThatThrownBy(() -> WorkedPattern.altered(Blocks.bodice(), List.of(far)))
                .isInstanceOf(BeyondReachException.class)
                .hasMessageContaining("bodice front, underarm point")
                .hasMessageContaining("200.0 mm wanted, 162.4 mm reachable from the shoulder point");
    }

    @Test
    void aLengthThatTheLineCannotGiveIsRefusedWithEdgeAndWhatToDo() {
        Alteration shorter =
                new LengthAtLine("Bodice length", LevelName.BODICE_LENGTH, Set.of(PieceKind.BODICE_FRONT), -190);
        assertThatThrownBy(() -> WorkedPattern.altered(Drafted.shell(GarmentKind.BODICE, "14"), List.of(shorter)))
                .isInstanceOf(AlterationException.class)
                .hasMessageContaining("bodice front, ")
                .hasMessageContaining("take another size");
    }

    @Test
    void widerBustsSayHowFarTheyMoveAcrossFrontAndBack() {
        Pattern bodice = Drafted.shell(GarmentKind.BODICE, "14");
        FitResult fit = Drafted.altered(bodice, Map.of(Measure.BUST_GIRTH, 40.0), Drafted.USUAL);
        double moved = Drafted.gained(fit, Measure.ACROSS_FRONT_WIDTH);
        assertThat(moved).isGreaterThan(3);
        assertThat(fit.findings())
                .anySatisfy(f -> {
                    assertThat(f.place()).isEqualTo("across front width");
                    assertThat(f.sentence()).contains(Drafted.USUAL.show().showSigned(moved));
                    assertThat(f.sentence()).contains("the armhole turns about the shoulder point");
                })
                .anyMatch(f -> f.place().equals("across back width"));
    }

    @Test
    void aChosenTrouserLengthIsBroughtAboutWithTheCrotchDepthCountedIn() {
        Pattern trousers = Drafted.shell(GarmentKind.TROUSERS, "14");
        FitResult fit = Drafted.altered(
                trousers, Map.of(Measure.TROUSER_LENGTH, -20.0, Measure.BODY_RISE, 15.0), Drafted.USUAL);
        assertThat(fit.report().failures()).isEmpty();
        assertThat(Drafted.gained(fit, Measure.TROUSER_LENGTH)).isCloseTo(-20, within(0.1));
        assertThat(Drafted.gained(fit, Measure.INSIDE_LEG_LENGTH))
                .as("20 shorter and 15 of the depth, along slanted lines")
                .isCloseTo(-35, within(2.0));
    }
}
