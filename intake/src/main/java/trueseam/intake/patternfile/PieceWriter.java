package trueseam.intake.patternfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.flat.Span;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Level;
import trueseam.garment.pattern.Marking;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Bounds;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.convert.Affine;
import trueseam.geometry.convert.PathData;
import trueseam.geometry.convert.Subpath;
import trueseam.geometry.offset.Margin;
import trueseam.geometry.offset.Offset;
import trueseam.geometry.polygon.Region;

/** Writes one piece: what is read back, and what is drawn for the eye. Used once. */
final class PieceWriter {

    /** How true the cutting line is drawn: what others read of it is to be within 0.05 mm. */
    private static final double CUTTING_TOLERANCE_MM = 0.02;

    private static final double NOTCH_MM = 6;
    /** Between the cuts of a double or triple notch: 1/4 in, common practice. */
    private static final double CUTS_APART_MM = 6;

    private static final double LABEL_LINE_MM = 7;
    /** Beside an edge steeper than this a label begins or ends; beside a flatter one it is centred. */
    private static final double STEEP = 0.5;

    private final Piece piece;
    private final Optional<Piece> before;
    private final String size;
    private final Optional<Path> cutting;
    private final Bounds extent;

    PieceWriter(Piece piece, Optional<Piece> before, String size) {
        this.piece = piece;
        this.before = before;
        this.size = size;
        this.cutting = cuttingLine(piece);
        this.extent = extentOf();
    }

