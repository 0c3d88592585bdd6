package trueseam.output.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.garment.finding.Severity;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.intake.apparel.ApparelNotch;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.dxf.Dxf;
import trueseam.intake.dxf.DxfReading;
import trueseam.output.print.Samples;

/** What is written reads back as the same pieces. Demo patterns: drafted, their figures invented. */
class ApparelDxfTest {

    private static final double SAME_MM = 0.05;

    static Stream<Named<Pattern>> patterns() {
        return Stream.of(Samples.bodice(), Samples.skirt())
                .flatMap(worked -> Stream.of(
                        Named.of(worked.original().name() + " as drafted", worked.original()),
                        Named.of(
                                worked.original().name() + " altered",
                                worked.original()
                                        .withPieces(worked.pieces().stream()
                                                .map(AlteredPiece::now)
                                                .toList()))));
    }

    private static DxfReading read(Pattern pattern) {
        return Dxf.read("x.dxf", ApparelDxf.write(pattern).getBytes(StandardCharsets.US_ASCII), Optional.empty());
    }

    private static void same(Path read, Path meant, String what) {
        for (Path[] pair : new Path[][] {{read, meant}, {meant, read}}) {
            double length = pair[0].length();
            for (int i = 0; i < 300; i++) {
                Point p = pair[0].pointAt(length * i / 300);
                assertThat(pair[1].nearest(p).point().distanceTo(p)).as(what).isLessThan(SAME_MM);
            }
        }
        assertThat(read.length()).as(what).isCloseTo(meant.length(), within(SAME_MM));
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void everyPieceReadsBack(Pattern pattern) {
        DxfReading reading = read(pattern);
        assertThat(reading.drawing().findings()).allMatch(f -> f.severity() == Severity.NOTE);
        assertThat(reading.unit().mm()).isEqualTo(1);
        assertThat(reading.apparel().style()).containsEntry("style name", pattern.name());
        List<ApparelPiece> pieces = reading.apparel().pieces();
        assertThat(pieces).hasSameSizeAs(pattern.pieces());
        for (int i = 0; i < pieces.size(); i++) {
            Piece meant = pattern.pieces().get(i);
            ApparelPiece piece = pieces.get(i);
            assertThat(piece.name()).isEqualTo(meant.name());
            assertThat(piece.size()).isEqualTo(pattern.size());
            assertThat(piece.cutCount()).isEqualTo(meant.cutCount());
            same(piece.boundary(), CuttingLine.of(meant), meant.name() + ", cutting line");
            same(piece.sewing().orElseThrow(), meant.outline(), meant.name() + ", stitching line");
            assertThat(piece.grain()).hasValueSatisfying(grain -> {
                assertThat(grain.from().isNear(meant.grain().from(), 1e-4)).isTrue();
                assertThat(grain.to().isNear(meant.grain().to(), 1e-4)).isTrue();
            });
            notches(piece, meant);
            fold(piece, meant);
        }
    }

    private static void notches(ApparelPiece piece, Piece meant) {
        int cuts = meant.notches().stream().mapToInt(n -> n.kind().cuts()).sum();
        assertThat(piece.notches()).hasSize(cuts).allSatisfy(n -> assertThat(n.offMm())
                .isLessThan(SAME_MM));
        assertThat(piece.notches()).extracting(ApparelNotch::kind).containsOnly(ApparelNotch.Kind.PLAIN);
        meant.notches().stream().filter(n -> n.kind().cuts() == 1).forEach(notch -> {
            Edge edge = meant.edge(notch.edge());
            Point cut = edge.path()
                    .pointAt(notch.atMm())
                    .plus(edge.path().tangentAt(notch.atMm()).right().times(edge.allowanceMm()));
            assertThat(piece.notches())
                    .anySatisfy(n -> assertThat(n.at().distanceTo(cut)).isLessThan(SAME_MM));
        });
    }

    private static void fold(ApparelPiece piece, Piece meant) {
        assertThat(piece.mirrorLine().isPresent()).isEqualTo(meant.fold().isPresent());
        meant.fold().ifPresent(name -> {
            Path line = piece.mirrorLine().orElseThrow();
            for (Point end : List.of(
                    meant.edge(name).path().start(), meant.edge(name).path().end())) {
                assertThat(line.nearest(end).point().distanceTo(end)).isLessThan(SAME_MM);
            }
            for (Point end : List.of(line.start(), line.end())) {
                assertThat(piece.boundary().nearest(end).point().distanceTo(end))
                        .isLessThan(SAME_MM);
            }
        });
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void dartsAndLevelsAreLinesThatAreNotCut(Pattern pattern) {
        List<ApparelPiece> pieces = read(pattern).apparel().pieces();
        for (int i = 0; i < pieces.size(); i++) {
            Piece meant = pattern.pieces().get(i);
            int crosses = 2 * meant.landmarks().size();
            assertThat(pieces.get(i).internalLines())
                    .hasSize(meant.darts().size()
                            + meant.levels().size()
                            + meant.markings().size()
                            + crosses);
            assertThat(pieces.get(i).cutOuts()).isEmpty();
            assertThat(pieces.get(i).drillHoles()).isEmpty();
            assertThat(pieces.get(i).texts())
                    .containsAll(meant.darts().stream().map(d -> d.name()).toList());
        }
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void cornersOfTheCuttingLineAreTurnPoints(Pattern pattern) {
        List<ApparelPiece> pieces = read(pattern).apparel().pieces();
        for (int i = 0; i < pieces.size(); i++) {
            Path cutting = CuttingLine.of(pattern.pieces().get(i));
            List<Point> sharp = new ArrayList<>();
            List<Segment> strokes =
                    cutting.segments().stream().filter(s -> s.length() > 0.1).toList();
            for (int k = 0; k < strokes.size(); k++) {
                Segment before = strokes.get(k == 0 ? strokes.size() - 1 : k - 1);
                if (Math.abs(before.tangent(1).angleTo(strokes.get(k).tangent(0))) > Math.toRadians(30)) {
                    sharp.add(strokes.get(k).start());
                }
            }
            List<Point> corners = pieces.get(i).corners();
            assertThat(sharp).hasSizeGreaterThan(2).allSatisfy(p -> assertThat(corners)
                    .anySatisfy(c -> assertThat(c.distanceTo(p)).isLessThan(SAME_MM)));
        }
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void curvesReadBackAsCurvesAndStraightLinesAsLines(Pattern pattern) {
        ApparelPiece piece = read(pattern).apparel().pieces().get(0);
        Piece meant = pattern.pieces().get(0);
        // The direction along a seam matters where seams meet; chords would be off by degrees.
        Path sewing = piece.sewing().orElseThrow();
        for (Edge edge : meant.edges()) {
            double middle = edge.length() / 2;
            Vec meantDirection = edge.path().tangentAt(middle);
            Vec direction =
                    sewing.tangentAt(sewing.nearest(edge.path().pointAt(middle)).alongMm());
            assertThat(Math.abs(direction.cross(meantDirection)))
                    .as(edge.name())
                    .isLessThan(Math.toRadians(0.3));
        }
    }

    @Test
    void theFileIsPlainReleaseTwelve() {
        String text = ApparelDxf.write(Samples.bodice().original());
        assertThat(text).matches("(?s)[ -~\\r\\n]*").endsWith("  0\r\nEOF\r\n").doesNotContain("TABLES", "LWPOLYLINE");
        assertThat(text.split("\\r\\nBLOCK\\r\\n", -1))
                .hasSize(Samples.bodice().original().pieces().size() + 1);
    }

    @Test
    void piecesLieBesideEachOtherOnTheSheet() {
        List<Stroke> strokes = read(Samples.bodice().original()).drawing().strokes();
        List<Stroke> boundaries =
                strokes.stream().filter(s -> s.layer().endsWith("/1")).toList();
        for (int i = 1; i < boundaries.size(); i++) {
            assertThat(boundaries.get(i).path().bounds().minX())
                    .isGreaterThan(boundaries.get(i - 1).path().bounds().maxX());
        }
    }

    @Test
    void lettersThatReleaseTwelveDoesNotHaveAreWrittenPlain() {
        assertThat(DxfText.ascii("\u00c4rmel, gr\u00f6\u00dfer \u2013 c\u00f4t\u00e9\n2"))
                .isEqualTo("Armel, grosser ? cote 2");
    }

    @Test
    void aPieceWhoseOutlineCrossesItselfIsRefusedByName() {
        Pattern pattern = Samples.skirt().original();
        Piece piece = pattern.pieces().get(0);
        Motion away = Motion.slide(new Vec(0, 3000));
        List<Edge> edges = new ArrayList<>(piece.edges());
        Edge first = edges.get(0);
        Edge second = edges.get(1);
        Point out = away.apply(first.path().end()).plus(new Vec(-900, 0));
        edges.set(
                0,
                first.withPath(Path.through(first.path().start(), first.path().end(), out)));
        edges.set(1, second.withPath(Path.through(out, second.path().end())));
        Piece crossing = piece.toBuilder()
                .edges(edges)
                .notches(List.of())
                .darts(List.of())
                .build();
        assertThat(CuttingLine.find(crossing)).isEmpty();
        assertThatThrownBy(() -> ApparelDxf.write(pattern.withPieces(List.of(crossing))))
                .isInstanceOf(CrossingOutlineException.class)
                .hasMessageStartingWith(piece.name());
    }

    @Test
    void aFileIsKeptToBeLookedAt() throws IOException {
        java.nio.file.Path folder = Files.createDirectories(java.nio.file.Path.of("target"));
        java.nio.file.Path file = folder.resolve("bodice.dxf");
        Files.writeString(file, ApparelDxf.write(Samples.bodice().original()));
        assertThat(Dxf.read("bodice.dxf", Files.readAllBytes(file), Optional.empty())
                        .apparel()
                        .sizes())
                .hasSize(1);
    }
}
