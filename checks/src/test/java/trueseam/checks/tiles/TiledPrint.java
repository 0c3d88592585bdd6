package trueseam.checks.tiles;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.util.Matrix;
import trueseam.geometry.Bounds;
import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.intake.drawing.Stroke;

/** Prints lines over pages in a style, with the reference library. */
final class TiledPrint {

    private static final float POINT = 72 / 25.4f;

    private final TileStyle style;
    private final List<Stroke> lines;
    private final Bounds all;
    private final PDDocument document = new PDDocument();

    private record Tile(int row, int column, Bounds shown) {}

    private TiledPrint(TileStyle style, List<Stroke> lines) {
        this.style = style;
        this.lines = lines;
        // A little room, so that no line lies on the outermost edge.
        this.all = Drawn.bounds(lines).grown(7.3);
    }

    static byte[] of(TileStyle style, List<Stroke> lines) throws IOException {
        return new TiledPrint(style, lines).pdf();
    }

    /** The same with every page moved by another amount over the drawing, so that no line goes on. */
    static byte[] scattered(TileStyle style, List<Stroke> lines, Random random) throws IOException {
        TiledPrint print = new TiledPrint(style, lines);
        try (print.document) {
            List<Tile> tiles = print.tiles();
            for (int i = 0; i < tiles.size(); i++) {
                Bounds b = tiles.get(i).shown;
                double x = 150 * random.nextDouble() - 75;
                double y = 150 * random.nextDouble() - 75;
                Bounds moved = new Bounds(b.minX() + x, b.minY() + y, b.maxX() + x, b.maxY() + y);
                print.page(new Tile(tiles.get(i).row, tiles.get(i).column, moved), i + 1, tiles.size());
            }
            return print.saved();
        }
    }

