package trueseam.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Piece;
import trueseam.garment.size.SizeTable;
import trueseam.geometry.Bounds;
import trueseam.geometry.Cubic;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.intake.bring.BringChoices;
import trueseam.intake.bring.Bringing;
import trueseam.intake.bring.Brought;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.file.DrawingFiles;
import trueseam.intake.file.ReadChoices;
import trueseam.intake.nest.Nest;
import trueseam.intake.size.SizeTables;

/**
 * How long does it take to bring a tiled pattern in: A4 pages with a dress, trousers and a skirt in eight sizes nested, each in its colour,
 * dashes and layer? The design allows 5 s for 60 pages.
 *
 * <p>Two ways of writing the file: every page has the whole drawing behind a window (the most a maker's program does), or only what its
 * window shows. Each round reads the file, puts the pages together, finds the sizes and brings one in. The first round is a cold Java: the program as it
 * runs once. CPU seconds are those of all threads, compiler and collector together. Garments are drafted; they are nobody's pattern.
 */
public final class NestedTiles {

    private static final float POINT = 72 / 25.4f;
    private static final double WIDE_MM = 210;
    private static final double HIGH_MM = 297;
    private static final double MARGIN_MM = 10;
    private static final double OVERLAP_MM = 10;
    private static final int ROUNDS = 5;
    private static final String BROUGHT = "14";

    private static final BringChoices CHOICES =
            new BringChoices("", BROUGHT, "misses", OptionalDouble.empty(), 15.875, Map.of(), Optional.empty());

    private static final List<String> SIZES = List.of("6", "8", "10", "12", "14", "16", "18", "20");

    private record Line(Path path, int size) {}

    private final List<Line> lines = new ArrayList<>();
    private int pages;

    private NestedTiles() {
        double left = 0;
        SizeTable table = SizeTables.named("misses");
        for (GarmentKind kind : List.of(GarmentKind.DRESS, GarmentKind.TROUSERS, GarmentKind.SKIRT)) {
            List<Piece> largest =
                    Garments.shell(table, SIZES.get(SIZES.size() - 1), kind).pieces();
            for (int p = 0; p < largest.size(); p++) {
                Bounds room = CuttingLine.of(largest.get(p)).bounds().grown(15);
                Motion there = Motion.slide(new Vec(left - room.minX(), -room.maxY()));
                for (int s = 0; s < SIZES.size(); s++) {
                    Piece piece =
                            Garments.shell(table, SIZES.get(s), kind).pieces().get(p);
                    lines.add(new Line(CuttingLine.of(piece).moved(there), s));
                    lines.add(new Line(piece.outline().moved(there), s));
                }
                left += room.width();
            }
        }
    }

    /**
     * Measures.
     *
     * @param arguments a folder to write the two files to as well, for trying the command with them; else none
     * @throws IOException if a PDF cannot be made or written
     */
    public static void main(String[] arguments) throws IOException {
        NestedTiles nest = new NestedTiles();
        for (boolean whole : new boolean[] {true, false}) {
            byte[] pdf = nest.pdf(whole);
            if (arguments.length > 0) {
                Files.write(java.nio.file.Path.of(arguments[0], whole ? "whole.pdf" : "parts.pdf"), pdf);
            }
            System.out.printf(
                    Locale.ROOT,
                    "%d pages, %d sizes, %d lines, %s, %.1f MB%n",
                    nest.pages,
                    SIZES.size(),
                    nest.lines.size(),
                    whole ? "whole drawing on every page" : "each page with its part",
                    pdf.length / 1e6);
            for (int round = 1; round <= ROUNDS; round++) {
                round(pdf, round);
            }
        }
    }

