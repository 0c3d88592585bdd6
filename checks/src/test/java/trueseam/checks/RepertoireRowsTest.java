package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.drafting.Allowances;
import trueseam.drafting.Bands;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.PanelledShells;
import trueseam.drafting.Shells;
import trueseam.drafting.SleevedShells;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.body.Side;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Sides;
import trueseam.intake.size.SizeTables;

/**
 * Every row of the trade's tables of bodice, sleeve and collar alterations (trade.md 4.3; U, M, N: [HERR32], [MT265], [ND1921] name it
 * too), and what becomes of it here: none may be lost.
 */
class RepertoireRowsTest {

    private static final Allowances INCHES = Allowances.inches();

    /** A row, the alteration and way that do it, which way (+ or -), and what it must be done on. */
    private static final String ROWS = """
            bust girth wider all round                 | bust girth                        |                          | + | bodice dress
            bust girth narrower all round              | bust girth                        |                          | - | bodice dress
            full bust with a dart                      | full bust                         |                          | + | bodice dress
            small bust with a dart                     | full bust                         |                          | - | bodice dress
            full bust of a front in panels             | full bust in panels               |                          | + | princess
            small bust of a front in panels            | full bust in panels               |                          | - | princess
            bust point up                              | bust point height                 |                          | - | bodice dress
            bust point down                            | bust point height                 |                          | + | bodice dress
            bust point in                              | bust point width                  |                          | - | bodice dress
            bust point out                             | bust point width                  |                          | + | bodice dress
            waist wider at the side seam               | waist girth                       |                          | + | bodice dress
            waist narrower at the side seam            | waist girth                       |                          | - | bodice dress
            waist wider by darts                       | waist by darts                    |                          | + | bodice dress
            waist narrower by darts                    | waist by darts                    |                          | - | bodice dress
            large abdomen in the bodice                | large abdomen of a bodice         |                          | + | bodice dress
            hip of a dress wider                       | hip girth of a dress              |                          | + | dress
            hip of a dress narrower                    | hip girth of a dress              |                          | - | dress
            broad across the back, slash               | across back                       | slash                    | + | bodice dress
            broad across the back, pivot               | across back                       | pivot                    | + | bodice dress
            broad across the back, dart kept           | across back                       | into the shoulder dart   | + | bodice dress
            narrow back                                | across back                       |                          | - | bodice dress
            back large below the armholes              | back below armholes               |                          | + | bodice dress
            round back                                 | round back                        |                          | + | bodice dress
            dowager's hump                             | dowager's hump                    |                          | + | bodice dress
            prominent shoulder blades                  | shoulder blades                   |                          | + | bodice dress
            erect back                                 | erect back                        |                          | + | bodice dress
            sway-back                                  | sway-back                         |                          | + | bodice
            sway-back of a dress                       | sway-back without a waist seam    |                          | + | dress
            sway-back of a dress, seam at the centre   | sway-back without a waist seam    | centre back seam         | + | dress
            broad shoulder                             | shoulder width                    |                          | + | bodice dress
            narrow shoulder                            | shoulder width                    |                          | - | bodice dress
            square shoulder                            | square shoulder                   |                          | + | bodice dress
            sloping shoulder                           | sloping shoulder                  |                          | + | bodice dress
            forward shoulder                           | forward shoulder                  |                          | + | bodice dress
            shoulder that lies back                    | forward shoulder                  |                          | - | bodice dress
            neck large                                 | neck                              |                          | + | bodice dress
            neck small                                 | neck                              |                          | - | bodice dress
            full neck                                  | full neck                         |                          | + | bodice dress
            hollow, flat or thin chest                 | full or hollow chest              |                          | - | bodice dress
            pigeon or full chest                       | full or hollow chest              |                          | + | bodice dress
            armhole too low                            | armhole height                    |                          | + | bodice dress two
            armhole too high                           | armhole height                    |                          | - | bodice dress two
            gaping neck                                | gaping neck                       |                          | + | bodice dress
            gaping armhole                             | gaping armhole                    |                          | + | bodice dress
            longer below the bust                      | length below the bust             |                          | + | bodice dress
            shorter below the bust                     | length below the bust             |                          | - | bodice dress
            longer above the bust                      | length above the bust             |                          | + | bodice dress two
            shorter above the bust                     | length above the bust             |                          | - | bodice dress two
            front length only, longer                  | front length                      |                          | + | bodice dress
            front length only, shorter                 | front length                      |                          | - | bodice dress
            lowered waist of a dress                   | waist line of a dress             |                          | + | dress
            raised waist of a dress                    | waist line of a dress             |                          | - | dress
            dress longer                               | dress length                      |                          | + | dress
            dress shorter                              | dress length                      |                          | - | dress
            large arm, the whole length                | whole sleeve girth                |                          | + | bodice dress
            large upper arm                            | upper arm girth                   |                          | + | bodice dress
            large upper arm, cap height kept           | upper arm girth                   | keep the cap height      | + | bodice dress
            large upper arm, cross slash               | upper arm girth                   | cross slash              | + | bodice dress
            thin arm                                   | upper arm girth                   |                          | - | bodice dress
            large elbow                                | elbow girth                       |                          | + | bodice dress
            large forearm                              | forearm girth                     |                          | + | bodice dress
            no elbow fullness                          | elbow fullness                    |                          | + | bodice dress
            wrist wider                                | wrist girth                       |                          | + | bodice dress
            wrist narrower                             | wrist girth                       |                          | - | bodice dress
            sleeve longer above the elbow              | sleeve length above the elbow     |                          | + | bodice dress
            sleeve longer below the elbow              | sleeve length below the elbow     |                          | + | bodice dress
            sleeve shorter below the elbow             | sleeve length below the elbow     |                          | - | bodice dress
            cap too low                                | cap height                        |                          | + | bodice dress
            cap too high                               | cap height                        |                          | - | bodice dress
            cap too wide                               | cap ease                          |                          | - | bodice dress
            arm hangs forward                          | cap turn                          |                          | + | bodice dress
            arm hangs back                             | cap turn                          |                          | - | bodice dress
            kimono length, longer                      | kimono length                     |                          | + | kimono
            kimono length, shorter                     | kimono length                     |                          | - | kimono
            raglan length, longer                      | raglan length                     |                          | + | raglan
            raglan length, shorter                     | raglan length                     | below the elbow          | - | raglan
            collar outer edge short                    | collar outer edge                 |                          | + | collar
            collar outer edge long                     | collar outer edge                 |                          | - | collar
            collar neck short                          | collar neck edge                  |                          | + | collar
            collar neck long                           | collar neck edge                  |                          | - | collar
            """;