    private byte[] saved() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }

    private byte[] pdf() throws IOException {
        try (document) {
            if (style.cover()) {
                cover();
            }
            List<Tile> tiles = tiles();
            int count = tiles.size();
            for (int i = 0; i < count; i++) {
                if (!style.blanksLeftOut() || !isBlank(tiles.get(i))) {
                    page(tiles.get(i), i + 1, count);
                }
            }
            return saved();
        }
    }

    private List<Tile> tiles() {
        double w = style.wide() - 2 * style.margin();
        double h = style.high() - 2 * style.margin();
        int columns = (int) Math.ceil((all.width() - style.overlap()) / style.stepRight());
        int rows = (int) Math.ceil((all.height() - style.overlap()) / style.stepDown());
        List<Tile> tiles = new ArrayList<>();
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                double x = all.minX() + c * style.stepRight();
                double y = all.maxY() - r * style.stepDown();
                tiles.add(new Tile(r, c, new Bounds(x, y - h, x + w, y)));
            }
        }
        tiles.sort(
                style.byRow()
                        ? Comparator.comparingInt(Tile::row).thenComparingInt(Tile::column)
                        : Comparator.comparingInt(Tile::column).thenComparingInt(Tile::row));
        return tiles;
    }

    private boolean isBlank(Tile tile) {
        return lines.stream().allMatch(l -> inside(l.path(), tile.shown).isEmpty());
    }

    private PDPageContentStream begin() throws IOException {
        boolean turned = style.quarters() % 2 == 1;
        float w = (float) style.wide() * POINT;
        float h = (float) style.high() * POINT;
        PDPage page = new PDPage(turned ? new PDRectangle(h, w) : new PDRectangle(w, h));
        page.setRotation(90 * style.quarters());
        document.addPage(page);
        PDPageContentStream content = new PDPageContentStream(document, page);
        if (turned) {
            content.transform(new Matrix(0, 1, -1, 0, h, 0)); // drawn turned back, so that it is upright when looked at
        }
        return content;
    }

    private void page(Tile tile, int number, int count) throws IOException {
        try (PDPageContentStream content = begin()) {
            double m = style.margin();
            Bounds frame = new Bounds(m, m, style.wide() - m, style.high() - m);
            Vec shift = new Vec(m - tile.shown.minX(), m - tile.shown.minY());
            content.saveGraphicsState();
            if (!style.cut()) {
                rectangle(content, frame);
                content.clip();
            }
            for (Stroke line : lines) {
                pen(content, line);
                for (Path part : style.cut() ? inside(line.path(), tile.shown) : List.of(line.path())) {
                    trace(content, part.moved(trueseam.geometry.Motion.slide(shift)), 1);
                }
            }
            content.restoreGraphicsState();
            furnish(content, tile, frame, number, count);
        }
    }

    private void furnish(PDPageContentStream content, Tile tile, Bounds frame, int number, int count)
            throws IOException {
        content.setStrokingColor(Color.GRAY);
        content.setLineWidth(0.2f * POINT);
        content.setLineDashPattern(new float[0], 0);
        if (style.frame()) {
            rectangle(content, frame);
            content.stroke();
        }
        double half = style.overlap() / 2;
        for (Point at : List.of(
                new Point(frame.minX() + half, frame.centre().y()),
                new Point(frame.maxX() - half, frame.centre().y()),
                new Point(frame.centre().x(), frame.minY() + half),
                new Point(frame.centre().x(), frame.maxY() - half))) {
            mark(content, frame, at, tile);
        }
        String label =
                switch (style.label()) {
                    case NONE -> "";
                    case LETTER_ROW -> "" + (char) ('A' + tile.row) + (tile.column + 1);
                    case LETTER_COLUMN -> (tile.row + 1) + "" + (char) ('A' + tile.column);
                    case PAIR -> (tile.row + 1) + "-" + (tile.column + 1);
                    case WORDS -> "row " + (tile.row + 1) + " col " + (tile.column + 1);
                    case COUNTED -> "Page " + number + " of " + count;
                };
        write(content, label, frame.minX() + 22, frame.minY() + 6, 14);
        write(content, "A made-up garment", frame.minX() + 22, frame.maxY() - 9, 8);
    }

    private void mark(PDPageContentStream content, Bounds frame, Point at, Tile tile) throws IOException {
        double size = 3;
        switch (style.marks()) {
            case NONE -> {}
            case HALF_DIAMONDS -> {
                // The half that lies within the frame.
                List<Point> corners = new ArrayList<>();
                for (Vec v : List.of(new Vec(size, 0), new Vec(0, size), new Vec(-size, 0), new Vec(0, -size))) {
                    Point p = at.plus(v);
                    if (frame.grown(0.001).meets(Bounds.of(p, p), 0)) {
                        corners.add(p);
                    }
                }
                content.moveTo(x(corners.get(0)), y(corners.get(0)));
                for (Point p : corners.subList(1, corners.size())) {
                    content.lineTo(x(p), y(p));
                }
                content.closePath();
                content.setNonStrokingColor(Color.BLACK);
                content.fill();
            }
            case CROSSES -> {
                content.moveTo(x(at.minus(new Vec(size, 0))), y(at));
                content.lineTo(x(at.plus(new Vec(size, 0))), y(at));
                content.stroke();
                content.moveTo(x(at), y(at.minus(new Vec(0, size))));
                content.lineTo(x(at), y(at.plus(new Vec(0, size))));
                content.stroke();
            }
            case NUMBERED_CIRCLES -> {
                trace(
                        content,
                        trueseam.geometry.convert.PathData.read(circle(at, size))
                                .get(0)
                                .path(),
                        1);
                boolean upright = Math.abs(at.y() - frame.centre().y()) < 1e-6;
                int before = at.x() < frame.centre().x() - 1 ? 1 : 0;
                int above = at.y() > frame.centre().y() + 1 ? 1 : 0;
                String number = upright
                        ? (tile.row + 1) + "" + (char) ('a' + tile.column - before)
                        : (tile.row + 11 - above) + "" + (char) ('a' + tile.column);
                write(content, number, at.x() + 4, at.y() + 1, 7);
            }
        }
    }

    private static String circle(Point at, double r) {
        return "M" + (at.x() - r) + " " + at.y() + "a" + r + " " + r + " 0 1 1 " + 2 * r + " 0a" + r + " " + r
                + " 0 1 1 " + -2 * r + " 0z";
    }

    private void cover() throws IOException {
        try (PDPageContentStream content = begin()) {
            write(content, "A made-up garment", 20, style.high() - 40, 30);
            write(content, "Print at 100 per cent, tape the pages together, and cut a trial garment.", 20, 150, 10);
            for (Stroke line : lines) {
                pen(content, line);
                Path path =
                        line.path().moved(trueseam.geometry.Motion.slide(new Vec(300 - all.minX(), 300 - all.minY())));
                trace(content, path, 0.1f);
            }
        }
    }

    private static void pen(PDPageContentStream content, Stroke line) throws IOException {
        content.setStrokingColor(Color.decode(line.look().colour()));
        content.setLineWidth((float) line.look().widthMm() * POINT);
        float[] dashes = new float[line.look().dashMm().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = line.look().dashMm().get(i).floatValue() * POINT;
        }
        content.setLineDashPattern(dashes, 0);
    }

    private static void trace(PDPageContentStream content, Path path, float factor) throws IOException {
        float f = factor;
        content.moveTo(f * x(path.start()), f * y(path.start()));
        for (Segment s : path.segments()) {
            if (s instanceof Cubic c) {
                content.curveTo(
                        f * x(c.handle1()),
                        f * y(c.handle1()),
                        f * x(c.handle2()),
                        f * y(c.handle2()),
                        f * x(c.end()),
                        f * y(c.end()));
            } else {
                content.lineTo(f * x(s.end()), f * y(s.end()));
            }
        }
        if (path.isClosed()) {
            content.closePath();
        }
        content.stroke();
    }

    private static void rectangle(PDPageContentStream content, Bounds b) throws IOException {
        content.addRect(
                (float) b.minX() * POINT,
                (float) b.minY() * POINT,
                (float) b.width() * POINT,
                (float) b.height() * POINT);
    }

    private static void write(PDPageContentStream content, String text, double x, double y, int size)
            throws IOException {
        if (!text.isEmpty()) {
            content.beginText();
            content.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), size);
            content.newLineAtOffset((float) x * POINT, (float) y * POINT);
            content.showText(text);
            content.endText();
        }
    }

    private static float x(Point p) {
        return (float) p.x() * POINT;
    }

    private static float y(Point p) {
        return (float) p.y() * POINT;
    }

    /** What of a line lies in a rectangle, cut as a maker's program would cut it. */
    private static List<Path> inside(Path path, Bounds box) {
        List<Double> cuts = new ArrayList<>(List.of(0.0, path.length()));
        for (double x : new double[] {box.minX(), box.maxX()}) {
            path.crossings(new Point(x, 0), new Vec(0, 1)).stream()
                    .map(PathPlace::alongMm)
                    .forEach(cuts::add);
        }
        for (double y : new double[] {box.minY(), box.maxY()}) {
            path.crossings(new Point(0, y), new Vec(1, 0)).stream()
                    .map(PathPlace::alongMm)
                    .forEach(cuts::add);
        }
        cuts.sort(null);
        List<Path> parts = new ArrayList<>();
        for (int i = 1; i < cuts.size(); i++) {
            double from = cuts.get(i - 1);
            double to = Math.min(path.length(), cuts.get(i));
            if (to - from > 1e-3) {
                Point middle = path.pointAt((from + to) / 2);
                if (box.meets(Bounds.of(middle, middle), 0)) {
                    parts.add(path.part(from, to));
                }
            }
        }
        return parts;
    }
}
