package trueseam.intake.nest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.convert.Affine;
import trueseam.geometry.offset.Offset;
import trueseam.intake.size.SizeTables;

/**
 * A nest drawn of drafted garments, laid on one another as trade nests are (common practice): at the centre and the bust line, skirts at the
 * centre and the hip line, sleeves at the crown and the upper arm line, trousers at the grain and the crotch line.
 */
final class NestDrawing {

    /** By what its sizes are told apart. */
    enum By {
        LAYER,
        COLOUR,
        DASH,
        LOOK,
        NESTING
    }

    /** What names them. */
    enum Named {
        SAMPLES,
        COLOURED_WORDS,
        ROW,
        NUMBERS,
        NOTHING
    }

    private static final double APART_MM = 60;

    private static final List<String> COLOURS =
            List.of("#c00000", "#00a000", "#0000c0", "#c000c0", "#00a0a0", "#806000", "#ff8000", "#404040");
    private static final List<String> DASHES = List.of("none", "8 2", "4 2", "2 2", "8 2 2 2", "12 3", "6 1", "1 1");

    private final Map<String, Pattern> drafted = new LinkedHashMap<>();
    private final Map<String, Vec> laid = new LinkedHashMap<>();
    private final List<String> sizes;
    private final By by;
    private final Named named;
    private final boolean shared;
    private final double allowanceMm;
    private final StringBuilder text = new StringBuilder();
    private boolean atUnderarm;

    /** The same, upper pieces laid together at the underarm point instead of the centre. */
    NestDrawing atUnderarm() {
        atUnderarm = true;
        return this;
    }

    NestDrawing(Garment garment, List<String> sizes, By by, Named named, boolean shared, double allowanceMm) {
        this.sizes = sizes;
        this.by = by;
        this.named = named;
        this.shared = shared;
        this.allowanceMm = allowanceMm;
        for (String size : sizes) {
            drafted.put(size, garment.draft(DraftFigure.of(SizeTables.named("misses"), size), Allowances.inches()));
        }
        layOut();
    }

    Pattern drafted(String size) {
        return drafted.get(size);
    }

    /** Beside each other, with room for the largest. */
    private void layOut() {
        Pattern largest = drafted.get(sizes.get(sizes.size() - 1));
        double x = 100;
        for (Piece piece : largest.pieces()) {
            var bounds = piece.outline().bounds();
            laid.put(piece.name(), new Vec(x - bounds.minX(), -zero(piece)));
            x += bounds.width() + APART_MM;
        }
    }

    /** The height at which the sizes of a piece are laid together. */
    private static double zero(Piece piece) {
        if (piece.kind().isUpper()) {
            return piece.level(LevelName.BUST).orElse(0);
        }
        return piece.kind().isSkirt() ? piece.level(LevelName.HIP).orElse(0) : 0;
    }

    Motion place(String size, Piece piece) {
        Piece largest = drafted.get(sizes.get(sizes.size() - 1)).piece(piece.name());
        Vec at = laid.get(piece.name());
        Vec slid = new Vec(at.x(), at.y() + zero(largest) - zero(piece));
        if (atUnderarm && piece.kind().isUpper()) {
            slid = new Vec(at.x(), at.y()).plus(underarm(largest).minus(underarm(piece)));
        }
        return Motion.slide(slid);
    }

    private static Point underarm(Piece piece) {
        return piece.firstOf(EdgeRole.ARMHOLE).orElseThrow().path().start();
    }

    String svg() {
        text.setLength(0);
        text.append("<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:i=\"urn:example:editor\" width=\"3000mm\""
                + " height=\"2400mm\" viewBox=\"0 -1200 3000 2400\">\n");
        for (int i = 0; i < sizes.size(); i++) {
            String style = "fill=\"none\" stroke-width=\"0.5\" stroke=\"" + colour(i) + "\" stroke-dasharray=\""
                    + dash(i) + "\"";
            text.append(by == By.LAYER ? "<g id=\"layer" + i + "\" i:label=\"Size " + sizes.get(i) + "\" " : "<g ")
                    .append(style)
                    .append(">\n");
            for (Piece piece : drafted.get(sizes.get(i)).pieces()) {
                size(piece, place(sizes.get(i), piece));
            }
            text.append("</g>\n");
        }
        common();
        legend();
        return text.append("</svg>\n").toString();
    }

    private String colour(int i) {
        return by == By.COLOUR ? COLOURS.get(i) : by == By.LOOK ? COLOURS.get(i % 2) : "#000000";
    }

    private String dash(int i) {
        return by == By.DASH ? DASHES.get(i) : by == By.LOOK ? DASHES.get(i / 2) : "none";
    }

