package trueseam.drafting;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import trueseam.garment.body.Population;
import trueseam.intake.survey.Survey;
import trueseam.intake.survey.SurveyRow;

/** The people of the ANSUR II survey (US Army, 2012, public domain; data/bodies). */
final class SurveyPeople {

    private static final List<SurveyRow> WOMEN = read("ansur2-female.csv");
    private static final List<SurveyRow> MEN = read("ansur2-male.csv");

    private SurveyPeople() {}

    static List<SurveyRow> of(Population sex) {
        return sex == Population.MEN ? MEN : WOMEN;
    }

    /** Found from the module's folder or from the root. */
    private static List<SurveyRow> read(String name) {
        Path here = Path.of("data", "bodies", name);
        return Survey.read(Files.exists(here) ? here : Path.of("..").resolve(here))
                .rows();
    }
}
