package trueseam.output.strips;

import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.fitting.alteration.HemChoice;
import trueseam.fitting.alteration.LengthAtLine;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.alteration.SideGirth;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.Until;
import trueseam.fitting.work.Chapter;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.polygon.Region;
import trueseam.output.Fits;
import trueseam.output.PdfText;
import trueseam.output.print.Paper;
import trueseam.output.print.PrintOptions;
import trueseam.output.print.Samples;
import trueseam.output.print.Scan;
import trueseam.output.print.Words;
import trueseam.output.words.RulerLength;

class TapeOnStripsTest {

    private static final LengthFormat INCHES = LengthFormat.inches(8);
    private static final FitResult FIT = Fits.fit(INCHES);

    private static PrintOptions on(Paper paper) {
        return PrintOptions.usual(paper, INCHES, "Anna");
    }

    private static FitResult with(WorkedPattern worked) {
        return new FitResult(
                FIT.body(),
                FIT.kind(),
                FIT.size(),
                FIT.choices(),
                FIT.needs(),
                FIT.changes(),
                FIT.amounts(),
                worked,
                FIT.report(),
                FIT.findings(),
                FIT.schematic());
    }

    static Stream<WorkedPattern> worked() {
        return Stream.of(
                FIT.worked(), Fits.trousers(INCHES).worked(), Samples.bodice(), Samples.skirt(), shorterAndWider());
    }

    /** Both legs shorter, the sides wider, so that tucks, additions and what is cut away come together. */
    private static WorkedPattern shorterAndWider() {
        return WorkedPattern.altered(
                Fits.trousers(INCHES).worked().original(),
                List.of(
                        new LengthAtLine(
                                "leg",
                                LevelName.ABOVE_KNEE,
                                Set.of(PieceKind.TROUSER_FRONT, PieceKind.TROUSER_BACK),
                                -25.4),
                        new SideGirth(0, 20, -24, HemChoice.CARRIED)));
    }

    private static List<Cutting.Strip> strips(WorkedPattern worked) {
        return TapeOnStrips.strips(with(worked), new RulerLength(INCHES), 176, 271);
    }

    /** With scissors and tape: the parted tissue, and what is taped on, less what is cut away, is the altered piece. */
    @ParameterizedTest
    @MethodSource("worked")
    void tissueAndStripsTogetherAreTheAlteredPiece(WorkedPattern worked) {
        List<Cutting.Strip> strips = strips(worked);
        assertThat(strips).allMatch(s -> s.bounds().width() <= 176 && s.bounds().height() <= 271);
        for (AlteredPiece piece : worked.pieces()) {
            String name = piece.now().name();
            Region made = PartedTissue.of(
                            CuttingLine.of(piece.original()), LengthChange.of(worked, name), new RulerLength(INCHES))
                    .region();
            for (Cutting.Strip strip : strips) {
                Sliver sliver = strip.sliver();
                if (sliver.piece().equals(name) && sliver.kind() == StripKind.TAPE_ON) {
                    made = made.union(sliver.area());
                } else if (sliver.piece().equals(name) && sliver.kind() == StripKind.CUT_AWAY) {
                    made = made.difference(sliver.area());
                }
            }
            Path wanted = CuttingLine.of(piece.now());
            // Slivers thinner than the lines of the tissue (0.3 mm) are left out; along all of the outline they would
            // be more.
            double left = made.symmetricDifference(Region.within(wanted, 0.01)).areaMm2();
            assertThat(left).as(name).isLessThan(0.05 * wanted.length());
            // Green's theorem on the curves themselves, with no overlay and no chords.
            assertThat(made.areaMm2()).as(name).isCloseTo(wanted.signedArea(), within(0.05 * wanted.length()));
        }
    }

