package trueseam.intake.patternfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trueseam.intake.patternfile.Drawing.CENTRE;
import static trueseam.intake.patternfile.Drawing.GRAIN;
import static trueseam.intake.patternfile.Drawing.HEM;
import static trueseam.intake.patternfile.Drawing.OUTLINE;
import static trueseam.intake.patternfile.Drawing.SIDE;
import static trueseam.intake.patternfile.Drawing.WAIST;
import static trueseam.intake.patternfile.Drawing.front;
import static trueseam.intake.patternfile.Drawing.group;
import static trueseam.intake.patternfile.Drawing.rectangleWith;
import static trueseam.intake.patternfile.Drawing.sheet;

import java.util.List;
import org.junit.jupiter.api.Test;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/** What people and their editors do to a file is understood and kept. */
class EditedFileTest {

    private static PatternReading read(String text) {
        return PatternFile.read("skirt.svg", text);
    }

    private static Piece only(PatternReading read) {
        assertThat(read.pattern().pieces()).hasSize(1);
        return read.pattern().pieces().get(0);
    }

    private static Piece clean(String text) {
        PatternReading read = read(text);
        assertThat(read.findings()).isEmpty();
        return only(read);
    }

    private static Finding onlyFinding(PatternReading read) {
        assertThat(read.findings()).hasSize(1);
        return read.findings().get(0);
    }

    @Test
    void aDrawingByHandIsRead() {
        Piece piece = clean(front(OUTLINE + GRAIN));
        assertThat(piece.outline())
                .isEqualTo(Path.through(
                        new Point(0, 0), new Point(100, 0), new Point(100, 200), new Point(0, 200), new Point(0, 0)));
        assertThat(piece.edges())
                .extracting(Edge::role)
                .containsExactly(EdgeRole.HEM, EdgeRole.SIDE, EdgeRole.WAIST, EdgeRole.CENTRE);
        assertThat(piece.edges()).extracting(Edge::allowanceMm).containsExactly(40.0, 15.0, 15.0, 0.0);
        assertThat(piece.fold()).contains("centre front");
    }

    @Test
    void whatOtherProgramsAddIsPassedOver() {
        String text = "<svg xmlns='http://www.w3.org/2000/svg' xmlns:ed='urn:some:editor' ed:version='1' id='svg8'"
                + " width='1133.8583' height='300mm' viewBox='0 0 300 300' data-pattern='skirt'>\n"
                + "<ed:view zoom='2'><ed:page data-piece='not one'/></ed:view><title>t</title><script>x</script>"
                + "<g id='layer1' ed:label='Layer 1'>"
                + group(
                        "data-piece='front' data-kind='skirt front' data-cut='1' style='display:inline' ed:seen='yes'",
                        HEM + SIDE + "<g id='g9'>" + WAIST + "</g>" + CENTRE + GRAIN
                                + "<path id='scribble' d='M0 0 L9 9'/><text>hello</text>"
                                + "<ed:path data-edge='side' d='M0 0'/><image data-x='1'/>")
                + "</g></svg>";
        assertThat(clean(text)).isEqualTo(clean(front(OUTLINE + GRAIN)));
    }

    @Test
    void relativeCommandsAndOtherShapesAreRead() {
        String text = front("<line data-edge='hem' data-allowance='40' x1='0' y1='0' x2='100' y2='0'/>"
                + "<path data-edge='side' data-allowance='15' d='m100,0 v-150 l0,-50'/>"
                + "<polyline data-edge='waist' data-allowance='15' points='100,-200 50,-200 0,-200'/>"
                + CENTRE + GRAIN);
        Piece piece = clean(text);
        assertThat(piece.edge("side").path())
                .isEqualTo(Path.through(new Point(100, 0), new Point(100, 150), new Point(100, 200)));
        assertThat(piece.edge("waist").length()).isEqualTo(100);
    }

