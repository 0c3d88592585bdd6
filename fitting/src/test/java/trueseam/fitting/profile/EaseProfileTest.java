package trueseam.fitting.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Shells;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Overrule;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.garment.body.Body;
import trueseam.garment.body.BodyValue;
import trueseam.garment.body.Origin;
import trueseam.garment.body.Reading;
import trueseam.garment.flat.BodyPart;
import trueseam.garment.flat.FlatGirths;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.intake.size.SizeTables;

class EaseProfileTest {

    private static final double INCH = 25.4;
    private static final Pattern SKIRT =
            Shells.skirt(DraftFigure.of(SizeTables.named("misses"), "14"), DraftEase.fitted());

    /** Invented: 31 in at the waist, 41 in at the hip. */
    private static Body person() {
        return Body.named("Invented person")
                .with(Reading.taped(Measure.WAIST_GIRTH, 31 * INCH))
                .with(Reading.taped(Measure.HIP_GIRTH, 41 * INCH))
                .with(Reading.taped(Measure.WAIST_TO_HIP, 8.5 * INCH));
    }

    private static EaseProfile trunk(Body body, Map<Measure, Overrule> own) {
        return EaseProfile.of(fit(body, own)).get(0);
    }

    private static FitResult fit(Body body, Map<Measure, Overrule> own) {
        FitChoices choices = FitChoices.usual(LengthFormat.inches(8)).withOverrules(own);
        return Fitting.fit(SKIRT, body, Optional.empty(), choices);
    }

    @Test
    void aHipThatWasLeftAloneIsTightAndAnAlteredOneIsNot() {
        EaseProfile left = trunk(person(), Map.of(Measure.HIP_GIRTH, new Overrule.Leave()));
        EaseProfile altered = trunk(person(), Map.of());
        EaseAt leftHip = hip(left);
        // Size 14 of the misses' table has a hip of 38 in, drafted with 2 1/2 in of ease: 40 1/2 in round a hip of 41
        // in, which
        // needs 2 in more (Clothing: Fashion, Fabrics and Construction, sewing handbook: 2 to 2 1/2 in).
        assertThat(leftHip.easeAfterMm().orElseThrow()).isCloseTo(-0.5 * INCH, within(0.1));
        assertThat(leftHip.shortAfterMm().orElseThrow()).isCloseTo(2.5 * INCH, within(0.1));
        assertThat(hip(altered).shortBeforeMm().orElseThrow()).isCloseTo(2.5 * INCH, within(0.1));
        assertThat(hip(altered).shortAfterMm()).isEmpty();
    }

