package trueseam.intake.tiles;

import java.util.List;
import trueseam.garment.finding.Finding;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Stroke;

/**
 * Pages put together.
 *
 * @param strokes the lines, whole and once
 * @param captions what is written
 * @param findings how it was put together, and what was left out
 * @param skipped pages that are no part of it
 */
public record Together(List<Stroke> strokes, List<Caption> captions, List<Finding> findings, List<Page> skipped) {

    /** Does not change. */
    public Together {
        strokes = List.copyOf(strokes);
        captions = List.copyOf(captions);
        findings = List.copyOf(findings);
        skipped = List.copyOf(skipped);
    }
}
