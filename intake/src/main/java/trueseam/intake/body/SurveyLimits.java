package trueseam.intake.body;

import java.util.List;
import trueseam.garment.body.Limit;
import trueseam.garment.body.Plausibility;
import trueseam.garment.body.Population;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.intake.sheet.Resources;
import trueseam.intake.sheet.Sheet;
import trueseam.intake.sheet.SheetRow;

/**
 * Limits of body measures from the 6,068 surveyed people: usual is between the 0.1 % and the 99.9 % value, by sex and for
 * both together. The numbers, and how those of unsurveyed measures were come by, are in {@code limits.csv} beside this
 * class.
 */
public final class SurveyLimits {
    /**
     * Below half of the usual range's low end and above twice its high end a value is impossible. Source: our judgement;
     * between the smallest and the largest grown-up ever recorded lies about a factor of five in stature, so this refuses
     * slips of unit and decimal point and no living adult that a pattern is cut for.
     */
    private static final double IMPOSSIBLE = 2;

    private SurveyLimits() {}

    /**
     * Reads the limits that ship with the program.
     *
     * @return the limits of every measure that has any
     */
    public static Plausibility read() {
        Sheet sheet = Resources.sheet(SurveyLimits.class, "limits.csv");
        int measure = sheet.needColumn("measure");
        int population = sheet.needColumn("population");
        int from = sheet.needColumn("usual from");
        int to = sheet.needColumn("usual to");
        int source = sheet.needColumn("source");
        List<Limit> limits = sheet.rows().stream()
                .map(row -> {
                    double usualFromMm = mm(row, from);
                    double usualToMm = mm(row, to);
                    return new Limit(
                            Measure.named(row.cell(measure)),
                            Population.valueOf(row.cell(population)),
                            usualFromMm / IMPOSSIBLE,
                            usualFromMm,
                            usualToMm,
                            usualToMm * IMPOSSIBLE,
                            row.cell(source));
                })
                .toList();
        return new Plausibility(limits);
    }

    private static double mm(SheetRow row, int column) {
        return Length.parse(row.cell(column), LengthUnit.MILLIMETRE).mm();
    }
}