    /** Three quarters of an inch at the bodice length line: one strip a piece, 19.05 mm high, as wide as the piece there. */
    @Test
    void aLongerPieceIsOneInsertAsHighAsTheAmountAndAsWideAsThePiece() {
        Pattern bodice = Fits.pattern();
        WorkedPattern worked =
                WorkedPattern.of(bodice).then("longer", longer(bodice, LevelName.BODICE_LENGTH, 19.05), false);
        List<Sliver> inserts = strips(worked).stream()
                .map(Cutting.Strip::sliver)
                .filter(s -> s.kind() == StripKind.INSERT)
                .toList();
        assertThat(inserts).extracting(Sliver::piece).containsExactly("bodice front", "bodice back");
        for (Sliver insert : inserts) {
            Piece before = bodice.piece(insert.piece());
            double y = before.level(LevelName.BODICE_LENGTH).orElseThrow();
            List<Double> x = CuttingLine.of(before).crossings(new Point(0, y), new Vec(1, 0)).stream()
                    .map(c -> c.point().x())
                    .sorted()
                    .toList();
            double width = x.get(x.size() - 1) - x.get(0);
            Bounds box = insert.area().outlines().get(0).bounds();
            assertThat(box.height()).isCloseTo(19.05, within(1e-6));
            assertThat(box.width()).isCloseTo(width, within(0.05));
            assertThat(insert.area().areaMm2()).isCloseTo(19.05 * width, within(1.0));
            assertThat(insert.place()).contains("insert at the bodice length line: 3/4 in longer");
        }
        // What remains to do is at the side seams, where the halves are joined again; nothing runs round the lower
        // half.
        assertThat(strips(worked).stream().map(Cutting.Strip::sliver).filter(s -> s.kind() != StripKind.INSERT))
                .allMatch(s -> s.place().endsWith(", side"))
                .allMatch(s -> s.area().areaMm2() < 1000);
    }

    private static List<PieceWork> longer(Pattern pattern, LevelName line, double mm) {
        Set<PieceKind> kinds = pattern.pieces().stream()
                .map(Piece::kind)
                .filter(k -> k != PieceKind.SLEEVE)
                .collect(toSet());
        return new LengthAtLine("length", line, kinds, mm).work(pattern);
    }

    /** To shorten by N a tuck N/2 deep is folded (a costume construction text, ch. 17; trade facts, section 6, no. 22). */
    @Test
    void aShorterPieceIsATuckHalfAsDeepAsTheAmount() {
        Pattern skirt = Samples.skirt().original();
        WorkedPattern worked =
                WorkedPattern.of(skirt).then("shorter", longer(skirt, LevelName.SKIRT_LENGTH, -31.75), false);
        List<Sliver> tucks = strips(worked).stream()
                .map(Cutting.Strip::sliver)
                .filter(s -> s.kind() == StripKind.FOLD_OUT)
                .toList();
        assertThat(tucks).extracting(Sliver::piece).containsExactly("skirt front", "skirt back");
        for (Sliver tuck : tucks) {
            Bounds box = tuck.area().outlines().get(0).bounds();
            assertThat(box.height()).isCloseTo(31.75, within(1e-6));
            assertThat(box.maxY())
                    .isCloseTo(
                            skirt.piece(tuck.piece())
                                    .level(LevelName.SKIRT_LENGTH)
                                    .orElseThrow(),
                            within(1e-6));
            assertThat(tuck.place())
                    .contains("fold out at the skirt length line: 1 1/4 in shorter, a tuck 5/8 in deep");
        }
    }

    /** On the rendered page the dashed lines of the first insert stand 19.05 mm apart, and the strip reaches 10 mm further. */
    @Test
    void thePrintedInsertMeasuresTheAmount() throws IOException {
        Pattern bodice = Fits.pattern();
        WorkedPattern worked =
                WorkedPattern.of(bodice).then("longer", longer(bodice, LevelName.BODICE_LENGTH, 19.05), false);
        try (PDDocument read = Loader.loadPDF(TapeOnStrips.pdf(with(worked), on(Paper.A4)))) {
            Words.Word ring = Words.of(read, 1).stream()
                    .filter(w -> w.text().equals("1"))
                    .findFirst()
                    .orElseThrow();
            Scan scan = Scan.of(read, 1, new Bounds(0, 0, 210, 297), 300);
            // Dashes are 4 mm with gaps of 2 mm, so a line is seen at most levels; the median over many is taken.
            List<Double> inner = new ArrayList<>();
            List<Double> outer = new ArrayList<>();
            for (double up = 12; up < 60; up += 0.7) {
                List<Scan.Dark> dark =
                        scan.along(new Point(ring.at().x() - 45, ring.at().y() + up), new Vec(1, 0), 90).stream()
                                .filter(d -> d.lengthMm() < 1)
                                .toList();
                for (int i = 0; i + 3 < dark.size(); i++) {
                    double whole = dark.get(i + 3).middleMm() - dark.get(i).middleMm();
                    if (Math.abs(whole - 39.05) < 1) {
                        inner.add(dark.get(i + 2).middleMm() - dark.get(i + 1).middleMm());
                        outer.add(whole);
                    }
                }
            }
            assertThat(inner).hasSizeGreaterThan(10);
            inner.sort(null);
            outer.sort(null);
            assertThat(inner.get(inner.size() / 2)).isCloseTo(19.05, within(0.05));
            assertThat(outer.get(outer.size() / 2)).isCloseTo(39.05, within(0.05));
        }
    }