    @Test
    void whereAPieceLiesOnTheSheetSaysNothingOfThePiece() {
        Piece there = clean(sheet(group(
                "transform='translate(20, 250)'",
                group(
                        "data-piece='front' data-kind='skirt front' data-cut='1' transform='rotate(30 5 5)'",
                        OUTLINE + GRAIN))));
        assertThat(there).isEqualTo(clean(front(OUTLINE + GRAIN)));
    }

    @Test
    void aLineShiftedWithinItsPieceIsWhereItIsSeen() {
        String moved =
                "<path data-edge='hem' data-allowance='40' transform='translate(0 -10) translate(0,10)' d='M0 0H100'/>"
                        + SIDE
                        + group(
                                "transform='translate(5)'",
                                WAIST.replace("M100", "M95").replace("L0", "L-5"))
                        + CENTRE + GRAIN;
        assertThat(clean(front(moved)).outline())
                .isEqualTo(clean(front(OUTLINE + GRAIN)).outline());
    }

    @Test
    void aLineTurnedWithinItsPieceIsTurned() {
        // A quarter turn clockwise as seen, about (100, 0), of a line that lies to the left: it then points up.
        String turned =
                HEM + "<path data-edge='side' data-allowance='15' transform='rotate(90 100 0)' d='M100 0 L-100 0'/>"
                        + WAIST + CENTRE + GRAIN;
        Piece piece = clean(front(turned));
        assertThat(piece.edge("side").path().end().distanceTo(new Point(100, 200)))
                .isLessThan(1e-9);
        String matrix = turned.replace("rotate(90 100 0)", "matrix(0.0 1 -1.0 0 100 -100)");
        assertThat(clean(front(matrix)).edge("side").path().end().distanceTo(new Point(100, 200)))
                .isLessThan(1e-9);
    }

    @Test
    void aNodeMovedInBothEdgesMovesTheCorner() {
        Piece piece = clean(front(OUTLINE.replace("100 -200", "112.5 -203") + GRAIN));
        assertThat(piece.edge("side").path().end()).isEqualTo(new Point(112.5, 203));
        assertThat(piece.edge("waist").path().start()).isEqualTo(new Point(112.5, 203));
    }

    @Test
    void endsApartByRoundingAreJoined() {
        Piece piece = clean(front(HEM + SIDE.replace("L100 -200", "L100.04 -199.97") + WAIST + CENTRE + GRAIN));
        assertThat(piece.edge("side").path().end()).isEqualTo(new Point(100, 200));
        Piece curved = clean(
                front(HEM + SIDE.replace("L100 -200", "C110 -60 110 -140 100.04 -199.97") + WAIST + CENTRE + GRAIN));
        assertThat(curved.edge("side").path().toString()).isEqualTo("M100.0 0.0 C110.0 60.0 109.96 140.03 100.0 200.0");
    }

    @Test
    void edgesOutOfOrderAndDirectionArePutInOrder() {
        String backwards = "<path data-edge='waist' data-allowance='15' d='M0 -200 L100 -200'/>";
        PatternReading read = read(front(HEM + CENTRE + backwards + SIDE + GRAIN));
        assertThat(onlyFinding(read).severity()).isEqualTo(Severity.NOTE);
        assertThat(onlyFinding(read).sentence()).contains("put in order");
        assertThat(only(read).edges()).extracting(Edge::name).containsExactly("hem", "side", "waist", "centre front");
        assertThat(only(read).outline().signedArea()).isEqualTo(20_000);
    }

    @Test
    void anOutlineDrawnClockwiseIsTurned() {
        String clockwise = "<path data-edge='centre front' data-allowance='0' data-line='fold' d='M0 0 V-200'/>"
                + "<path data-edge='waist' data-allowance='15' d='M0 -200 H100'/>"
                + "<path data-edge='side' data-allowance='15' d='M100 -200 V0'/>"
                + "<path data-edge='hem' data-allowance='40' d='M100 0 H0'/>";
        PatternReading read =
                read(front(clockwise + GRAIN + "<path data-notch='single' data-edge='side' d='M100 -50 h6'/>"));
        assertThat(onlyFinding(read).sentence()).contains("drawn clockwise");
        assertThat(only(read).outline().signedArea()).isEqualTo(20_000);
        assertThat(only(read).notches()).containsExactly(new Notch("side", 50, Notch.Kind.SINGLE));
    }

