package trueseam.intake.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.garment.blend.SizesByLevel;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Pattern;
import trueseam.geometry.Cubic;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.apparel.ApparelPieces;
import trueseam.intake.bring.BringChoices;
import trueseam.intake.bring.Bringing;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.file.DrawingFiles;
import trueseam.intake.file.ReadChoices;
import trueseam.intake.nest.NestDrawing.By;
import trueseam.intake.nest.NestDrawing.Named;
import trueseam.intake.said.Corrections;
import trueseam.intake.size.SizeTables;
import trueseam.output.dxf.ApparelDxf;

/** Nests in other kinds of files: PDF with layers, colours and dashes; DXF whose blocks say their sizes. */
class NestFileKindsTest {

    private static final List<String> SIZES = List.of("12", "14", "16");
    private static final float PT = (float) (72 / 25.4);
    private static final double UP_MM = 1200;

    @ParameterizedTest
    @EnumSource(
            value = By.class,
            names = {"LAYER", "COLOUR", "DASH", "NESTING"})
    void aNestInAPdfIsReadByLayersColoursDashesOrNesting(By by) throws IOException {
        NestDrawing made = new NestDrawing(Garment.skirt, SIZES, by, Named.NOTHING, false, 0);
        Drawing drawing = DrawingFiles.read("nest.pdf", pdf(made.drawing()), ReadChoices.NONE);
        Nest nest = Nest.of(drawing);
        assertThat(nest.sizes()).hasSize(3);
        Pattern back = Bringing.of(nest.drawing(nest.sizes().get(1)), BringChoices.usual(15))
                .pattern();
        // PDFBox writes numbers with five decimals; the reading keeps them.
        assertThat(around(back)).isCloseTo(around(made.drafted("14")), within(0.05));
        if (by == By.LAYER) {
            assertThat(nest.sizes().stream().map(NestSize::name)).containsExactlyElementsOf(SIZES);
        }
    }

    private static double around(Pattern pattern) {
        return pattern.pieces().stream()
                .flatMap(p -> p.edges().stream())
                .mapToDouble(Edge::length)
                .sum();
    }

    /** The lines of a drawing on one large page, layers as optional content. */
    private static byte[] pdf(Drawing drawing) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle(3000 * PT, 2400 * PT));
            document.addPage(page);
            PDOptionalContentProperties layers = new PDOptionalContentProperties();
            document.getDocumentCatalog().setOCProperties(layers);
            Map<String, PDOptionalContentGroup> groups = new HashMap<>();
            try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                for (Stroke stroke : drawing.strokes()) {
                    if (!stroke.layer().isEmpty()) {
                        out.beginMarkedContent(COSName.OC, groups.computeIfAbsent(stroke.layer(), name -> {
                            PDOptionalContentGroup group = new PDOptionalContentGroup(name);
                            layers.addGroup(group);
                            return group;
                        }));
                    }
                    draw(out, stroke);
                    if (!stroke.layer().isEmpty()) {
                        out.endMarkedContent();
                    }
                }
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        }
    }

    private static void draw(PDPageContentStream out, Stroke stroke) throws IOException {
        out.setStrokingColor(Color.decode(stroke.look().colour()));
        out.setLineWidth((float) stroke.look().widthMm() * PT);
        float[] dashes = new float[stroke.look().dashMm().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = (float) (stroke.look().dashMm().get(i) * PT);
        }
        out.setLineDashPattern(dashes, 0);
        out.moveTo(x(stroke.path().start()), y(stroke.path().start()));
        for (Segment segment : stroke.path().segments()) {
            if (segment instanceof Cubic c) {
                out.curveTo(x(c.handle1()), y(c.handle1()), x(c.handle2()), y(c.handle2()), x(c.end()), y(c.end()));
            } else {
                out.lineTo(x(segment.end()), y(segment.end()));
            }
        }
        out.stroke();
    }

    private static float x(Point p) {
        return (float) (p.x() * PT);
    }

    private static float y(Point p) {
        return (float) ((p.y() + UP_MM) * PT);
    }

    @Test
    void aDxfFileWhoseBlocksSayTheirSizesIsANest() {
        Nest nest = Nest.of(dxf(Garment.skirt));
        assertThat(nest.told()).isEqualTo(ToldBy.BLOCKS);
        assertThat(nest.sizes().stream().map(NestSize::name)).containsExactlyElementsOf(SIZES);
        Pattern one = Bringing.of(nest.drawing("14"), BringChoices.usual(15)).pattern();
        assertThat(one.pieces()).hasSize(2);
        Pattern drawn = NestBringing.across(
                        nest,
                        SizesByLevel.parse("waist 12, hip 16").orElseThrow(),
                        BringChoices.usual(15),
                        Corrections.NONE)
                .pattern();
        Pattern hip = Bringing.of(nest.drawing("16"), BringChoices.usual(15)).pattern();
        assertThat(girth(drawn)).isCloseTo(girth(hip), within(0.1));
    }

    private static double girth(Pattern pattern) {
        return FlatPattern.measure(pattern, Measure.HIP_GIRTH).orElseThrow().mm();
    }

    /** Three files, one a size, as one: every piece with its size. */
    private static Drawing dxf(Garment garment) {
        List<ApparelPiece> pieces = new ArrayList<>();
        Drawing last = null;
        for (String size : SIZES) {
            Pattern pattern = garment.draft(DraftFigure.of(SizeTables.named("misses"), size), Allowances.inches());
            byte[] bytes = ApparelDxf.write(pattern).getBytes(StandardCharsets.UTF_8);
            last = DrawingFiles.read("skirt.dxf", bytes, ReadChoices.NONE);
            pieces.addAll(last.apparel().pieces());
        }
        return new Drawing(
                "skirt.dxf",
                last.strokes(),
                last.captions(),
                last.findings(),
                new ApparelPieces(last.apparel().style(), pieces));
    }
}