    private static void round(byte[] pdf, int round) {
        OperatingSystemMXBean machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        long clock = System.nanoTime();
        long cpu = machine.getProcessCpuTime();
        Drawing drawing = DrawingFiles.read("nest.pdf", pdf, ReadChoices.NONE);
        double read = (System.nanoTime() - clock) / 1e9;
        double readCpu = (machine.getProcessCpuTime() - cpu) / 1e9;
        Brought brought = Bringing.of(Nest.of(drawing).drawing(BROUGHT), CHOICES);
        System.out.printf(
                Locale.ROOT,
                "  round %d: read and put together %.2f s (%.2f CPU s); with size %s found and brought in %.2f s (%.2f CPU s): %d pieces%n",
                round,
                read,
                readCpu,
                BROUGHT,
                (System.nanoTime() - clock) / 1e9,
                (machine.getProcessCpuTime() - cpu) / 1e9,
                brought.pattern().pieces().size());
    }

    private byte[] pdf(boolean whole) throws IOException {
        pages = 0;
        Bounds all = lines.get(0).path.bounds();
        for (Line line : lines) {
            all = all.with(line.path.bounds());
        }
        double w = WIDE_MM - 2 * MARGIN_MM;
        double h = HIGH_MM - 2 * MARGIN_MM;
        try (PDDocument document = new PDDocument()) {
            List<PDOptionalContentGroup> layers = SIZES.stream()
                    .map(s -> new PDOptionalContentGroup("size " + s))
                    .toList();
            for (int row = 0; row * (h - OVERLAP_MM) < all.height(); row++) {
                for (int column = 0; column * (w - OVERLAP_MM) < all.width(); column++) {
                    double x = all.minX() + column * (w - OVERLAP_MM);
                    double y = all.maxY() - row * (h - OVERLAP_MM);
                    page(
                            document,
                            layers,
                            new Bounds(x, y - h, x + w, y),
                            whole,
                            (char) ('A' + row) + "" + (column + 1));
                }
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    private void page(
            PDDocument document, List<PDOptionalContentGroup> layers, Bounds shown, boolean whole, String label)
            throws IOException {
        List<Line> seen =
                lines.stream().filter(l -> l.path.bounds().meets(shown, 0)).toList();
        if (seen.isEmpty()) {
            return;
        }
        pages++;
        PDPage page = new PDPage(new PDRectangle((float) WIDE_MM * POINT, (float) HIGH_MM * POINT));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            content.beginText();
            content.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 14);
            content.newLineAtOffset(20 * POINT, 20 * POINT);
            content.showText(label);
            content.endText();
            content.addRect(
                    (float) MARGIN_MM * POINT,
                    (float) MARGIN_MM * POINT,
                    (float) shown.width() * POINT,
                    (float) shown.height() * POINT);
            content.clip();
            Motion there = Motion.slide(new Vec(MARGIN_MM - shown.minX(), MARGIN_MM - shown.minY()));
            for (Line line : whole ? lines : seen) {
                content.beginMarkedContent(COSName.OC, layers.get(line.size));
                content.setStrokingColor(Color.getHSBColor(line.size / (float) SIZES.size(), 1, 0.7f));
                content.setLineWidth(0.3f * POINT);
                content.setLineDashPattern(new float[] {2 + line.size, 1 + line.size % 3}, 0);
                trace(content, line.path.moved(there));
                content.endMarkedContent();
            }
        }
    }

    private static void trace(PDPageContentStream content, Path path) throws IOException {
        content.moveTo((float) path.start().x() * POINT, (float) path.start().y() * POINT);
        for (Segment s : path.segments()) {
            if (s instanceof Cubic c) {
                content.curveTo(
                        (float) c.handle1().x() * POINT,
                        (float) c.handle1().y() * POINT,
                        (float) c.handle2().x() * POINT,
                        (float) c.handle2().y() * POINT,
                        (float) c.end().x() * POINT,
                        (float) c.end().y() * POINT);
            } else {
                content.lineTo((float) s.end().x() * POINT, (float) s.end().y() * POINT);
            }
        }
        content.closePath();
        content.stroke();
    }
}