    @Test
    void theTestSquareMeasuresFiftyMillimetres() throws IOException {
        for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
            try (PDDocument read = Loader.loadPDF(TapeOnStrips.pdf(FIT, on(paper)))) {
                Point words = Words.of(read, 0).stream()
                        .filter(w -> w.text().equals("50 mm"))
                        .findFirst()
                        .orElseThrow()
                        .at();
                Bounds around = new Bounds(words.x(), words.y(), words.x(), words.y()).grown(45);
                Scan scan = Scan.of(read, 0, around, 600);
                Point from = words.plus(new Vec(5, 12));
                double across = scan.firstLine(from, new Vec(-1, 0), 42) + scan.firstLine(from, new Vec(1, 0), 42);
                assertThat(across).isCloseTo(50, within(0.05));
            }
        }
    }

    @Test
    void thePrintSaysWhatToDoWithEachStrip() {
        byte[] pdf = TapeOnStrips.pdf(FIT, on(Paper.A4));
        assertThat(PdfText.of(pdf)).contains("50 mm", "2 in", "trial garment", "flame safety");
        // The reader finds blanks between the letters of upright lines, so all blanks are left out.
        assertThat(PdfText.of(pdf).replace(" ", ""))
                .contains("bodicefront,insertatthebodicelengthline:3/4inlonger")
                .contains("bodicefront,side", "tapeon:dashedlinetotheedgeofthetissue")
                .contains("join1");
        assertThat(TapeOnStrips.pdf(FIT, on(Paper.A0))).isEqualTo(pdf);
    }

    @Test
    void aPatternThatStaysGivesOnePageThatSaysSo() {
        FitResult same = with(WorkedPattern.of(FIT.worked().original()));
        byte[] pdf = TapeOnStrips.pdf(same, on(Paper.LETTER));
        assertThat(PdfText.pages(pdf)).isEqualTo(1);
        assertThat(PdfText.of(pdf)).contains("Nothing changes");
    }

    @Test
    void draftedPiecesThatOnlyShowTheStepsGiveNoStrips() {
        byte[] pdf = TapeOnStrips.pdf(Fits.onPaper(INCHES), on(Paper.A4));
        assertThat(PdfText.pages(pdf)).isEqualTo(1);
        assertThat(PdfText.of(pdf)).contains("no digital pattern");
    }

    @Test
    void aPieceThatIsCutOpenInsideSaysThatItsStripsAreTheOutlineOnly() {
        Piece front = Fits.pattern().piece("bodice front");
        Spot hinge = new Spot(new Point(90, 180), "bust point");
        Chapter opened = new Chapter(
                "full bust", front, front, List.of(new Step.Spread(hinge, new Until.GrainUpright())), false);
        WorkedPattern worked = FIT.worked();
        List<Chapter> chapters = new ArrayList<>(worked.chapters());
        chapters.add(opened);
        FitResult fit = with(new WorkedPattern(
                worked.original(),
                worked.altered(),
                worked.pieces(),
                chapters,
                worked.levels(),
                worked.capEaseAsked(),
                worked.bandEaseMm()));
        assertThat(PdfText.of(TapeOnStrips.pdf(fit, on(Paper.A4))))
                .contains("The bodice front is cut open and spread inside.");
        assertThat(PdfText.of(TapeOnStrips.pdf(FIT, on(Paper.A4)))).doesNotContain("cut open and spread");
    }
}
