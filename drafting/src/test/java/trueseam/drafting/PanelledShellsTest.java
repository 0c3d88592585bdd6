package trueseam.drafting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

class PanelledShellsTest {

    private static final DraftEase FITTED = DraftEase.fitted();
    private static final Allowances INCHES = Allowances.inches();

    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void everySizeOfTheGoredSkirtMeasuresRightAndWalks(DraftFigure figure) {
        DraftProof.prove(PanelledShells.gored(figure, FITTED, INCHES), figure);
    }

    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void everySizeOfThePrincessBodiceMeasuresRightAndWalks(DraftFigure figure) {
        DraftProof.prove(PanelledShells.princess(figure, FITTED, INCHES), figure);
    }

    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void everySizeOfTheTwoPieceSleeveMeasuresRightAndWalks(DraftFigure figure) {
        DraftProof.prove(PanelledShells.twoPieceSleeve(figure, FITTED, INCHES), figure);
    }

    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void everySizeOfTheYokeMeasuresRightAndWalks(DraftFigure figure) {
        DraftProof.prove(PanelledShells.yoke(figure, FITTED, INCHES), figure);
    }

    // Common practice (truing): where two pieces meet at a seam, their edges run on into each other.
    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void edgesRunOnAcrossTheSeams(DraftFigure figure) {
        Pattern skirt = PanelledShells.gored(figure, FITTED, INCHES);
        for (String which : new String[] {"front", "back"}) {
            straight(skirt, "skirt centre " + which, "panel", "waist", "skirt side " + which, "waist", "panel");
            straight(skirt, "skirt centre " + which, "hem", "panel", "skirt side " + which, "panel", "hem");
        }
        straight(skirt, "skirt side front", "side", "waist", "skirt side back", "side", "waist");
        straight(skirt, "skirt side front", "hem", "side", "skirt side back", "hem", "side");

        Pattern princess = PanelledShells.princess(figure, FITTED, INCHES);
        for (String which : new String[] {"front", "back"}) {
            String centre = "bodice centre " + which;
            straight(princess, centre, "waist", "panel", "bodice side " + which, "panel", "waist");
            straight(princess, centre, "panel", "shoulder", "bodice side " + which, "shoulder", "panel");
        }
        straight(princess, "bodice side front", "waist", "side", "bodice side back", "waist", "side");
        straight(princess, "bodice side front", "side", "armhole", "bodice side back", "side", "armhole");
        straight(princess, "bodice centre front", "panel", "shoulder", "bodice centre back", "panel", "shoulder");
        straight(princess, "bodice centre front", "shoulder", "neck", "bodice centre back", "shoulder", "neck");

        Pattern sleeve = PanelledShells.twoPieceSleeve(figure, FITTED, INCHES);
        straight(sleeve, "upper sleeve", "front seam", "cap front", "under sleeve", "cap under", "front seam");
        straight(sleeve, "upper sleeve", "cap back", "back seam", "under sleeve", "back seam", "cap under");
        straight(sleeve, "upper sleeve", "wrist", "front seam", "under sleeve", "front seam", "wrist");

        Pattern yoke = PanelledShells.yoke(figure, FITTED, INCHES);
        straight(yoke, "bodice lower back", "armhole", "yoke", "back yoke", "yoke", "armhole");
        straight(yoke, "bodice lower back", "yoke", "centre back", "back yoke", "centre back", "yoke");
        straight(yoke, "bodice front", "armhole", "shoulder", "back yoke", "armhole", "shoulder");
    }

    private static void straight(
            Pattern p, String first, String before, String after, String second, String before2, String after2) {
        assertThat(SewnCorners.sewn(p, first, before, after, second, before2, after2))
                .as(first + " and " + second + " at " + after)
                .isCloseTo(180, within(DraftProof.SMOOTH_DEGREES));
    }

    // Common practice: panels have no darts, for the seams have taken them.
    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void theSeamsHaveTakenTheDarts(DraftFigure figure) {
        assertThat(PanelledShells.gored(figure, FITTED, INCHES).pieces())
                .allSatisfy(piece -> assertThat(piece.darts()).isEmpty());
        assertThat(PanelledShells.princess(figure, FITTED, INCHES).pieces())
                .allSatisfy(piece -> assertThat(piece.darts()).isEmpty());
        assertThat(PanelledShells.yoke(figure, FITTED, INCHES)
                        .piece("back yoke")
                        .darts())
                .isEmpty();
    }

    // The flare is ours; that it is what is stated can be measured: from the hip to the hem each edge swings out so
    // far.
    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void everySeamEdgeSwingsOutByTheStatedFlare(DraftFigure figure) {
        Pattern skirt = PanelledShells.gored(figure, FITTED, INCHES);
        double hemY =
                skirt.piece("skirt centre front").edge("hem").path().start().y();
        for (Piece piece : skirt.pieces()) {
            double hipY = piece.level(LevelName.HIP).orElseThrow();
            Path edge = piece.edge("panel").path();
            Point hip = edge.atLevel(hipY).orElseThrow().point();
            Point hem = edge.start().y() < edge.end().y() ? edge.start() : edge.end();
            double share = (hipY - hem.y()) / (hipY - hemY);
            assertThat(Math.abs(hem.x() - hip.x()))
                    .as(piece.name())
                    .isCloseTo(share * PanelledShells.FLARE_MM, within(1e-6));
        }
    }
}
