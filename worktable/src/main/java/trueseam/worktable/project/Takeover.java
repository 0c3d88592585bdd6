package trueseam.worktable.project;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import trueseam.records.person.Person;

/**
 * Takes projects that an earlier version of the program kept as files of the data folder over into the record book. The files are moved
 * aside, not deleted. If it is broken off it goes on at the next start: what is in the record book already is left alone.
 */
final class Takeover {

    private final Path folder;
    private final Shelf shelf;

    Takeover(Path folder, Shelf shelf) {
        this.folder = folder;
        this.shelf = shelf;
    }

    void run() {
        Path projects = folder.resolve("projects");
        if (!Files.isDirectory(projects)) {
            return;
        }
        try {
            Path files = folder.resolve("files");
            if (Files.isDirectory(files)) {
                for (Path file : in(files)) {
                    shelf.keepFile(Files.readAllBytes(file));
                }
            }
            Map<String, String> people = new HashMap<>();
            for (Path file : in(projects)) {
                if (file.toString().endsWith(".json")) {
                    takeOver(file, people);
                }
            }
            aside(files);
            aside(projects);
        } catch (IOException e) {
            throw DataFolder.unreadable(e);
        }
    }

    /** The old files know people by nothing but what they are called, so one label is one person. */
    private void takeOver(Path file, Map<String, String> people) throws IOException {
        String id = file.getFileName().toString().replace(".json", "");
        if (shelf.drawer().projects().find(id).isPresent()) {
            return;
        }
        Kept kept = ProjectText.kept(Files.readString(file), "The project " + file);
        String label = kept.project().person().label().strip().toLowerCase(Locale.ROOT);
        Optional<String> known = label.isEmpty()
                ? Optional.empty()
                : Optional.ofNullable(people.get(label)).or(() -> known(label));
        shelf.put(id, kept, known);
        shelf.drawer()
                .projects()
                .find(id)
                .flatMap(project -> project.head().person())
                .ifPresent(person -> people.put(label, person));
    }

    private Optional<String> known(String label) {
        return shelf.drawer().people().list(label, true).stream()
                .filter(person -> person.label().toLowerCase(Locale.ROOT).equals(label))
                .map(Person::id)
                .findFirst();
    }

    private static List<Path> in(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.sorted().toList();
        }
    }

    private static void aside(Path old) throws IOException {
        if (Files.isDirectory(old)) {
            Path aside = old.resolveSibling(old.getFileName() + "-before-record-book");
            for (int n = 2; Files.exists(aside); n++) {
                aside = old.resolveSibling(old.getFileName() + "-before-record-book-" + n);
            }
            Files.move(old, aside);
        }
    }
}