    private static final String DART =
            "<path data-dart='waist dart' data-edge='waist' data-from='40' data-to='60' d='M60 -200 L50 -120 L40 -200'/>";

    @Test
    void aDartWhoseApexWasMovedKeepsItsLegs() {
        Piece piece = clean(rectangleWith(DART.replace("50 -120", "48 -110")));
        assertThat(piece.darts()).containsExactly(new Dart.EdgeDart("waist dart", "waist", 40, 60, new Point(48, 110)));
    }

    @Test
    void aLegMovedInTheDrawingMovesTheDart() {
        PatternReading read = read(rectangleWith(DART.replace("L40 -200", "L35 -200")));
        assertThat(onlyFinding(read).severity()).isEqualTo(Severity.NOTE);
        assertThat(onlyFinding(read).sentence())
                .isEqualTo("It was moved in the drawing: 65.0 mm along edge \"waist\" instead of 60.0 mm.");
        assertThat(only(read).darts())
                .containsExactly(new Dart.EdgeDart("waist dart", "waist", 40, 65, new Point(50, 120)));
    }

    @Test
    void aDartDrawnByHandFindsItsPlace() {
        Piece piece = clean(
                rectangleWith("<path data-dart='waist dart' data-edge='waist' d='M40 -200 L50 -120 L60 -200 Z'/>"));
        assertThat(piece.darts()).containsExactly(new Dart.EdgeDart("waist dart", "waist", 40, 60, new Point(50, 120)));
    }

    @Test
    void aNotchIsInTheMiddleOfItsCuts() {
        Piece piece = clean(rectangleWith("<path data-notch='double' data-edge='side' d='M100 -40 h6 M100 -46 h6'/>"
                + "<path data-notch='triple' data-edge='hem' data-at='25.5'/>"
                + "<circle data-notch='single' data-edge='waist' cx='70' cy='-200' r='1'/>"));
        assertThat(piece.notches())
                .containsExactly(
                        new Notch("side", 43, Notch.Kind.DOUBLE),
                        new Notch("hem", 25.5, Notch.Kind.TRIPLE),
                        new Notch("waist", 30, Notch.Kind.SINGLE));
    }

    @Test
    void aNotchBesideItsEdgeIsPutOnItWithAWarning() {
        PatternReading read =
                read(rectangleWith("<path data-notch='single' data-edge='side' data-at='50' d='M103 -70 h6'/>"));
        assertThat(onlyFinding(read).severity()).isEqualTo(Severity.WARNING);
        assertThat(onlyFinding(read).sentence()).contains("drawn 3.0 mm beside edge \"side\"");
        assertThat(only(read).notches()).containsExactly(new Notch("side", 70, Notch.Kind.SINGLE));
    }

    @Test
    void landmarksAreUsesCirclesOrPathsThatBeginThere() {
        Piece piece = clean(rectangleWith("<use data-landmark='a' href='#x' x='10' y='-20'/>"
                + "<circle data-landmark='b' cx='30' cy='-40' r='2' transform='translate(1 1)'/>"
                + "<path data-landmark='c' d='M50 -60 h1'/>"));
        assertThat(piece.landmarks())
                .containsExactly(
                        new Landmark("a", new Point(10, 20)),
                        new Landmark("b", new Point(31, 39)),
                        new Landmark("c", new Point(50, 60)));
    }

