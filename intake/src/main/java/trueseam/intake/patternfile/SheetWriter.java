package trueseam.intake.patternfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Bounds;

/** Writes a whole pattern: title, what is said of it, and its pieces side by side. Used once. */
final class SheetWriter {

    private static final double MARGIN_MM = 15;
    /** Between pieces, so that their labels can be told apart. */
    private static final double APART_MM = 25;
    /** Above the pieces: title, legend and the square to measure. */
    private static final double HEAD_MM = 75;

    private static final double SQUARE_MM = 50;
    /** The title and the legend must fit beside the square. */
    private static final double LEAST_WIDTH_MM = 420;

    private final Pattern pattern;
    private final Optional<Pattern> original;
    private final SvgText svg = new SvgText();

    SheetWriter(Pattern pattern, Optional<Pattern> original) {
        this.pattern = pattern;
        this.original = original;
    }

    String write() {
        List<PieceWriter> pieces = pattern.pieces().stream().map(this::writer).toList();
        double width = MARGIN_MM;
        double height = 0;
        for (PieceWriter piece : pieces) {
            width += piece.extent().width() + APART_MM;
            height = Math.max(height, piece.extent().height());
        }
        width = Math.ceil(Math.max(width - APART_MM + MARGIN_MM, LEAST_WIDTH_MM));
        height = Math.ceil(HEAD_MM + height + MARGIN_MM);

        svg.raw("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        root(width, height);
        svg.raw(Look.STYLE);
        metadata();
        symbols();
        head();
        double left = MARGIN_MM;
        for (PieceWriter piece : pieces) {
            Bounds extent = piece.extent();
            piece.write(svg, rounded(left - extent.minX()), rounded(HEAD_MM + extent.maxY()));
            left += extent.width() + APART_MM;
        }
        svg.close("svg");
        return svg.toString();
    }

    private PieceWriter writer(Piece piece) {
        Optional<Piece> before = original.flatMap(o -> o.pieces().stream()
                .filter(other -> other.name().equals(piece.name()))
                .findFirst());
        return new PieceWriter(piece, before, pattern.size());
    }

    private static double rounded(double mm) {
        return Math.rint(mm * 100) / 100;
    }

    private void root(double width, double height) {
        SvgText.Tag root = svg.tag("svg")
                .with("xmlns", SvgTree.SVG)
                .with("xmlns:trueseam", SvgTree.OWN_NAMESPACE)
                .with("width", mm(width))
                .with("height", mm(height))
                .with("viewBox", "0 0 " + (long) width + " " + (long) height)
                .with(Words.FORMAT, Words.FORMAT_NOW)
                .with(Words.PATTERN, pattern.name())
                .with(Words.SIZE, pattern.size())
                .with(Words.SIZE_TABLE, pattern.sizeTable())
                .with(Words.SOURCE, pattern.source());
        if (original.isPresent()) {
            root.with("class", "altered");
        }
        root.open();
        svg.tag("title").end(pattern.name());
    }

    private static String mm(double whole) {
        return (long) whole + "mm";
    }

    private void metadata() {
        svg.tag("metadata").open();
        for (Map.Entry<Measure, Double> ease : pattern.easeMm().entrySet()) {
            svg.tag("trueseam:ease")
                    .with(Words.MEASURE, ease.getKey().term())
                    .with(Words.EASE, ease.getValue())
                    .end();
        }
        for (Seam seam : pattern.seams()) {
            svg.tag("trueseam:seam")
                    .with(Words.SEAM, seam.name())
                    .with(Words.EASE, seam.easeMm())
                    .open();
            side("trueseam:first", seam.first());
            side("trueseam:second", seam.second());
            svg.close("trueseam:seam");
        }
        svg.close("metadata");
    }

    private void side(String name, List<EdgeRef> edges) {
        for (EdgeRef ref : edges) {
            svg.tag(name)
                    .with(Words.PIECE, ref.piece())
                    .with(Words.EDGE, ref.edge())
                    .end();
        }
    }

    private void symbols() {
        svg.tag("defs").open();
        svg.tag("marker")
                .with("id", "head")
                .with("viewBox", "0 0 10 10")
                .with("refX", "10")
                .with("refY", "5")
                .with("markerUnits", "userSpaceOnUse")
                .with("markerWidth", "6")
                .with("markerHeight", "6")
                .with("orient", "auto-start-reverse")
                .open();
        svg.tag("path").with("class", "head").with("d", "M0 1 L10 5 L0 9 Z").end();
        svg.close("marker");
        svg.tag("g").with("id", "landmark").open();
        svg.tag("circle").with("r", "4").end();
        svg.tag("path").with("d", "M-6 0 L6 0 M0 -6 L0 6").end();
        svg.close("g");
        svg.close("defs");
    }

    private void head() {
        String size = pattern.size().isEmpty() ? "" : ", size " + pattern.size();
        svg.tag("rect")
                .with("x", MARGIN_MM)
                .with("y", MARGIN_MM)
                .with("width", SQUARE_MM)
                .with("height", SQUARE_MM)
                .end();
        text(MARGIN_MM + SQUARE_MM / 2, MARGIN_MM + SQUARE_MM / 2, "middle", "50 mm by 50 mm");
        double beside = MARGIN_MM + SQUARE_MM + 8;
        text(beside, MARGIN_MM + 9, "name", pattern.name() + size);
        text(beside, MARGIN_MM + 20, "", pattern.source());
        text(beside, MARGIN_MM + 28, "", original.isPresent() ? Look.LEGEND_ALTERED : Look.LEGEND);
    }

    private void text(double x, double y, String look, String words) {
        if (!words.isBlank()) {
            SvgText.Tag tag = svg.tag("text").with("x", x).with("y", y);
            (look.isEmpty() ? tag : tag.with("class", look)).end(SvgText.oneLine(words));
        }
    }
}
