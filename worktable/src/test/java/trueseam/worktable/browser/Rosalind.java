package trueseam.worktable.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import trueseam.worktable.project.PatternPart;
import trueseam.worktable.project.PersonPart;
import trueseam.worktable.project.Project;

/** The invented person of the examples, before a drafted shell. */
public final class Rosalind {

    private Rosalind() {}

    /** Her measures as examples/rosalind.csv has them. */
    public static PersonPart measured() {
        try {
            List<PersonPart.Typed> readings = Files.readAllLines(Path.of("..", "examples", "rosalind.csv")).stream()
                    .filter(line -> !line.startsWith("#") && !line.isBlank() && !line.startsWith("measure,"))
                    .map(line -> line.split(","))
                    .map(cells -> new PersonPart.Typed(cells[0], "", cells[1], "in"))
                    .toList();
            return new PersonPart("Rosalind", "in", List.of(new PersonPart.Day("2026-11-20", readings, "")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Her project of a drafted shell in the size that her frame calls for. */
    public static Project before(String garment) {
        return Project.named("Rosalind's " + garment.replace('_', ' '))
                .with(measured())
                .with(new PatternPart("draft", garment, List.of(), "misses", "", "", "", Map.of()));
    }
}