    /** The outline with its allowances; nothing for an outline that crosses itself. */
    private static Optional<Path> cuttingLine(Piece piece) {
        if (Region.faultOf(piece.outline(), CUTTING_TOLERANCE_MM).isPresent()) {
            return Optional.empty();
        }
        List<Margin> margins = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            margins.add(new Margin(edge.path(), edge.allowanceMm()));
        }
        try {
            return Optional.of(Offset.outline(margins, CUTTING_TOLERANCE_MM));
        } catch (GeometryException outlineThatCannotBeCut) {
            return Optional.empty();
        }
    }

    private Bounds extentOf() {
        Bounds box = cutting.map(Path::bounds)
                .orElseGet(() -> piece.edges().get(0).path().bounds());
        for (Edge edge : piece.edges()) {
            box = box.with(edge.path().bounds());
        }
        if (before.isPresent()) {
            for (Edge edge : before.get().edges()) {
                box = box.with(edge.path().bounds());
            }
        }
        return box;
    }

    /** What the piece takes up on the sheet, in its own coordinates. */
    Bounds extent() {
        return extent;
    }

    void write(SvgText svg, double dx, double dy) {
        svg.tag("g")
                .with(Words.PIECE, piece.name())
                .with(Words.KIND, piece.kind().word())
                .with(Words.CUT, piece.cutCount())
                .with("transform", "translate(" + PathData.number(dx) + " " + PathData.number(dy) + ")")
                .open();
        underneath(svg);
        piece.edges().forEach(edge -> edge(svg, edge));
        piece.darts().forEach(dart -> dart(svg, dart));
        piece.notches().forEach(notch -> notch(svg, notch));
        piece.landmarks().forEach(landmark -> landmark(svg, landmark));
        piece.levels().forEach(level -> level(svg, level));
        piece.markings().forEach(marking -> marking(svg, marking));
        line(svg, "grain", Words.GRAIN)
                .with("marker-start", "url(#head)")
                .with("marker-end", "url(#head)")
                .with("d", data(Path.through(piece.grain().from(), piece.grain().to())))
                .end();
        labels(svg);
        svg.close("g");
    }

    private static SvgText.Tag line(SvgText svg, String look, String line) {
        return svg.tag("path").with("class", look).with(Words.LINE, line);
    }

    /** The lines that are derived or were, so that the stitching lines lie on top. */
    private void underneath(SvgText svg) {
        before.ifPresent(was -> was.edges().forEach(edge -> line(svg, "original", Words.ORIGINAL)
                .with("d", data(edge.path()))
                .end()));
        cutting.ifPresent(path ->
                line(svg, "cutting", Words.CUTTING).with("d", data(path)).end());
        // Cloth is not cut at the fold: there the cutting line is wiped out.
        piece.fold().ifPresent(fold -> line(svg, "wiped", Words.CUTTING)
                .with("d", data(piece.edge(fold).path()))
                .end());
    }

    private void edge(SvgText svg, Edge edge) {
        boolean onFold = piece.fold().filter(edge.name()::equals).isPresent();
        String line = onFold ? Words.FOLD : Words.STITCHING;
        svg.tag("path")
                .with("class", line)
                .with(Words.EDGE, edge.name())
                .with(Words.ROLE, edge.role().word())
                .with(Words.LINE, line)
                .with(Words.ALLOWANCE, edge.allowanceMm())
                .with("d", data(edge.path()))
                .end();
    }

    private void dart(SvgText svg, Dart dart) {
        SvgText.Tag tag = svg.tag("path").with("class", "dart").with(Words.DART, dart.name());
        if (dart instanceof Dart.EdgeDart d) {
            Path edge = piece.edge(d.edge()).path();
            tag.with(Words.EDGE, d.edge())
                    .with(Words.FROM, d.fromMm())
                    .with(Words.TO, d.toMm())
                    .with("d", data(Path.through(edge.pointAt(d.fromMm()), d.apex(), edge.pointAt(d.toMm()))))
                    .end();
        } else if (dart instanceof Dart.DiamondDart d) {
            tag.with("d", data(Path.through(d.top(), d.left(), d.bottom(), d.right(), d.top())))
                    .end();
        }
    }

    private void notch(SvgText svg, Notch notch) {
        Path edge = piece.edge(notch.edge()).path();
        Point at = edge.pointAt(notch.atMm());
        Vec along = edge.tangentAt(notch.atMm());
        int cuts = notch.kind().cuts();
        StringBuilder data = new StringBuilder();
        for (int i = 0; i < cuts; i++) {
            Point from = at.plus(along.times(CUTS_APART_MM * (i - (cuts - 1) / 2.0)));
            data.append(i == 0 ? "" : " ")
                    .append(data(Path.through(from, from.plus(along.right().times(NOTCH_MM)))));
        }
        svg.tag("path")
                .with("class", "notch")
                .with(Words.NOTCH, notch.kind().word())
                .with(Words.EDGE, notch.edge())
                .with(Words.AT, notch.atMm())
                .with("d", data.toString())
                .end();
    }

    private static void landmark(SvgText svg, Landmark landmark) {
        Point at = Affine.UPSIDE_DOWN.apply(landmark.at());
        svg.tag("use")
                .with("href", "#landmark")
                .with(Words.LANDMARK, landmark.name())
                .with("x", at.x())
                .with("y", at.y())
                .end();
        text(svg, landmark.at().plus(new Vec(8, 2)), "", landmark.name());
    }

    private void level(SvgText svg, Level level) {
        Optional<Span> span = Span.at(piece, level.y());
        double left = span.map(s -> s.left().x()).orElse(extent.minX());
        double right = span.map(s -> s.right().x()).orElse(extent.maxX());
        Path across = Path.through(new Point(left, level.y()), new Point(right, level.y()));
        svg.tag("path")
                .with("class", "level")
                .with(Words.LEVEL, level.name().word())
                .with("d", data(across))
                .end();
        text(
                svg,
                new Point(left + 0.04 * (right - left), level.y() + 1.5),
                "",
                level.name().word());
    }

    private static void marking(SvgText svg, Marking marking) {
        line(svg, "internal", Words.INTERNAL)
                .with(Words.NAME, marking.name())
                .with("d", data(marking.path()))
                .end();
    }

    private void labels(SvgText svg) {
        Point at = extent.centre();
        String cut = "cut " + piece.cutCount() + (piece.fold().isPresent() ? ", on the fold" : "");
        text(svg, at, "middle name", piece.name());
        text(svg, below(at, 1), "middle", (size.isEmpty() ? "" : "size " + size + ", ") + cut);
        piece.edges().forEach(edge -> edgeLabel(svg, edge));
    }

    /** The name of an edge, inside the piece beside its middle. */
    private void edgeLabel(SvgText svg, Edge edge) {
        double half = edge.length() / 2;
        if (!(half > 0)) {
            return;
        }
        Vec inwards = edge.path().tangentAt(half).left();
        String look = inwards.x() < -STEEP ? "toleft" : inwards.x() > STEEP ? "" : "middle";
        boolean onFold = piece.fold().filter(edge.name()::equals).isPresent();
        Point inside = edge.path().pointAt(half).plus(inwards.times(4)).minus(new Vec(0, 1.5));
        text(svg, inside, look, edge.name() + (onFold ? " (fold)" : ""));
    }

    private static Point below(Point at, int lines) {
        return at.minus(new Vec(0, lines * LABEL_LINE_MM));
    }

    private static void text(SvgText svg, Point at, String look, String words) {
        if (words.isBlank()) {
            return;
        }
        SvgText.Tag tag = svg.tag("text").with("x", tenth(at.x())).with("y", tenth(-at.y()));
        (look.isEmpty() ? tag : tag.with("class", look)).end(SvgText.oneLine(words));
    }

    private static double tenth(double mm) {
        return Math.rint(mm * 10) / 10;
    }

    /**
     * Path data, y downwards. Where a stroke begins an ulp beside the end of the last, as strokes of a path may, a new move is
     * written, so that reading gives back both points.
     */
    private static String data(Path path) {
        Path down = Affine.UPSIDE_DOWN.apply(path);
        List<Subpath> parts = new ArrayList<>();
        List<Segment> part = new ArrayList<>();
        for (Segment s : down.segments()) {
            if (!part.isEmpty() && !part.get(part.size() - 1).end().equals(s.start())) {
                parts.add(new Subpath(Path.of(part), false));
                part.clear();
            }
            part.add(s);
        }
        parts.add(new Subpath(Path.of(part), false));
        return PathData.write(parts);
    }
}
