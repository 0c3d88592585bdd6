package trueseam.worktable.project;

import java.util.List;
import java.util.Map;

/**
 * What somebody has typed and chosen about one garment for one person; everything else is worked out from it anew.
 *
 * @param name what she calls it
 * @param person the person and her measures
 * @param pattern the pattern
 * @param chart her decisions about the needs
 * @param trial the trial garment
 * @param cloth the cloth, and where the pieces lie on it
 * @param print how it is printed
 * @param standing what was brought of earlier patterns
 */
public record Project(
        String name,
        PersonPart person,
        PatternPart pattern,
        ChartPart chart,
        TrialPart trial,
        ClothPart cloth,
        PrintPart print,
        StandingPart standing) {

    /** Parts that an older file does not have are empty. */
    public Project {
        name = name == null ? "" : name.strip();
        person = person == null ? PersonPart.empty() : person;
        pattern = pattern == null ? PatternPart.empty() : pattern;
        chart = chart == null ? ChartPart.empty() : chart;
        trial = trial == null ? TrialPart.empty() : trial;
        cloth = cloth == null ? ClothPart.empty() : cloth;
        print = print == null ? PrintPart.empty() : print;
        standing = standing == null ? StandingPart.empty() : standing;
    }

    /**
     * A project in which nothing is known yet.
     *
     * @param name what she calls it
     * @return the project
     */
    public static Project named(String name) {
        return new Project(
                name,
                PersonPart.empty(),
                PatternPart.empty(),
                ChartPart.empty(),
                TrialPart.empty(),
                ClothPart.empty(),
                PrintPart.empty(),
                StandingPart.empty());
    }

    /**
     * The same with another name.
     *
     * @param other the name
     * @return the project
     */
    public Project withName(String other) {
        return new Project(other, person, pattern, chart, trial, cloth, print, standing);
    }

    /**
     * The same with other measures.
     *
     * @param other the person
     * @return the project
     */
    public Project with(PersonPart other) {
        return new Project(name, other, pattern, chart, trial, cloth, print, standing);
    }

    /**
     * The same with another pattern.
     *
     * @param other the pattern
     * @return the project
     */
    public Project with(PatternPart other) {
        return new Project(name, person, other, chart, trial, cloth, print, standing);
    }

    /**
     * The same with other decisions.
     *
     * @param other the decisions
     * @return the project
     */
    public Project with(ChartPart other) {
        return new Project(name, person, pattern, other, trial, cloth, print, standing);
    }

    /**
     * The same with other sittings.
     *
     * @param other the trial garment
     * @return the project
     */
    public Project with(TrialPart other) {
        return new Project(name, person, pattern, chart, other, cloth, print, standing);
    }

    /**
     * The same on other cloth, or laid otherwise.
     *
     * @param other the cloth
     * @return the project
     */
    public Project with(ClothPart other) {
        return new Project(name, person, pattern, chart, trial, other, print, standing);
    }

    /**
     * The same printed otherwise.
     *
     * @param other how it is printed
     * @return the project
     */
    public Project with(PrintPart other) {
        return new Project(name, person, pattern, chart, trial, cloth, other, standing);
    }

    /**
     * The same with other reports of earlier patterns.
     *
     * @param other what was brought
     * @return the project
     */
    public Project with(StandingPart other) {
        return new Project(name, person, pattern, chart, trial, cloth, print, other);
    }

    /**
     * What a new project for the same person begins with: her measures, the ease and the handbooks that she chose, paper and reports of
     * earlier fits; the pattern is left open, and nothing that was decided on the old one is taken over.
     *
     * @return the new project
     */
    public Project forAnotherPattern() {
        return new Project(
                name + ", another pattern",
                person,
                PatternPart.empty(),
                new ChartPart(chart.choices(), Map.of(), chart.ease(), List.of()),
                TrialPart.empty(),
                ClothPart.empty(),
                print,
                standing);
    }
}
