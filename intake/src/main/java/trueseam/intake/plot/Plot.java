package trueseam.intake.plot;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import trueseam.garment.finding.Finding;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;

/** Reads plot files (HP-GL, often named .plt): the lines that a plotter would draw, at its own scale of 40 units for 1 mm. */
public final class Plot {

    private static final int LARGEST = 20_000_000;

    private Plot() {}

    /**
     * Reads a plot.
     *
     * @param file what it is called, for messages
     * @param bytes what it holds
     * @return its lines in mm; the layer of a line is its pen
     * @throws DrawingException if it is no plain HP-GL, packs its lines (PE), is scaled to an unknown or stretched sheet, or is larger than
     *     any pattern
     */
    public static Drawing read(String file, byte[] bytes) {
        if (bytes.length > LARGEST) {
            throw new DrawingException(
                    file, "", "the file has " + bytes.length + " bytes; at most " + LARGEST + " are taken.");
        }
        Ink ink = new Ink(file);
        Plotter plotter = new Plotter(file, ink);
        plotter.carryOut(new PlotText(file, new String(bytes, StandardCharsets.ISO_8859_1)));
        List<Finding> findings = new ArrayList<>(plotter.findings());
        if (ink.strokes.isEmpty()) {
            findings.add(Finding.failure(file, "the plot draws nothing."));
        }
        return new Drawing(file, ink.strokes, ink.captions, findings);
    }
}
