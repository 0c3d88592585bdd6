package trueseam.intake.survey;

import java.util.List;
import java.util.Map;
import trueseam.garment.body.Body;
import trueseam.garment.body.Population;

/**
 * One surveyed person.
 *
 * @param id the survey's number for the person
 * @param sex {@link Population#WOMEN} or {@link Population#MEN}
 * @param age in years
 * @param columns the place of each column of numbers in {@code values}, by the survey's name in lower case; shared by all
 *     rows of a file
 * @param values the numbers as the survey has them: mm, but the weight in tenths of a kilogram
 * @param mapping how columns become measures; shared by all rows
 */
public record SurveyRow(
        String id,
        Population sex,
        int age,
        Map<String, Integer> columns,
        List<Double> values,
        List<MappingLine> mapping) {

    /**
     * Keeps copies, which for the shared ones are the very same.
     *
     * @param id as of the record
     * @param sex as of the record
     * @param age as of the record
     * @param columns as of the record
     * @param values as of the record
     * @param mapping as of the record
     */
    public SurveyRow {
        columns = Map.copyOf(columns);
        values = List.copyOf(values);
        mapping = List.copyOf(mapping);
    }

    /**
     * One number of this person.
     *
     * @param name the survey's column, in lower case
     * @return the number as the survey has it
     * @throws IllegalArgumentException when the file has no such column
     */
    public double column(String name) {
        Integer column = columns.get(name);
        if (column == null) {
            throw new IllegalArgumentException("the survey has no column " + name);
        }
        return values.get(column);
    }

    /**
     * This person's measures, labelled {@code survey 10037}. Stand-ins are marked as such.
     *
     * @return the body
     */
    public Body asBody() {
        return new Body(
                "survey " + id,
                mapping.stream()
                        .filter(line -> line.isFor(sex))
                        .map(line -> line.reading(this))
                        .toList());
    }
}
