package trueseam.intake.naming;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.convert.Mirror;

/** How often a proposal is right, on drafted pieces of every size and style, turned and mirrored at random. */
class NamingTest {

    private static final Naming NAMING = Naming.usual();

    /** How a piece comes before us: nothing of it is named. */
    private record Lain(List<Path> edges, Outline outline) {}

    private record Tally(int edges, int right, Map<String, Integer> wrong) {

        double share() {
            return 100.0 * right / edges;
        }
    }

    private static Lain lain(Piece piece, Random random, double noiseMm, boolean darts) {
        Motion turn = Motion.pivot(Point.ORIGIN, random.nextDouble() * 2 * Math.PI);
        boolean mirrored = random.nextBoolean();
        List<Path> edges = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            edges.add(laid(edge.path(), mirrored, turn));
        }
        if (noiseMm > 0) {
            edges = disturbed(edges, random, noiseMm);
        }
        Path line = edges.get(0);
        for (int i = 1; i < edges.size(); i++) {
            line = line.then(edges.get(i));
        }
        List<Path> inside = new ArrayList<>();
        inside.add(laid(Path.through(piece.grain().from(), piece.grain().to()), mirrored, turn));
        for (Dart dart : piece.darts()) {
            if (darts && dart instanceof Dart.EdgeDart d) {
                Path on = piece.edge(d.edge()).path();
                inside.add(laid(Path.through(on.pointAt(d.fromMm()), d.apex(), on.pointAt(d.toMm())), mirrored, turn));
            }
        }
        return new Lain(edges, new Outline(line, inside, List.of()));
    }

    private static Path laid(Path path, boolean mirrored, Motion turn) {
        return (mirrored ? Mirror.of(path) : path).moved(turn);
    }

    /** Every point of a line drawn as many short ones moved at random, as a shaky hand or a coarse scan would. */
    private static List<Path> disturbed(List<Path> edges, Random random, double noiseMm) {
        List<List<Point>> all = new ArrayList<>();
        for (Path edge : edges) {
            List<Point> points = new ArrayList<>();
            for (Point p : edge.flattened(0.3)) {
                points.add(new Point(
                        p.x() + noiseMm * (random.nextDouble() - 0.5), p.y() + noiseMm * (random.nextDouble() - 0.5)));
            }
            all.add(points);
        }
        List<Path> disturbed = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            List<Point> points = all.get(i);
            points.set(points.size() - 1, all.get((i + 1) % all.size()).get(0));
            disturbed.add(Path.through(points.toArray(new Point[0])));
        }
        return disturbed;
    }

    private static Tally tally(int every, double noiseMm, boolean darts) {
        Random random = new Random(20261126);
        int edges = 0;
        int right = 0;
        Map<String, Integer> wrong = new TreeMap<>();
        List<Pattern> patterns = DraftedShapes.patterns();
        for (int i = 0; i < patterns.size(); i += every) {
            for (Piece piece : patterns.get(i).pieces()) {
                Lain lain = lain(piece, random, noiseMm, darts);
                Optional<Proposal> proposal = NAMING.propose(lain.outline());
                for (int k = 0; k < piece.edges().size(); k++) {
                    edges++;
                    Edge edge = piece.edges().get(k);
                    if (proposal.isPresent() && isNamed(edge, lain.edges().get(k), proposal.get())) {
                        right++;
                    } else {
                        wrong.merge(piece.kind().word() + ", " + edge.name(), 1, Integer::sum);
                    }
                }
            }
        }
        return new Tally(edges, right, wrong);
    }

    /** The proposal says of the place where the edge's middle lies that it is an edge of this role. */
    private static boolean isNamed(Edge edge, Path drawn, Proposal proposal) {
        Point middle = drawn.pointAt(drawn.length() / 2);
        Point upright = proposal.turn().apply(proposal.mirrored() ? Mirror.of(middle) : middle);
        return proposal.edges().stream()
                .filter(e -> e.path().nearest(upright).point().isNear(upright, 1))
                .anyMatch(e -> e.role() == edge.role());
    }

    private static void report(String what, Tally tally) throws IOException {
        String line = String.format(
                Locale.ROOT,
                "%s: %d of %d edges, %.2f %%; wrong: %s%n",
                what,
                tally.right,
                tally.edges,
                tally.share(),
                tally.wrong);
        java.nio.file.Path folder = java.nio.file.Path.of("target", "naming");
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(what.replace(' ', '-') + ".txt"), line);
    }

    @Test
    void ofCleanPiecesWithDarts99OfAHundredEdgesAreNamedRight() throws IOException {
        Tally tally = tally(1, 0, true);
        report("clean with darts", tally);
        assertThat(tally.edges()).isGreaterThan(4000);
        assertThat(tally.share()).isGreaterThanOrEqualTo(99);
    }

    @Test
    void ofCleanPiecesWithoutDarts99OfAHundredEdgesAreNamedRight() throws IOException {
        Tally tally = tally(3, 0, false);
        report("clean without darts", tally);
        assertThat(tally.share()).isGreaterThanOrEqualTo(99);
    }

    @Test
    void ofDisturbedPieces95OfAHundredEdgesAreNamedRight() throws IOException {
        Tally tally = tally(3, 0.8, true);
        report("disturbed", tally);
        assertThat(tally.share()).isGreaterThanOrEqualTo(95);
    }

    @Test
    void theTablesSayWhatDraftedPiecesLookLike() throws IOException {
        DraftedShapes shapes = new DraftedShapes();
        java.nio.file.Path folder =
                java.nio.file.Path.of("..", "intake", "src", "main", "resources", "trueseam", "intake", "naming");
        assertThat(Files.readString(folder.resolve("edge-shapes.csv"))).isEqualTo(shapes.edgeTable());
        assertThat(Files.readString(folder.resolve("piece-shapes.csv"))).isEqualTo(shapes.pieceTable());
    }

    @Test
    void whatIsWrittenDecidesBetweenPiecesThatLookAlike() {
        Pattern gored = DraftedShapes.patterns().stream()
                .filter(p -> p.pieces().stream().anyMatch(x -> x.kind().word().equals("skirt side front")))
                .findFirst()
                .orElseThrow();
        for (Piece piece : gored.pieces()) {
            Lain lain = lain(piece, new Random(7), 0, true);
            Outline written = new Outline(
                    lain.outline().line(),
                    lain.outline().inside(),
                    List.of(piece.kind().word()));
            assertThat(NAMING.propose(written).orElseThrow().kind())
                    .as(piece.name())
                    .isEqualTo(piece.kind());
        }
    }
}
