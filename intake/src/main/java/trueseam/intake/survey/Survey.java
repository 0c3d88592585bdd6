package trueseam.intake.survey;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import trueseam.garment.body.Population;
import trueseam.intake.sheet.Sheet;
import trueseam.intake.sheet.SheetException;
import trueseam.intake.sheet.SheetRow;

/**
 * The people of a survey file.
 *
 * @param file what the user calls the file
 * @param rows the people, in the order of the file
 */
public record Survey(String file, List<SurveyRow> rows) {

    /**
     * Keeps a copy of the rows.
     *
     * @param file as of the record
     * @param rows as of the record
     */
    public Survey {
        rows = List.copyOf(rows);
    }

    /**
     * Reads a survey file from disk.
     *
     * @param path where it lies
     * @return its people
     * @throws SheetException when it cannot be read
     */
    public static Survey read(Path path) {
        try {
            return read(path.toString(), Files.readString(path, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new SheetException(
                    path.toString(), 0, "The survey file cannot be read; is it there, and is it UTF-8 text?");
        }
    }

    /**
     * Reads a survey file. Columns are found by their names, so their order does not matter.
     *
     * @param file what the user calls the file
     * @param text its content
     * @return its people
     * @throws SheetException naming the column that is missing, or the line and column that is not a number
     */
    public static Survey read(String file, String text) {
        Sheet sheet = Sheet.read(file, text);
        int id = sheet.needColumn("SubjectId");
        int gender = sheet.needColumn("Gender");
        int age = sheet.needColumn("Age");
        List<MappingLine> mapping = MappingLine.all();
        mapping.stream()
                .flatMap(line -> Stream.concat(Stream.of(line.column()), line.less().stream()))
                .forEach(sheet::needColumn);
        List<Integer> numbers = new ArrayList<>();
        Map<String, Integer> columns = new LinkedHashMap<>();
        for (int column = 0; column < sheet.header().size(); column++) {
            if (column != id && column != gender && column != age) {
                columns.put(sheet.header().get(column).toLowerCase(Locale.ROOT), numbers.size());
                numbers.add(column);
            }
        }
        Map<String, Integer> shared = Map.copyOf(columns);
        List<SurveyRow> rows = new ArrayList<>();
        for (SheetRow row : sheet.rows()) {
            List<Double> values =
                    numbers.stream().map(column -> number(sheet, row, column)).toList();
            rows.add(new SurveyRow(
                    row.cell(id), sex(sheet, row, gender), (int) number(sheet, row, age), shared, values, mapping));
        }
        return new Survey(file, rows);
    }

    private static Population sex(Sheet sheet, SheetRow row, int column) {
        return switch (row.cell(column).toLowerCase(Locale.ROOT)) {
            case "female" -> Population.WOMEN;
            case "male" -> Population.MEN;
            default ->
                throw new SheetException(
                        sheet.file(),
                        row.line(),
                        "Gender is \"" + row.cell(column) + "\"; Female or Male was expected.");
        };
    }

    private static double number(Sheet sheet, SheetRow row, int column) {
        try {
            return Double.parseDouble(row.cell(column));
        } catch (NumberFormatException e) {
            throw new SheetException(
                    sheet.file(),
                    row.line(),
                    "The " + sheet.header().get(column) + " is \"" + row.cell(column) + "\"; a number was expected.");
        }
    }

    /**
     * Finds one person.
     *
     * @param id the survey's number
     * @return the person
     * @throws SheetException when the file has no such person
     */
    public SurveyRow row(String id) {
        return rows.stream()
                .filter(row -> row.id().equals(id.strip()))
                .findFirst()
                .orElseThrow(() -> new SheetException(
                        file, 0, "There is no person " + id.strip() + "; the first is " + first() + "."));
    }

    private String first() {
        return rows.isEmpty() ? "missing too" : rows.get(0).id();
    }
}