    static Stream<String[]> rows() {
        return ROWS.lines()
                .map(line -> Stream.of(line.split("\\|")).map(String::strip).toArray(String[]::new));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void everyRowIsDone(String row, String name, String way, String sign, String garments) {
        Entry entry = Repertoire.named(name).orElseThrow(() -> new AssertionError(row + ": no alteration " + name));
        double mm = (sign.equals("-") ? -0.5 : 0.5) * entry.usualMm();
        assertThat(mm > 0 || entry.isBothWays()).as(row).isTrue();
        for (String garment : garments.split(" ")) {
            Pattern pattern = draft(garment);
            assertThat(Repertoire.of(pattern).contains(entry))
                    .as(row + " on " + garment)
                    .isTrue();
            WorkedPattern worked = WorkedPattern.altered(
                    pattern, List.of(new Applied(entry, entry.variant(way).orElseThrow(), mm, Optional.empty())));
            assertThat(worked.altered()).as(row + " on " + garment).isNotEqualTo(pattern);
        }
    }

    @Test
    void oneLowShoulderIsTheSlopingShoulderOfOneSide() {
        Pattern parted = Sides.split(draft("bodice"));
        Applied low = new Applied(
                Repertoire.named("sloping shoulder").orElseThrow(),
                Repertoire.named("sloping shoulder").orElseThrow().variants().get(0),
                6.35,
                Optional.of(Side.LEFT));
        Pattern altered = WorkedPattern.altered(parted, List.of(low)).altered();
        assertThat(altered.piece("bodice front, left")).isNotEqualTo(parted.piece("bodice front, left"));
        assertThat(altered.piece("bodice front, right")).isEqualTo(parted.piece("bodice front, right"));
    }

    @ParameterizedTest
    @CsvSource({"bodice", "dress"})
    void aFrontWithoutASideDartGetsOneFromAFullBust(String garment) {
        // Full bust without an existing dart: the side seam keeps its length, the extra length is in the dart (trade.md
        // 4.3).
        Pattern pattern = withoutSideDart(draft(garment));
        String front = garment + " front";
        WorkedPattern worked = WorkedPattern.altered(
                pattern, List.of(Applied.usual(Repertoire.named("full bust").orElseThrow(), 25.4)));
        assertThat(worked.altered().piece(front).dartsOn("side")).hasSize(1);
        assertThat(worked.altered().piece(front).sewnLength("side"))
                .isCloseTo(pattern.piece(front).sewnLength("side"), within(0.1));
    }

    @Test
    void dressThatWouldBeShortenedToItsHipIsRefusedInOneSentence() {
        Pattern dress = draft("dress");
        Entry length = Repertoire.named("dress length").orElseThrow();
        for (var variant : length.variants()) {
            assertThat(catchThrowable(() -> WorkedPattern.altered(
                            dress, List.of(new Applied(length, variant, -127, Optional.empty())))))
                    .isInstanceOf(AlterationException.class)
                    .hasMessageContaining("take");
        }
    }

    /** The same front, its side closed as if it had never had a dart. */
    private static Pattern withoutSideDart(Pattern pattern) {
        return pattern.withPieces(pattern.pieces().stream()
                .map(piece -> new Piece(
                        piece.name(),
                        piece.kind(),
                        piece.cutCount(),
                        piece.fold(),
                        piece.edges(),
                        piece.darts().stream()
                                .filter(dart -> !(dart instanceof Dart.EdgeDart d
                                        && d.edge().equals("side")))
                                .toList(),
                        piece.notches(),
                        piece.landmarks(),
                        piece.levels(),
                        piece.markings(),
                        piece.grain()))
                .toList());
    }

    private static Pattern draft(String garment) {
        DraftFigure figure = DraftFigure.of(SizeTables.named("misses"), "14");
        DraftEase ease = DraftEase.fitted();
        return switch (garment) {
            case "bodice" -> Shells.bodice(figure, ease);
            case "dress" -> Shells.dress(figure, ease);
            case "princess" -> PanelledShells.princess(figure, ease, INCHES);
            case "two" -> PanelledShells.twoPieceSleeve(figure, ease, INCHES);
            case "kimono" -> SleevedShells.kimono(figure, ease, INCHES);
            case "raglan" -> SleevedShells.raglan(figure, ease, INCHES);
            case "collar" -> Bands.withCollar(Shells.bodice(figure, ease), 76.2);
            default -> throw new IllegalArgumentException(garment);
        };
    }
}
