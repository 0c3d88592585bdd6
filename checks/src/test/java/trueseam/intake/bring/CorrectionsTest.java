package trueseam.intake.bring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Point;
import trueseam.intake.bring.BroughtPiece.BroughtEdge;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.namesfile.NamesFile;
import trueseam.intake.patternfile.PatternFile;
import trueseam.intake.said.Corrections;
import trueseam.intake.said.EdgeSaid;
import trueseam.intake.said.LineTaken;
import trueseam.intake.said.MarkSaid;
import trueseam.intake.said.PieceCorrection;
import trueseam.intake.said.SeamSaid;
import trueseam.intake.size.SizeTables;
import trueseam.intake.svg.SvgDrawing;

/** Correcting what was proposed, on drafted pieces of which all that names anything was taken out. */
class CorrectionsTest {

    private static final BringChoices CHOICES = BringChoices.usual(15.875);

    private static Pattern drafted(Garment garment) {
        return garment.draft(DraftFigure.of(SizeTables.named("misses"), "14"), Allowances.inches());
    }

    /** Only lines are left: no words, no names. */
    private static Drawing bare(Pattern pattern) {
        String svg = PatternFile.write(pattern)
                .replaceAll("(?s)<metadata.*?</metadata>", "")
                .replaceAll("(?s)<text.*?</text>", "")
                .replaceAll(" data-[a-z-]+=\"[^\"]*\"", "");
        return SvgDrawing.read("drawing.svg", svg, OptionalDouble.empty());
    }

    private static Drawing bodice() {
        return bare(drafted(Garment.bodice));
    }

    private static Brought brought(Drawing drawing, Corrections said) {
        return Bringing.of(drawing, CHOICES, said);
    }

    private static BroughtPiece piece(Brought brought, PieceKind kind) {
        return brought.pieces().stream()
                .filter(p -> p.kind().value() == kind)
                .findFirst()
                .orElseThrow();
    }

