package trueseam.intake.survey;

import java.util.List;
import trueseam.garment.body.Population;
import trueseam.intake.body.BodyCsv;
import trueseam.intake.body.BodyFile;
import trueseam.intake.body.BodyJson;
import trueseam.intake.body.EntryRules;
import trueseam.intake.sheet.SheetException;

/**
 * The body in a file of any kind that holds one: a body as CSV or JSON (docs/body-files.md), or one person of a survey file.
 *
 * @param file the body, with what was noticed
 * @param people woman or man, where the file says so; else all
 */
public record BroughtBody(BodyFile file, Population people) {

    /**
     * Reads it; what kind of file it is shows in its first line.
     *
     * @param name what the user calls the file
     * @param text its content
     * @param person the SubjectId of a person in a survey file; blank for a file of one body
     * @param rules how entries are taken
     * @return the body
     * @throws SheetException when the file cannot be read, has no such person, or a person is named though it is no survey
     */
    public static BroughtBody read(String name, String text, String person, EntryRules rules) {
        if (isSurvey(text)) {
            if (person.isBlank()) {
                throw new SheetException(
                        name, 0, "It is a survey of many people; say which person of it by SubjectId.");
            }
            SurveyRow row = Survey.read(name, text).row(person);
            return new BroughtBody(new BodyFile(row.asBody(), List.of()), row.sex());
        }
        if (!person.isBlank()) {
            throw new SheetException(
                    name,
                    0,
                    "It is not a survey (it has no SubjectId column), so no person can be chosen in it by number.");
        }
        BodyFile body = text.stripLeading().startsWith("{")
                ? BodyJson.read(name, text, rules)
                : BodyCsv.read(name, text, rules);
        return new BroughtBody(body, Population.ALL);
    }

    private static boolean isSurvey(String text) {
        int end = text.indexOf('\n');
        return (end < 0 ? text : text.substring(0, end)).contains("SubjectId");
    }
}