    private static EaseAt hip(EaseProfile profile) {
        return profile.levels().stream()
                .filter(level -> level.body().measure() == Measure.HIP_GIRTH)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aFullAbdomenShowsBetweenWaistAndHip() {
        Body abdomen = person().with(Reading.taped(Measure.TOP_HIP_GIRTH, 44 * INCH));
        EaseProfile profile = trunk(abdomen, Map.of(Measure.TOP_HIP_GIRTH, new Overrule.Leave()));
        List<EaseAt> levels = profile.levels();
        assertThat(levels.stream().map(level -> level.body().measure()))
                .containsExactly(Measure.WAIST_GIRTH, Measure.TOP_HIP_GIRTH, Measure.HIP_GIRTH);
        EaseAt topHip = levels.get(1);
        assertThat(topHip.body().heightMm()).isCloseTo(levels.get(2).body().heightMm() / 2, within(1e-9));
        assertThat(topHip.shortAfterMm()).isPresent();
        assertThat(profile.tightBetween()).as("said once").isEmpty();
    }

    @Test
    void nothingIsInventedBeyondTheMeasuredGirths() {
        EaseProfile profile = trunk(person(), Map.of());
        double lowest = profile.levels().get(1).body().heightMm();
        assertThat(profile.readings(5)).anyMatch(reading -> reading.heightMm() < lowest);
        for (EaseReading reading : profile.readings(5)) {
            boolean known = reading.heightMm() <= 0 && reading.heightMm() >= lowest;
            assertThat(reading.bodyMm().isPresent())
                    .as("body at %s", reading.heightMm())
                    .isEqualTo(known);
            assertThat(reading.leastMm().isPresent()).isEqualTo(known);
        }
    }

    @Test
    void whereNoHeightWasTakenThePatternSaysIt() {
        EaseProfile taken = trunk(person(), Map.of());
        EaseProfile untaken = trunk(person().without(Measure.WAIST_TO_HIP), Map.of());
        assertThat(hip(taken).body().from()).isEqualTo(HeightFrom.BODY);
        assertThat(hip(untaken).body().from()).isEqualTo(HeightFrom.PATTERN);
        assertThat(hip(untaken).body().heightMm())
                .isEqualTo(hip(untaken).levelAfterMm().orElseThrow());
    }

    @Test
    void aSkirtDrawnInBetweenTheMeasuredHeightsIsSaidToBePerhapsTightThere() {
        // 1000 mm round the waist, 800 mm round 100 mm below it, 1040 mm round the hip 200 mm below it.
        FlatGirths drawnIn = FlatGirths.of(
                        new Pattern(
                                "drawn in",
                                "",
                                "",
                                "",
                                List.of(half("front", PieceKind.SKIRT_FRONT), half("back", PieceKind.SKIRT_BACK)),
                                List.of(),
                                Map.of()),
                        BodyPart.TRUNK)
                .orElseThrow();
        EaseProfile profile = new EaseProfile(
                BodyPart.TRUNK,
                drawnIn,
                drawnIn,
                List.of(
                        at(drawnIn, Measure.WAIST_GIRTH, 0, 970, 12.7),
                        at(drawnIn, Measure.HIP_GIRTH, -200, 970, 50.8)));
        assertThat(profile.levels())
                .allSatisfy(level -> assertThat(level.shortAfterMm()).isEmpty());
        assertThat(profile.tightBetween()).hasSize(1);
        TightBetween place = profile.tightBetween().get(0);
        assertThat(place.heightMm()).isCloseTo(-100, within(EaseProfile.STEP_MM));
        // Two known girths give a straight line: 970 mm and 31.75 mm of least ease half way down.
        assertThat(place.shortMm()).isCloseTo(970 + 31.75 - 800, within(15.0));
    }

    private static EaseAt at(FlatGirths garment, Measure measure, double height, double mm, double least) {
        BodyGirth body = new BodyGirth(
                measure,
                new BodyValue(mm, 0, 1, Origin.TAPED, ""),
                height,
                HeightFrom.BODY,
                OptionalDouble.of(least),
                "for the test");
        OptionalDouble round = garment.at(height);
        return new EaseAt(body, round, round, OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static Piece half(String name, PieceKind kind) {
        Point centre = new Point(0, 200);
        Point side = new Point(250, 200);
        Point drawnIn = new Point(200, 100);
        Point hem = new Point(260, 0);
        return new PieceBuilder(name, kind)
                .edge("hem", EdgeRole.HEM, Path.through(Point.ORIGIN, hem), 30)
                .edge("side", EdgeRole.SIDE, Path.through(hem, drawnIn, side), 15)
                .edge("waist", EdgeRole.WAIST, Path.through(side, centre), 15)
                .edge("centre", EdgeRole.CENTRE, Path.through(centre, Point.ORIGIN), 0)
                .onFold("centre")
                .grain(new Grain(new Point(30, 50), new Point(30, 150)))
                .build();
    }

    @Test
    void piecesThatOnlyShowTheStepsHaveNoProfile() {
        FitResult onPaper = Fitting.onPaper(
                SKIRT,
                person(),
                Optional.of(SizeTables.named("misses").row("14")),
                Map.of(),
                FitChoices.usual(LengthFormat.inches(8)));
        assertThat(EaseProfile.of(onPaper)).isEmpty();
        assertThat(EaseProfile.of(fit(person(), Map.of())).stream().map(EaseProfile::part))
                .containsExactly(BodyPart.TRUNK);
    }
}
