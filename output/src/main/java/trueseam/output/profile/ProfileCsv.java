package trueseam.output.profile;

import java.util.List;
import trueseam.fitting.profile.EaseProfile;
import trueseam.fitting.profile.EaseReading;
import trueseam.garment.length.LengthUnit;
import trueseam.output.csv.CsvSheet;
import trueseam.output.words.MeasureWords;

/**
 * The ease profile as CSV (RFC 4180), for a spreadsheet: a line every 5 mm and one at every measured height, numbers in the user's
 * unit as decimals; an empty cell is a figure that is not known or not there.
 */
public final class ProfileCsv {

    private ProfileCsv() {}

    /**
     * Writes profiles.
     *
     * @param profiles of one fit
     * @param unit the user's unit
     * @return the file's text
     */
    public static String text(List<EaseProfile> profiles, LengthUnit unit) {
        CsvSheet sheet = new CsvSheet(head(unit));
        for (EaseProfile profile : profiles) {
            profile.readings(EaseProfile.STEP_MM).forEach(reading -> sheet.line(cells(profile, reading, unit)));
        }
        return sheet.text();
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

    private static List<String> cells(EaseProfile profile, EaseReading reading, LengthUnit unit) {
        return List.of(
                profile.part().word(),
                CsvSheet.number(reading.heightMm(), unit),
                profile.part().zero(),
                reading.measured()
                        .map(level -> MeasureWords.label(level.body().measure()))
                        .orElse(""),
                CsvSheet.number(reading.beforeMm(), unit),
                CsvSheet.number(reading.afterMm(), unit),
                CsvSheet.number(reading.bodyMm(), unit),
                CsvSheet.number(reading.leastEaseMm(), unit),
                CsvSheet.number(reading.easeBeforeMm(), unit),
                CsvSheet.number(reading.easeAfterMm(), unit));
    }
}
