package trueseam.fitting.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftException;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.PanelledShells;
import trueseam.drafting.Shells;
import trueseam.drafting.SleevedShells;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.plan.Fitting;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.flat.BodyPart;
import trueseam.garment.flat.FlatGirths;
import trueseam.garment.flat.FlatLevel;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.flat.GirthAt;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.size.SizeRow;
import trueseam.garment.size.SizeTable;
import trueseam.intake.size.SizeTables;
import trueseam.intake.survey.Survey;
import trueseam.intake.survey.SurveyRow;

/** The profile of drafted garments: the draft states its own ease, and the tape laid on the levels reads it. */
class DraftedEaseTest {

    /** The bound of the design for a girth measured again on the flat pattern. */
    private static final double MEASURED_MM = 0.1;

    /** Levels nearer than this to each other are one line. */
    private static final double ONE_LINE_MM = 0.01;

    @ParameterizedTest
    @ValueSource(strings = {"misses", "women", "miss petite", "men"})
    void atEveryMarkedLevelOfEverySizeItIsWhatTheTapeReads(String name) {
        SizeTable table = SizeTables.named(name);
        int seen = 0;
        for (SizeRow row : table.rows()) {
            DraftFigure figure = DraftFigure.of(table, row.size());
            for (Pattern pattern : garments(figure)) {
                for (BodyPart part : BodyPart.values()) {
                    for (FlatLevel level :
                            FlatGirths.of(pattern, part).map(FlatGirths::levels).orElse(List.of())) {
                        double read = FlatPattern.measure(pattern, level.measure())
                                .orElseThrow()
                                .mm();
                        assertThat(level.at().girthMm())
                                .as("%s, %s", pattern.name(), level.measure())
                                .isCloseTo(read, within(MEASURED_MM));
                        seen++;
                    }
                }
            }
        }
        assertThat(seen).isGreaterThan(30 * table.rows().size());
    }

    private static List<Pattern> garments(DraftFigure figure) {
        DraftEase ease = DraftEase.fitted();
        Allowances allowances = Allowances.inches();
        return List.of(
                Shells.bodice(figure, ease),
                Shells.dress(figure, ease),
                Shells.skirt(figure, ease),
                Shells.trousers(figure, ease),
                PanelledShells.princess(figure, ease, allowances),
                PanelledShells.gored(figure, ease, allowances),
                PanelledShells.twoPieceSleeve(figure, ease, allowances),
                PanelledShells.yoke(figure, ease, allowances),
                SleevedShells.kimono(figure, ease, allowances),
                SleevedShells.raglan(figure, ease, allowances));
    }

    @ParameterizedTest
    @EnumSource
    void draftedFromASurveyedBodyItHasTheEaseOfTheDraftAtTheLevels(GarmentKind kind) {
        // Bodies: ANSUR II (US Army, 2012, public domain; data/bodies), every fortieth woman and man. The ease is the
        // draft's own,
        // taken from the table of wearing ease and its sources.
        int compared = 0;
        List<String> tight = new ArrayList<>();
        for (SurveyRow row : people()) {
            DraftFigure figure = DraftFigure.of(row.asBody());
            Optional<Pattern> drafted = draft(kind, figure);
            if (drafted.isEmpty()) {
                continue; // refused with a reason; SurveyDraftTest counts them
            }
            FitChoices choices = FitChoices.usual(LengthFormat.millimetres())
                    .withEase(DraftEase.fitted().chosenMm());
            for (EaseProfile profile :
                    EaseProfile.of(Fitting.fit(drafted.get(), body(figure), Optional.empty(), choices))) {
                assertRunsOnWithoutHoles(row.id(), profile);
                for (EaseAt level : profile.levels()) {
                    Measure measure = level.body().measure();
                    double apart =
                            level.levelBeforeMm().orElseThrow() - level.body().heightMm();
                    // The thigh is not drafted to: its width follows from hip, crotch and knee.
                    if (Math.abs(apart) < ONE_LINE_MM && measure != Measure.THIGH_GIRTH) {
                        assertThat(level.easeBeforeMm().orElseThrow())
                                .as("%s, %s", row.id(), measure)
                                .isCloseTo(DraftEase.fitted().mm(measure, kind, figure), within(MEASURED_MM));
                        compared++;
                    }
                }
                profile.tightBetween().forEach(place -> tight.add(row.id() + ": " + place));
            }
        }
        assertThat(compared).isGreaterThan(150);
        assertThat(tight)
                .as("a shell drafted to a body is nowhere tight between the levels")
                .isEmpty();
    }

    /**
     * From one height to the next no piece is missed, which would be 100 mm at least. Seams run out by 6 mm round for 1 mm down at most,
     * and an end measured along an arched edge differs from across it by some 20 mm.
     */
    private static void assertRunsOnWithoutHoles(String person, EaseProfile profile) {
        List<GirthAt> girths = profile.after().every(EaseProfile.STEP_MM);
        for (int i = 1; i < girths.size(); i++) {
            GirthAt above = girths.get(i - 1);
            GirthAt below = girths.get(i);
            double down = above.heightMm() - below.heightMm();
            assertThat(Math.abs(below.girthMm() - above.girthMm()))
                    .as("%s, %s from %s to %s", person, profile.part(), above, below)
                    .isLessThan(25 + 6 * down);
        }
    }

    @Test
    void theWholeSurveyIsThere() {
        assertThat(people()).hasSizeGreaterThan(140);
    }

    private static Optional<Pattern> draft(GarmentKind kind, DraftFigure figure) {
        DraftEase ease = DraftEase.fitted();
        try {
            return Optional.of(
                    switch (kind) {
                        case BODICE -> Shells.bodice(figure, ease);
                        case DRESS -> Shells.dress(figure, ease);
                        case SKIRT -> Shells.skirt(figure, ease);
                        case TROUSERS -> Shells.trousers(figure, ease);
                    });
        } catch (DraftException e) {
            return Optional.empty();
        }
    }

    private static Body body(DraftFigure figure) {
        List<Reading> readings = new ArrayList<>();
        figure.values().forEach((measure, value) -> readings.add(Reading.taped(measure, value.mm())));
        return Body.named("Surveyed person").withAll(readings);
    }

    private static List<SurveyRow> people() {
        List<SurveyRow> some = new ArrayList<>();
        for (String name : List.of("ansur2-female.csv", "ansur2-male.csv")) {
            Path here = Path.of("data", "bodies", name);
            List<SurveyRow> all = Survey.read(
                            Files.exists(here) ? here : Path.of("..").resolve(here))
                    .rows();
            for (int i = 0; i < all.size(); i += 40) {
                some.add(all.get(i));
            }
        }
        return some;
    }
}
