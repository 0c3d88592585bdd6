package trueseam.intake.patternfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Marking;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;

/** Whatever a pattern holds, writing and reading it gives it back to the last bit; the seed is the test's argument. */
class PatternFilePropertiesTest {

    private static final String[] NAMES = {
        "side",
        "a & b",
        "<g>",
        "\"quoted\"",
        "two\nlines",
        "tab\there",
        " blanks  ",
        "½ é 縫 𝄞",
        "]]>",
        "'",
        "&#65;",
        "-->"
    };

    static Stream<Long> seeds() {
        return LongStream.rangeClosed(1, 100).boxed();
    }

    private static <T> T any(T[] choices, Random random) {
        return choices[random.nextInt(choices.length)];
    }

    private static String name(Random random, int i) {
        return any(NAMES, random) + i;
    }

    /** Numbers with all their bits, round ones, tiny ones, and those of inches. */
    private static double number(Random random, double most) {
        return switch (random.nextInt(5)) {
            case 0 -> Math.rint(random.nextDouble() * most);
            case 1 -> random.nextDouble() * 1e-9;
            case 2 -> 0.0;
            case 3 -> Math.rint(random.nextDouble() * most / 25.4 * 16) / 16 * 25.4;
            default -> random.nextDouble() * most;
        };
    }

    private static Point near(Point p, Random random, double mm) {
        return p.plus(new Vec((random.nextDouble() - 0.5) * mm, (random.nextDouble() - 0.5) * mm));
    }

    private static Path wavy(Point from, Point to, Random random) {
        List<Segment> strokes = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        double reach = from.distanceTo(to) / 8;
        Point at = from;
        for (int i = 1; i <= count; i++) {
            Point end = i == count ? to : near(from.towards(to, (double) i / count), random, reach);
            // Sometimes a stroke begins a rounding beside the end of the last, as the law of paths allows.
            Point start = i > 1 && random.nextInt(4) == 0 ? near(at, random, 5e-7) : at;
            strokes.add(
                    random.nextBoolean()
                            ? new Line(start, end)
                            : new Cubic(
                                    start,
                                    near(start.towards(end, 0.3), random, reach),
                                    near(start.towards(end, 0.7), random, reach),
                                    end));
            at = end;
        }
        return Path.of(strokes);
    }

