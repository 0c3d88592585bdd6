package trueseam.records;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.records.person.MeasuringDay;
import trueseam.records.person.TapeReading;
import trueseam.records.project.KeptProject;
import trueseam.records.project.ProjectChange;
import trueseam.records.project.ProjectState;
import trueseam.records.sitting.KeptSitting;

/** Invented people and projects. */
final class Invented {

    private Invented() {}

    static TapeReading inches(String measure, double inches) {
        return new TapeReading(measure, "", String.valueOf(inches), "in", "", "", OptionalDouble.of(inches * 25.4));
    }

    static MeasuringDay day(String date, TapeReading... readings) {
        return new MeasuringDay(date, "", List.of(readings));
    }

    static ProjectChange begun(String id, String name, String content) {
        return begun(id, new KeptProject.Head(name, Optional.empty(), Optional.empty(), ""), content);
    }

    static ProjectChange begun(String id, KeptProject.Head head, String content) {
        return new ProjectChange(id, 0, 1, head, 1, List.of(), List.of(new ProjectState(1, "", "", content)));
    }

    static KeptSitting.Seen pinned(String alteration, double inches) {
        return new KeptSitting.Seen(
                "3.1",
                "sway-back",
                alteration,
                String.valueOf(inches),
                OptionalDouble.of(inches * 25.4),
                "fold",
                "both",
                "");
    }
}
