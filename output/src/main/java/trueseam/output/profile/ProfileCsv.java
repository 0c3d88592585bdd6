package trueseam.output.profile;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import trueseam.fitting.profile.EaseProfile;
import trueseam.fitting.profile.EaseReading;
import trueseam.garment.length.LengthUnit;
import trueseam.output.words.MeasureWords;

/**
 * The ease profile as CSV (RFC 4180), for a spreadsheet: a line every 5 mm and one at every measured height, numbers in the user's
 * unit as decimals; an empty cell is a figure that is not known or not there.
 */
public final class ProfileCsv {

    /** As in the fitting chart's file: more than any ruler shows. */
    private static final int DECIMALS = 4;

    private static final CsvMapper CSV = new CsvMapper();

    private ProfileCsv() {}

    /**
     * Writes profiles.
     *
     * @param profiles of one fit
     * @param unit the user's unit
     * @return the file's text
     */
    public static String text(List<EaseProfile> profiles, LengthUnit unit) {
        List<Map<String, String>> rows = new ArrayList<>();
        for (EaseProfile profile : profiles) {
            for (EaseReading reading : profile.readings(EaseProfile.STEP_MM)) {
                rows.add(row(profile, reading, unit));
            }
        }
        CsvSchema.Builder schema = CsvSchema.builder();
        head(unit).forEach(schema::addColumn);
        try {
            return CSV.writer(schema.build().withHeader()).writeValueAsString(rows);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException("The ease profile cannot be written as CSV.", e);
        }
    }

    private static List<String> head(LengthUnit unit) {
        String in = " (" + unit.sign() + ")";
        return List.of(
                "part",
                "height" + in,
                "counted from",
                "measured here",
                "garment before" + in,
                "garment after" + in,
                "body" + in,
                "least ease" + in,
                "ease before" + in,
                "ease after" + in);
    }

    private static Map<String, String> row(EaseProfile profile, EaseReading reading, LengthUnit unit) {
        List<String> cells = new ArrayList<>();
        cells.add(profile.part().word());
        cells.add(number(OptionalDouble.of(reading.heightMm()), unit));
        cells.add(profile.part().zero());
        cells.add(reading.measured()
                .map(level -> MeasureWords.label(level.body().measure()))
                .orElse(""));
        cells.add(number(reading.beforeMm(), unit));
        cells.add(number(reading.afterMm(), unit));
        cells.add(number(reading.bodyMm(), unit));
        cells.add(number(reading.leastEaseMm(), unit));
        cells.add(number(reading.easeBeforeMm(), unit));
        cells.add(number(reading.easeAfterMm(), unit));
        Map<String, String> row = new LinkedHashMap<>();
        List<String> head = head(unit);
        for (int i = 0; i < cells.size(); i++) {
            row.put(head.get(i), cells.get(i));
        }
        return row;
    }

    private static String number(OptionalDouble mm, LengthUnit unit) {
        if (mm.isEmpty()) {
            return "";
        }
        BigDecimal exact = BigDecimal.valueOf(mm.getAsDouble())
                .divide(BigDecimal.valueOf(unit.mm()), DECIMALS, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return exact.signum() == 0 ? "0" : exact.toPlainString();
    }
}
