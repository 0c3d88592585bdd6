package trueseam.intake.file;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import trueseam.garment.length.LengthUnit;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.dxf.Dxf;
import trueseam.intake.pdf.PdfDrawing;
import trueseam.intake.pdf.PdfReading;
import trueseam.intake.plot.Plot;
import trueseam.intake.scale.TrueScale;
import trueseam.intake.svg.SvgDrawing;

/** Reads a drawing out of any kind of file that is known: SVG, PDF, DXF, plot (HPGL). */
public final class DrawingFiles {

    /** A drawing that is larger has pictures in it. */
    private static final int MOST_BYTES = 20_000_000;

    private DrawingFiles() {}

    /**
     * Reads a file.
     *
     * @param name what it is called, for messages, and for its kind where its content leaves that open
     * @param content what is in it
     * @param choices what its user says about it
     * @return the drawing in mm, y up, with what was doubtful
     * @throws DrawingException if it cannot be read as a drawing, or a choice does not go with its kind
     */
    public static Drawing read(String name, byte[] content, ReadChoices choices) {
        return isPacked(content)
                ? readPlain(name, unpacked(name, content), choices)
                : readPlain(name, content, choices);
    }

    /** Packed drawings (.svgz) begin so. Source: RFC 1952, 2.3.1. */
    private static boolean isPacked(byte[] content) {
        return content.length > 2 && content[0] == (byte) 0x1f && content[1] == (byte) 0x8b;
    }

    private static byte[] unpacked(String name, byte[] content) {
        try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(content))) {
            byte[] plain = in.readNBytes(MOST_BYTES + 1);
            if (plain.length > MOST_BYTES) {
                throw tooLarge(name, "It unpacks to");
            }
            return plain;
        } catch (IOException e) {
            throw new DrawingException(
                    name, "", "It is packed and cannot be unpacked; it may be cut short. Save it again, or unpacked.");
        }
    }

    private static DrawingException tooLarge(String name, String what) {
        return new DrawingException(
                name,
                "",
                what + " more than " + MOST_BYTES / 1_000_000
                        + " MB; take out pictures and anything else that is not the pattern.");
    }

    private static Drawing readPlain(String name, byte[] content, ReadChoices choices) {
        FileKind kind = FileKind.of(name, content);
        if (choices.unitMm().isPresent() && kind != FileKind.SVG && kind != FileKind.DXF) {
            throw new DrawingException(
                    name, "", "Only SVG and DXF files may leave their units open; a unit can be said for these only.");
        }
        return switch (kind) {
            case PDF -> {
                PdfReading reading = PdfDrawing.read(name, content, choices.page(), choices.tiles());
                yield TrueScale.of(reading.drawing(), reading.others(), choices.testSquareMm());
            }
            case DXF -> scaled(Dxf.read(name, content, dxfUnit(name, choices)).drawing(), choices);
            case PLOT -> scaled(Plot.read(name, content), choices);
            case SVG -> scaled(SvgDrawing.read(name, text(name, content), choices.unitMm()), choices);
        };
    }

    private static Drawing scaled(Drawing drawing, ReadChoices choices) {
        return TrueScale.of(drawing, List.of(), choices.testSquareMm());
    }

    /** A DXF file counts in one of the units that people have. */
    private static Optional<LengthUnit> dxfUnit(String name, ReadChoices choices) {
        if (choices.unitMm().isEmpty()) {
            return Optional.empty();
        }
        for (LengthUnit known : LengthUnit.values()) {
            if (Math.abs(known.mm() - choices.unitMm().getAsDouble()) < 1e-9) {
                return Optional.of(known);
            }
        }
        throw new DrawingException(name, "", "A DXF file counts in 1 mm, 1 cm or 1 in; say one of these as its unit.");
    }

    private static String text(String name, byte[] content) {
        if (content.length > MOST_BYTES) {
            throw tooLarge(name, "It has");
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(content))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new DrawingException(
                    name, "", "It is neither a PDF, a DXF file, a plot nor UTF-8 text; save an SVG file as UTF-8.");
        }
    }
}
