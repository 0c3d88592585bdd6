package trueseam.output.figure;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import trueseam.garment.body.Population;
import trueseam.intake.survey.Survey;
import trueseam.intake.survey.SurveyRow;

/** Figures to look at: the medians, and one in 250 surveyed people (ANSUR II, data/bodies). */
final class People {
    private People() {}

    static List<PersonFigure> figures() {
        List<PersonFigure> figures = new ArrayList<>();
        for (Population people : Population.values()) {
            figures.add(PersonFigure.of(people));
        }
        rows("ansur2-female.csv").forEach(row -> figures.add(PersonFigure.of(row.asBody(), Population.WOMEN)));
        rows("ansur2-male.csv").forEach(row -> figures.add(PersonFigure.of(row.asBody(), Population.MEN)));
        return figures;
    }

    static List<SurveyRow> rows(String file) {
        List<SurveyRow> all = Survey.read(Path.of("..", "data", "bodies", file)).rows();
        return IntStream.iterate(0, i -> i < all.size(), i -> i + 250)
                .mapToObj(all::get)
                .toList();
    }
}