    private static BroughtEdge edge(BroughtPiece piece, String name) {
        return piece.edges().stream()
                .filter(e -> e.name().value().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> names(Piece piece) {
        return piece.edges().stream().map(Edge::name).toList();
    }

    private static List<String> warnings(Brought brought) {
        return brought.findings().stream()
                .map(Finding::sentence)
                .filter(s -> s.contains("does not fit the drawing any more") || s.contains("do not walk"))
                .toList();
    }

    @ParameterizedTest
    @EnumSource(Garment.class)
    void whatIsWrittenAndReadUnchangedGivesTheSamePattern(Garment garment) {
        Drawing drawing = bare(drafted(garment));
        Brought proposed = brought(drawing, Corrections.NONE);
        String text = NamesFile.write("drawing.svg", proposed);
        Brought again = brought(drawing, NamesFile.read("drawing.names.txt", text));
        assertThat(again.corrections().isEmpty()).isTrue();
        assertThat(PatternFile.write(again.pattern())).isEqualTo(PatternFile.write(proposed.pattern()));
        assertThat(again.findings()).isEqualTo(proposed.findings());
        assertThat(NamesFile.write("drawing.svg", again)).isEqualTo(text);
    }

    @Test
    void frontAndBackTakenForEachOtherAreTurnedRoundByTwoWords() {
        Drawing drawing = bodice();
        Brought right = brought(drawing, Corrections.NONE);
        int front = piece(right, PieceKind.BODICE_FRONT).number();
        int back = piece(right, PieceKind.BODICE_BACK).number();
        // The wrong proposal is made by us: front and back are turned round by what is said.
        Corrections wrong = Corrections.NONE
                .with(PieceCorrection.of(front).asKind(PieceKind.BODICE_BACK))
                .with(PieceCorrection.of(back).asKind(PieceKind.BODICE_FRONT));
        Brought turned = brought(drawing, wrong);
        assertThat(names(turned.pieces().get(front - 1).piece().orElseThrow())).contains("centre back");
        // As a person does it: in the file that was written, the two words and nothing else.
        String text = NamesFile.write("drawing.svg", turned)
                .replace("piece " + front + ": bodice back", "piece " + front + ": bodice front")
                .replace("piece " + back + ": bodice front", "piece " + back + ": bodice back")
                .replaceAll("(?m)^  (edge|name|fold): .*$\\R", "")
                .replaceAll("(?m)^seam: .*$\\R", "");
        Brought mended = brought(drawing, NamesFile.read("drawing.names.txt", text));
        assertThat(PatternFile.write(mended.pattern())).isEqualTo(PatternFile.write(right.pattern()));
    }

    @Test
    void changingOnlyTheKindInAFullFileNamesTheEdgesAnew() {
        Drawing drawing = bodice();
        Brought right = brought(drawing, Corrections.NONE);
        BroughtPiece front = piece(right, PieceKind.BODICE_FRONT);
        String text = NamesFile.write("drawing.svg", right)
                .replace("piece " + front.number() + ": bodice front", "piece " + front.number() + ": bodice back");
        Brought other = brought(drawing, NamesFile.read("drawing.names.txt", text));
        BroughtPiece now = other.pieces().get(front.number() - 1);
        assertThat(now.kind()).isEqualTo(Sure.said(PieceKind.BODICE_BACK));
        assertThat(names(now.piece().orElseThrow())).contains("centre back").doesNotContain("centre front");
        assertThat(warnings(other)).isEmpty();
    }

    @Test
    void aPieceWhoseEdgesAreTurnedRoundIsLaidTheOtherWayRound() {
        Drawing drawing = bare(drafted(Garment.skirt));
        Brought right = brought(drawing, Corrections.NONE);
        BroughtPiece front = piece(right, PieceKind.SKIRT_FRONT);
        BroughtEdge hem = edge(front, "hem");
        BroughtEdge waist = edge(front, "waist");
        // Upside down: what was taken for the hem is said to be the waist, and the waist the hem.
        Brought turned = brought(
                drawing,
                Corrections.NONE.with(PieceCorrection.of(front.number())
                        .with(new EdgeSaid("waist", EdgeRole.WAIST, hem.from(), hem.to(), OptionalDouble.empty()))
                        .with(new EdgeSaid("hem", EdgeRole.HEM, waist.from(), waist.to(), OptionalDouble.empty()))));
        BroughtPiece now = turned.pieces().get(front.number() - 1);
        assertThat(now.kind().value().isSkirt()).isTrue();
        assertThat(edge(now, "waist").name()).isEqualTo(Sure.said("waist"));
        assertThat(edge(now, "waist").longMm()).isCloseTo(hem.longMm(), within(1e-6));
        assertThat(edge(now, "hem").longMm()).isCloseTo(waist.longMm(), within(1e-6));
        // It hangs the other way round now: its waist is above its hem.
        Piece piece = now.piece().orElseThrow();
        assertThat(piece.edge("waist").path().bounds().centre().y())
                .isGreaterThan(piece.edge("hem").path().bounds().centre().y() + 300);
    }

    @Test
    void edgesAreJoinedAndPartedWhereItIsSaid() {
        Drawing drawing = bodice();
        Brought right = brought(drawing, Corrections.NONE);
        BroughtPiece front = piece(right, PieceKind.BODICE_FRONT);
        BroughtEdge shoulder = edge(front, "shoulder");
        BroughtEdge neck = edge(front, "neck");
        BroughtEdge armhole = edge(front, "armhole");
        double around = front.edges().stream().mapToDouble(BroughtEdge::longMm).sum();
        // The shoulder goes into the neck, and the lower third of the armhole becomes an edge of its own.
        Piece before = front.piece().orElseThrow();
        Point third = middle(front, before, "armhole", armhole.longMm() / 3);
        Corrections said = Corrections.NONE.with(PieceCorrection.of(front.number())
                .with(new EdgeSaid(
                        "neck",
                        EdgeRole.NECK,
                        shoulder.from(),
                        neck.to(),
                        OptionalDouble.of(shoulder.longMm() + neck.longMm())))
                .with(new EdgeSaid("gusset", EdgeRole.OTHER, armhole.from(), third, OptionalDouble.empty())));
        BroughtPiece now = brought(drawing, said).pieces().get(front.number() - 1);
        assertThat(names(now.piece().orElseThrow())).contains("gusset").doesNotContain("shoulder");
        assertThat(edge(now, "neck").longMm()).isCloseTo(shoulder.longMm() + neck.longMm(), within(1e-6));
        assertThat(edge(now, "gusset").longMm()).isCloseTo(armhole.longMm() / 3, within(0.1));
        assertThat(edge(now, "armhole").longMm()).isCloseTo(2 * armhole.longMm() / 3, within(0.1));
        assertThat(now.edges().stream().mapToDouble(BroughtEdge::longMm).sum()).isCloseTo(around, within(1e-6));
        // The same, kept as text and read again.
        Corrections read = NamesFile.read("kept", NamesFile.write(said));
        assertThat(NamesFile.write(read)).isEqualTo(NamesFile.write(said));
        assertThat(names(brought(drawing, read)
                        .pieces()
                        .get(front.number() - 1)
                        .piece()
                        .orElseThrow()))
                .isEqualTo(names(now.piece().orElseThrow()));
    }

    /** A place on an edge as it is told: by the two ends, which are told, and the way that the piece was laid. */
    private static Point middle(BroughtPiece piece, Piece lying, String name, double mm) {
        var path = lying.edge(name).path();
        Point a = edge(piece, name).from();
        Point b = edge(piece, name).to();
        Point p = path.start();
        Point q = path.end();
        // The drafted bodice is drawn upright: laid and drawn differ by a slide, or by a slide and a turn over.
        boolean over = Math.signum(b.x() - a.x()) != Math.signum(q.x() - p.x());
        Point at = path.pointAt(mm);
        return new Point(a.x() + (over ? -1 : 1) * (at.x() - p.x()), a.y() + at.y() - p.y());
    }

    @Test
    void foldCutCountNameAndLineAreAsSaid() {
        Drawing drawing = bodice();
        BroughtPiece back = piece(brought(drawing, Corrections.NONE), PieceKind.BODICE_BACK);
        Brought other = brought(
                drawing,
                Corrections.NONE.with(PieceCorrection.of(back.number())
                        .onFold("centre back")
                        .cut(1)
                        .called("upper back")));
        BroughtPiece now = other.pieces().get(back.number() - 1);
        assertThat(now.name()).isEqualTo("upper back");
        assertThat(now.piece().orElseThrow().fold()).contains("centre back");
        assertThat(now.piece().orElseThrow().cutCount()).isEqualTo(1);
        assertThat(now.fold()).isEqualTo(Sure.said("centre back"));
        // A curved edge cannot lie on the fold.
        Brought bent = brought(
                drawing, Corrections.NONE.with(PieceCorrection.of(back.number()).onFold("armhole")));
        assertThat(warnings(bent)).singleElement().asString().contains("is not straight");
    }

    @Test
    void aLineSaidToBeTheCuttingLineIsInset() {
        Pattern square = square();
        Drawing drawing = bare(square);
        Brought plain = brought(drawing, Corrections.NONE);
        assertThat(plain.pieces().get(0).line().value()).isEqualTo(LineTaken.STITCHING);
        Brought inset = brought(
                drawing,
                Corrections.NONE.with(PieceCorrection.of(1).drawnAs(LineTaken.CUTTING, OptionalDouble.of(10))));
        Piece piece = inset.pattern().pieces().get(0);
        // 200 by 100 mm less 10 mm all round.
        assertThat(piece.outline().bounds().width()).isCloseTo(180, within(0.02));
        assertThat(piece.outline().bounds().height()).isCloseTo(80, within(0.02));
        assertThat(piece.edges()).allSatisfy(e -> assertThat(e.allowanceMm()).isEqualTo(10));
    }

    private static Pattern square() {
        Drawing drawing = SvgDrawing.read(
                "square.svg",
                "<svg xmlns='http://www.w3.org/2000/svg' width='300mm' height='200mm' viewBox='0 0 300 200'>"
                        + "<path d='M10 10H210V110H10Z'/></svg>",
                OptionalDouble.empty());
        return new Pattern(
                "square",
                "",
                "",
                "",
                List.of(brought(drawing, Corrections.NONE).pattern().pieces().get(0).toBuilder()
                        .edges(brought(drawing, Corrections.NONE).pattern().pieces().get(0).edges().stream()
                                .map(e -> new Edge(e.name(), e.role(), e.path(), 0))
                                .toList())
                        .build()),
                List.of(),
                java.util.Map.of());
    }

    @Test
    void aDartThatIsNoneIsKeptAsALine() {
        Drawing drawing = bodice();
        BroughtPiece front = piece(brought(drawing, Corrections.NONE), PieceKind.BODICE_FRONT);
        BroughtPiece.BroughtMark dart = front.marks().stream()
                .filter(m -> m.what() == MarkSaid.What.DART)
                .findFirst()
                .orElseThrow();
        Brought other = brought(
                drawing,
                Corrections.NONE.with(
                        PieceCorrection.of(front.number()).with(new MarkSaid(MarkSaid.What.DART, dart.at(), false))));
        Piece before = front.piece().orElseThrow();
        Piece now = other.pieces().get(front.number() - 1).piece().orElseThrow();
        assertThat(now.darts()).hasSize(before.darts().size() - 1);
        assertThat(now.markings().size()).isGreaterThan(before.markings().size());
        assertThat(NamesFile.write("drawing.svg", other)).contains("  no dart: ");
    }

    @Test
    void aPieceLeftOutIsNoPieceAndCanBeTakenInAgain() {
        Drawing drawing = bodice();
        Brought right = brought(drawing, Corrections.NONE);
        BroughtPiece sleeve = piece(right, PieceKind.SLEEVE);
        Brought less = brought(
                drawing,
                Corrections.NONE.with(PieceCorrection.of(sleeve.number()).leftOut(true)));
        assertThat(less.pattern().pieces()).hasSize(2);
        assertThat(less.pattern().seams()).noneMatch(s -> s.name().equals("armhole"));
        String text = NamesFile.write("drawing.svg", less);
        assertThat(text).contains("piece " + sleeve.number() + ": left out");
        Brought again = brought(
                drawing,
                NamesFile.read(
                        "n",
                        text.replace("piece " + sleeve.number() + ": left out", "piece " + sleeve.number() + ":")));
        assertThat(again.pattern().pieces()).hasSize(3);
        Corrections none = Corrections.NONE;
        for (BroughtPiece piece : right.pieces()) {
            none = none.with(PieceCorrection.of(piece.number()).leftOut(true));
        }
        Corrections all = none;
        assertThatThrownBy(() -> brought(drawing, all))
                .isInstanceOf(DrawingException.class)
                .hasMessage("drawing.svg: Every piece of it is left out; take one in again.");
    }

    @Test
    void seamsAreSewnOrNotAsSaidAndSaidWithBothLengths() {
        Drawing drawing = bodice();
        Brought right = brought(drawing, Corrections.NONE);
        EdgeRef waist = new EdgeRef("bodice front", "waist");
        EdgeRef wrist = new EdgeRef("sleeve", "wrist");
        EdgeRef side = new EdgeRef("bodice front", "side");
        EdgeRef sideBack = new EdgeRef("bodice back", "side");
        Corrections said = Corrections.NONE
                .with(new SeamSaid("odd", List.of(waist), List.of(wrist), OptionalDouble.empty(), true))
                .with(new SeamSaid("", List.of(side), List.of(sideBack), OptionalDouble.empty(), false));
        Brought other = brought(drawing, said);
        assertThat(right.pattern().seams()).extracting(Seam::name).contains("side");
        assertThat(other.pattern().seams())
                .extracting(Seam::name)
                .contains("odd")
                .doesNotContain("side");
        double off = Math.abs(other.pattern().pieces().stream()
                        .filter(p -> p.name().equals("sleeve"))
                        .findFirst()
                        .orElseThrow()
                        .sewnLength("wrist")
                - piece(right, PieceKind.BODICE_FRONT).piece().orElseThrow().sewnLength("waist"));
        assertThat(warnings(other))
                .singleElement()
                .asString()
                .contains(String.format(java.util.Locale.ROOT, "do not walk by %.1f mm", off));
        assertThat(NamesFile.read("n", NamesFile.write(said))).isEqualTo(said);
    }

    @Test
    void whatFitsTheDrawingNoMoreIsToldInOneSentenceAndNotUsed() {
        Drawing drawing = bodice();
        Brought right = brought(drawing, Corrections.NONE);
        Corrections said = Corrections.NONE
                .with(PieceCorrection.of(9).asKind(PieceKind.SLEEVE))
                .with(PieceCorrection.of(1)
                        .with(new EdgeSaid(
                                "hem", EdgeRole.HEM, new Point(-90, -90), new Point(0, 0), OptionalDouble.empty()))
                        .with(new MarkSaid(MarkSaid.What.NOTCH, new Point(1, 1), false)))
                .with(new SeamSaid(
                        "lost",
                        List.of(new EdgeRef("collar", "neck")),
                        List.of(new EdgeRef("bodice back", "neck")),
                        OptionalDouble.empty(),
                        true));
        Brought other = brought(drawing, said);
        assertThat(warnings(other)).hasSize(4);
        assertThat(warnings(other).toString())
                .contains("no piece of that number (it has 3)")
                .contains("no edge \"hem\" runs from the place -90.0 right, -90.0 up")
                .contains("nothing like one is drawn there")
                .contains("there is no edge collar, neck");
        assertThat(other.pattern().seams()).isEqualTo(right.pattern().seams());
    }

    @Test
    void aPieceThatWasMovedOnItsSheetKeepsWhatIsSaidOfIt() {
        Pattern pattern = drafted(Garment.bodice);
        Drawing drawing = bare(pattern);
        Brought right = brought(drawing, Corrections.NONE);
        BroughtPiece back = piece(right, PieceKind.BODICE_BACK);
        Corrections said = NamesFile.read(
                "n",
                NamesFile.write(
                        "drawing.svg",
                        brought(
                                drawing,
                                Corrections.NONE.with(
                                        PieceCorrection.of(back.number()).called("upper back")))));
        String moved = PatternFile.write(pattern)
                .replaceAll("(?s)<metadata.*?</metadata>", "")
                .replaceAll("(?s)<text.*?</text>", "")
                .replaceAll(" data-[a-z-]+=\"[^\"]*\"", "")
                .replaceFirst("<defs>", "<g transform=\"translate(37 11)\"><defs>")
                .replace("</svg>", "</g></svg>");
        Brought other = brought(SvgDrawing.read("moved.svg", moved, OptionalDouble.empty()), said);
        assertThat(warnings(other)).isEmpty();
        assertThat(other.pattern().pieces()).extracting(Piece::name).contains("upper back");
    }

    @Test
    void goresAreAskedForInPlainWords() {
        Brought brought = brought(bare(drafted(Garment.gored)), Corrections.NONE);
        List<BroughtPiece> asked =
                brought.pieces().stream().filter(p -> !p.ask().isEmpty()).toList();
        assertThat(asked).isNotEmpty();
        assertThat(asked).allSatisfy(p -> {
            assertThat(p.kind().sureness()).isEqualTo(Sureness.CHECK);
            assertThat(p.ask()).startsWith("Front and back of such a piece look alike");
        });
        assertThat(NamesFile.write("gored.svg", brought)).contains("# PLEASE SAY: Front and back of such a piece");
    }

    @Test
    void everyProposalSaysHowSureItIs() {
        Brought brought = brought(bodice(), Corrections.NONE);
        assertThat(brought.pieces()).allSatisfy(p -> {
            assertThat(p.kind().confidence()).isBetween(0.9, 1.0);
            assertThat(p.edges())
                    .allSatisfy(e -> assertThat(e.name().confidence()).isBetween(0.6, 1.0));
            assertThat(p.marks())
                    .allSatisfy(m -> assertThat(m.is().confidence()).isBetween(0.5, 1.0));
        });
        assertThat(brought.seams()).hasSize(4).allSatisfy(s -> {
            assertThat(s.seam().confidence()).isBetween(0.6, 1.0);
            assertThat(s.reason()).isNotEmpty();
        });
    }
}