    @Test
    void oneBadThingOnAPieceDoesNotLoseThePattern() {
        PatternReading read = read(rectangleWith("""
                <path data-notch='quadruple' data-edge='side' data-at='5'/>
                <path data-notch='single' data-edge='sleeve' data-at='5'/>
                <path data-notch='single' data-edge='side' data-at='five' d='M100 -5 h6'/>
                <path data-dart='d' data-edge='waist' d='M0 0 L5 5'/>
                <path data-level='belly' d='M0 -50 H100'/>
                <path data-level='hip' d='M0 -50 L100 -51'/>
                <path data-landmark='x'/>
                <path data-line='grain' d='M20 -20 V-180'/>
                <path data-line='wavy' d='M20 -20 V-180'/>
                <path data-line='internal' data-name='pocket' d='M10 oops'/>
                """));
        assertThat(only(read).darts()).isEmpty();
        assertThat(only(read).notches()).isEmpty();
        assertThat(only(read).levels()).isEmpty();
        assertThat(only(read).markings()).isEmpty();
        assertThat(read.hasFailures()).isTrue();
        assertThat(read.findings()).hasSize(10);
        assertThat(read.findings()).extracting(Finding::place).allSatisfy(place -> assertThat(place)
                .startsWith("skirt.svg, line "));
        assertThat(read.findings()).extracting(Finding::sentence).anySatisfy(s -> assertThat(s)
                .isEqualTo("data-edge is \"sleeve\"; expected one of the edges of the piece: hem, side, waist,"
                        + " centre front. It was left out."));
    }

    @Test
    void whatIsMissingIsSaidAndNotGuessedInSilence() {
        PatternReading read = PatternFile.read(
                "mine.svg",
                "<svg xmlns='http://www.w3.org/2000/svg'>"
                        + group(
                                "data-piece='pocket'",
                                OUTLINE.replace(" data-allowance='40'", "").replace("'waist'", "'upper end'"))
                        + "</svg>");
        assertThat(read.findings())
                .extracting(Finding::sentence)
                .satisfiesExactlyInAnyOrder(
                        s -> assertThat(s).contains("no width and height in mm"),
                        s -> assertThat(s).contains("no data-pattern"),
                        s -> assertThat(s).contains("no data-kind"),
                        s -> assertThat(s).contains("no data-cut"),
                        s -> assertThat(s).contains("no data-allowance; 0 mm is taken"),
                        s -> assertThat(s).contains("no data-role and its name tells none"),
                        s -> assertThat(s).contains("no grainline"));
        assertThat(read.pattern().name()).isEqualTo("mine.svg");
        assertThat(only(read).edge("upper end").role()).isEqualTo(EdgeRole.OTHER);
        assertThat(only(read).grain().from().x()).isCloseTo(50, within(1e-12));
    }

    @Test
    void aRoleIsTakenFromTheNameWhereItIsNotGiven() {
        assertThat(RoleOfName.of("centre front")).contains(EdgeRole.CENTRE);
        assertThat(RoleOfName.of("Cap back")).contains(EdgeRole.CAP);
        assertThat(RoleOfName.of("side seam, lower")).contains(EdgeRole.SIDE);
        assertThat(RoleOfName.of("underarm front")).contains(EdgeRole.UNDERARM);
        assertThat(RoleOfName.of("inside")).isEmpty();
    }

    @Test
    void seamsThatNameWhatIsNotThereAreLeftOutWithAFinding() {
        String seams = "<metadata xmlns:t='urn:trueseam:pattern'>"
                + "<t:seam data-seam='good' data-ease='1'><t:first data-piece='front' data-edge='side'/>"
                + "<t:second data-piece='front' data-edge='waist'/></t:seam>"
                + "<t:seam data-seam='lost' data-ease='1'><t:first data-piece='front' data-edge='side'/>"
                + "<t:second data-piece='back' data-edge='side'/></t:seam>"
                + "<t:seam data-seam='half' data-ease='1'><t:first data-piece='front' data-edge='side'/></t:seam>"
                + "<t:ease data-measure='bust girth' data-ease='50'/><t:ease data-measure='tail' data-ease='5'/>"
                + "</metadata>";
        PatternReading read =
                read(sheet(seams + group("data-piece='front' data-kind='skirt front' data-cut='1'", OUTLINE + GRAIN)));
        assertThat(read.pattern().seams()).extracting(s -> s.name()).containsExactly("good");
        assertThat(read.pattern().easeMm()).hasSize(1);
        assertThat(read.findings()).extracting(Finding::severity).containsOnly(Severity.FAILURE);
        assertThat(List.copyOf(read.findings())).hasSize(3);
    }
}
