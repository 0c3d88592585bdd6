package trueseam.records;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import trueseam.records.person.Person;
import trueseam.records.project.KeptProject;
import trueseam.records.project.ProjectChange;
import trueseam.records.project.ProjectState;

/**
 * A program that writes into a record book as fast as it can until it is killed. Each change writes the same number into a project's
 * state, a reading and a note; once it is kept the number is told.
 */
final class Scribe {

    static final String PROJECT = "a1b2c3d4a1b2c3d4";

    private Scribe() {}

    /** The book and the project that is written; the program waits for a line before it opens the book. */
    public static void main(String[] args) throws IOException {
        BufferedReader told = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        Path place = Path.of(told.readLine());
        try (RecordBook book = RecordBook.inFile(place, Clock.systemUTC())) {
            Drawer drawer = book.drawer(RecordBook.SINGLE_OWNER);
            // It ends by itself only when nobody listens any more.
            for (long n = drawer.projects().find(PROJECT).orElseThrow().version() + 1; !System.out.checkError(); n++) {
                write(drawer, n);
                System.out.println(n);
            }
        }
    }

    static void begin(Drawer drawer) {
        Person person = drawer.people().add(Person.named("Anna", "in", ""));
        drawer.projects()
                .begin(Invented.begun(
                        PROJECT, new KeptProject.Head("Dress", Optional.of(person.id()), Optional.empty(), ""), "1"));
        write(drawer, 2);
    }

    private static void write(Drawer drawer, long n) {
        drawer.together(all -> {
            KeptProject.Head head = all.projects().find(PROJECT).orElseThrow().head();
            Person person = all.people().find(head.person().orElseThrow()).orElseThrow();
            all.people().change(person.withNote(String.valueOf(n)));
            all.projects()
                    .change(new ProjectChange(
                            PROJECT,
                            n - 1,
                            n,
                            head,
                            n,
                            List.of(n - 1),
                            List.of(new ProjectState(n, "", "", String.valueOf(n)))));
            all.days()
                    .replaceOf(
                            PROJECT,
                            person.id(),
                            List.of(Invented.day("2026-10-01", Invented.inches("bust girth", (double) n))));
            return n;
        });
    }
}
