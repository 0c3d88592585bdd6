package trueseam.intake.survey;

import java.util.List;
import java.util.Optional;
import trueseam.garment.body.Origin;
import trueseam.garment.body.Population;
import trueseam.garment.body.Reading;
import trueseam.garment.measure.Measure;
import trueseam.intake.sheet.Resources;
import trueseam.intake.sheet.Sheet;
import trueseam.intake.sheet.SheetRow;

/**
 * How one measure is come by from the survey's columns.
 *
 * @param people of whom it holds
 * @param measure the measure
 * @param column the survey's column
 * @param less the column to take off it, if any
 * @param origin {@link Origin#TAPED} when the survey takes it as the measure asks, else {@link Origin#STAND_IN}
 * @param note what stands in for what, or empty
 */
public record MappingLine(
        Population people, Measure measure, String column, Optional<String> less, Origin origin, String note) {

    /**
     * The whole mapping.
     *
     * @return its lines, in the order of the file
     */
    public static List<MappingLine> all() {
        Sheet sheet = Resources.sheet(MappingLine.class, "mapping.csv");
        return sheet.rows().stream().map(row -> read(sheet, row)).toList();
    }

    private static MappingLine read(Sheet sheet, SheetRow row) {
        String less = row.cell(sheet.needColumn("less"));
        return new MappingLine(
                Population.valueOf(row.cell(sheet.needColumn("people"))),
                Measure.named(row.cell(sheet.needColumn("measure"))),
                row.cell(sheet.needColumn("column")),
                less.isEmpty() ? Optional.empty() : Optional.of(less),
                Origin.valueOf(row.cell(sheet.needColumn("origin"))),
                row.cell(sheet.needColumn("note")));
    }

    /**
     * Whether the line holds for a person.
     *
     * @param sex the person's sex as the survey states it
     * @return true when it is for all or for that sex
     */
    public boolean isFor(Population sex) {
        return people == Population.ALL || people == sex;
    }

    Reading reading(SurveyRow row) {
        double mm = row.column(column) - less.map(row::column).orElse(0.0);
        return Reading.of(measure, mm, origin, note);
    }
}