    private boolean isShared(Edge edge) {
        return shared
                && edge.role() == EdgeRole.CENTRE
                && edge.length()
                        < 1e-6 + edge.path().start().distanceTo(edge.path().end());
    }

    private void size(Piece piece, Motion place) {
        Optional<Edge> once = piece.edges().stream().filter(this::isShared).findFirst();
        List<Segment> line = new ArrayList<>();
        int first = once.map(e -> piece.indexOf(e.name()) + 1).orElse(0);
        int n = piece.edges().size();
        for (int i = 0; i < n - (once.isPresent() ? 1 : 0); i++) {
            line.addAll(piece.edges().get((first + i) % n).path().segments());
        }
        path(Path.of(line).moved(place));
        if (allowanceMm > 0) {
            path(Offset.of(piece.outline(), allowanceMm, 0.01).moved(place));
        }
        for (Dart dart : piece.darts()) {
            if (dart instanceof Dart.EdgeDart d) {
                Path on = piece.edge(d.edge()).path();
                path(Path.through(on.pointAt(d.fromMm()), d.apex(), on.pointAt(d.toMm()))
                        .moved(place));
            }
        }
    }

    /** Drawn once in black for all sizes: the grain, words, and, where they are shared, the centres. */
    private void common() {
        text.append("<g fill=\"none\" stroke=\"#111111\" stroke-width=\"0.8\">\n");
        for (Piece piece : drafted.get(sizes.get(0)).pieces()) {
            Motion place = place(sizes.get(0), piece);
            path(Path.through(piece.grain().from(), piece.grain().to()).moved(place));
            piece.edges().stream().filter(this::isShared).forEach(edge -> {
                double low = Double.POSITIVE_INFINITY;
                double high = Double.NEGATIVE_INFINITY;
                double x = 0;
                for (String size : sizes) {
                    Piece one = drafted.get(size).piece(piece.name());
                    var bounds =
                            one.edge(edge.name()).path().moved(place(size, one)).bounds();
                    low = Math.min(low, bounds.minY());
                    high = Math.max(high, bounds.maxY());
                    x = bounds.minX();
                }
                path(Path.through(new Point(x, low), new Point(x, high)));
            });
        }
        text.append("</g>\n");
        for (Piece piece : drafted.get(sizes.get(0)).pieces()) {
            Point at = place(sizes.get(0), piece).apply(piece.outline().bounds().centre());
            word(piece.kind().word(), at, 9, "#111111");
            word(piece.fold().isPresent() ? "cut 1 on fold" : "cut 2", new Point(at.x(), at.y() - 15), 6, "#111111");
        }
    }

    private void legend() {
        if (named == Named.ROW) {
            word("Sizes " + String.join(" ", sizes), new Point(100, 1000), 8, "#111111");
        }
        for (int i = 0; i < sizes.size(); i++) {
            Point at = new Point(160, 1000 - 15 * i);
            if (named == Named.SAMPLES) {
                word("Size " + sizes.get(i), at, 8, "#111111");
                text.append(String.format(
                        Locale.ROOT,
                        "<path d=\"M110 %f h40\" fill=\"none\" stroke-width=\"0.5\" stroke=\"%s\" stroke-dasharray=\"%s\"/>\n",
                        -at.y() - 3,
                        colour(i),
                        dash(i)));
            } else if (named == Named.COLOURED_WORDS) {
                word(sizes.get(i), at, 8, colour(i));
            } else if (named == Named.NUMBERS) {
                numbers(i);
            }
        }
    }

    /** A small number on each line, at the middle of the side. */
    private void numbers(int i) {
        for (Piece piece : drafted.get(sizes.get(i)).pieces()) {
            piece.edges().stream()
                    .filter(e -> e.role() == EdgeRole.SIDE || e.role() == EdgeRole.UNDERARM)
                    .forEach(e -> {
                        Point p = place(sizes.get(i), piece).apply(e.path().pointAt(e.length() * (0.3 + 0.05 * i)));
                        word(sizes.get(i), new Point(p.x() - 1, p.y() - 0.7), 2, "#111111");
                    });
        }
    }

    private void path(Path path) {
        text.append("<path d=\"")
                .append(new Affine(1, 0, 0, -1, 0, 0).apply(path))
                .append("\"/>\n");
    }

    private void word(String word, Point at, double height, String colour) {
        text.append(String.format(
                Locale.ROOT,
                "<text x=\"%f\" y=\"%f\" font-size=\"%f\" fill=\"%s\">%s</text>\n",
                at.x(),
                -at.y(),
                height,
                colour,
                word));
    }

    trueseam.intake.drawing.Drawing drawing() {
        return trueseam.intake.svg.SvgDrawing.read("nest.svg", svg(), OptionalDouble.empty());
    }
}