    private static Piece piece(Random random, int index) {
        PieceBuilder piece =
                new PieceBuilder(name(random, index), any(PieceKind.values(), random)).cut(1 + random.nextInt(4));
        int corners = 3 + random.nextInt(6);
        double size = Math.pow(10, 1 + 3 * random.nextDouble());
        Point centre = new Point((random.nextDouble() - 0.5) * 2000, (random.nextDouble() - 0.5) * 2000);
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.5 * random.nextDouble()) / corners;
            ring.add(centre.plus(Vec.atAngle(angle).times(size * (0.6 + 0.4 * random.nextDouble()))));
        }
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            Point from = random.nextInt(4) == 0 ? near(ring.get(i), random, 5e-7) : ring.get(i);
            Path path = wavy(from, ring.get((i + 1) % corners), random);
            edges.add(new Edge(name(random, i), any(EdgeRole.values(), random), path, number(random, 190)));
        }
        piece.edges(edges);
        if (random.nextBoolean()) {
            piece.onFold(edges.get(random.nextInt(corners)).name());
        }
        for (int i = 0; i < random.nextInt(4); i++) {
            Edge edge = edges.get(random.nextInt(corners));
            double from = random.nextDouble() * 0.5 * edge.length();
            double to = from + (0.01 + random.nextDouble() * 0.4) * edge.length();
            piece.dart(
                    random.nextInt(3) == 0
                            ? new Dart.DiamondDart(
                                    name(random, i),
                                    near(centre, random, size),
                                    near(centre, random, size),
                                    near(centre, random, size),
                                    near(centre, random, size))
                            : new Dart.EdgeDart(name(random, i), edge.name(), from, to, near(centre, random, size)));
        }
        for (int i = 0; i < random.nextInt(4); i++) {
            Edge edge = edges.get(random.nextInt(corners));
            double[] places = {0, edge.length(), random.nextDouble() * edge.length()};
            piece.notch(edge.name(), places[random.nextInt(3)], any(Notch.Kind.values(), random));
            piece.landmark(name(random, i), near(centre, random, size));
            piece.marking(new Marking(name(random, i), wavy(near(centre, random, 10), ring.get(0), random)));
        }
        LevelName[] levels = LevelName.values();
        for (int i = random.nextInt(4); i < levels.length; i += 4) {
            piece.level(levels[i], centre.y() + (random.nextDouble() - 0.5) * 3 * size);
        }
        Point low = near(centre, random, size);
        return piece.grain(new Grain(low, low.plus(new Vec(number(random, 5), 1.5 + number(random, 300)))))
                .build();
    }

    private static Pattern pattern(Random random) {
        List<Piece> pieces = new ArrayList<>();
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            pieces.add(piece(random, i));
        }
        List<Seam> seams = new ArrayList<>();
        for (int i = 0; i < random.nextInt(5); i++) {
            seams.add(new Seam(name(random, i), side(pieces, random), side(pieces, random), number(random, 50) - 20));
        }
        Map<Measure, Double> ease = new EnumMap<>(Measure.class);
        for (int i = 0; i < random.nextInt(5); i++) {
            ease.put(any(Measure.values(), random), number(random, 200) - 50);
        }
        return new Pattern(
                any(NAMES, random),
                random.nextBoolean() ? "" : any(NAMES, random),
                any(NAMES, random),
                any(NAMES, random),
                pieces,
                seams,
                ease);
    }

    private static List<EdgeRef> side(List<Piece> pieces, Random random) {
        List<EdgeRef> side = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            Piece piece = pieces.get(random.nextInt(pieces.size()));
            Edge edge = piece.edges().get(random.nextInt(piece.edges().size()));
            side.add(new EdgeRef(piece.name(), edge.name()));
        }
        return side;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatIsWrittenReadsBackToTheLastBit(long seed) {
        Pattern pattern = pattern(new Random(seed));
        String text = PatternFile.write(pattern);
        PatternReading read = PatternFile.read("any.svg", text);
        assertThat(read.findings()).isEmpty();
        assertThat(read.pattern()).isEqualTo(pattern);
        assertThat(PatternFile.write(read.pattern())).isEqualTo(text);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theOriginalShownUnderneathIsNotReadBack(long seed) {
        Random random = new Random(seed);
        Pattern pattern = pattern(random);
        Pattern other = pattern(random);
        String text = PatternFile.write(pattern, Optional.of(other));
        assertThat(PatternFile.read("any.svg", text).pattern()).isEqualTo(pattern);
    }

    /** A file with letters changed, taken out and doubled, or cut short: read, or refused in words, never worse. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aSpoiltFileIsReadWithFindingsOrRefusedInWords(long seed) {
        Random random = new Random(seed);
        String text = PatternFile.write(Blocks.pattern());
        for (int round = 0; round < 10; round++) {
            try {
                PatternReading read = PatternFile.read("any.svg", spoil(text, random));
                assertThat(read.pattern().pieces()).isNotEmpty();
                read.findings().forEach(finding -> assertThat(finding.place()).startsWith("any.svg, line "));
            } catch (PatternFileException e) {
                assertThat(e.getMessage()).startsWith("any.svg").endsWith(".").doesNotContain("\n");
            }
        }
    }

    private static String spoil(String text, Random random) {
        StringBuilder spoilt = new StringBuilder(text);
        int slips = 1 + random.nextInt(4);
        for (int i = 0; i < slips; i++) {
            int at = random.nextInt(spoilt.length());
            switch (random.nextInt(5)) {
                case 0 -> spoilt.deleteCharAt(at);
                case 1 -> spoilt.insert(at, spoilt.charAt(at));
                case 2 -> spoilt.setCharAt(at, (char) (random.nextInt(96) + 31));
                case 3 -> spoilt.delete(at, Math.min(spoilt.length(), at + random.nextInt(60)));
                default -> spoilt.setLength(random.nextInt(20) == 0 ? Math.max(1, at) : spoilt.length());
            }
        }
        return spoilt.toString();
    }
}
