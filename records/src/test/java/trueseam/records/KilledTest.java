package trueseam.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import java.util.Random;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trueseam.records.project.KeptProject;
import trueseam.records.project.ProjectState;

/** A program that is killed while it writes, two hundred times into one record book. */
class KilledTest {

    private static final int KILLS = 200;

    /** So many programs are starting while one writes. */
    private static final int WAITING = 2;

    @TempDir
    private Path folder;

    @Test
    void aKilledProgramLosesAtMostTheChangeInFlightAndNeverCorrupts() throws IOException, SQLException {
        Path place = folder.resolve("book.sqlite");
        try (RecordBook book = RecordBook.inFile(place, Clock.systemUTC())) {
            Scribe.begin(book.drawer(RecordBook.SINGLE_OWNER));
        }
        Program program = new Program(folder);
        Random random = new Random(6);
        Queue<Process> waiting = new ArrayDeque<>();
        try {
            long kept = 2;
            for (int kill = 0; kill < KILLS; kill++) {
                while (waiting.size() <= WAITING) {
                    waiting.add(program.started());
                }
                long told = killed(waiting.remove(), place, random, kept);
                // It did not end in order: what was not yet in the book itself stands beside it.
                assertThat(folder.resolve("book.sqlite-wal")).isNotEmptyFile();
                kept = whole(place);
                assertThat(kept).as("kill %d: what was told to be kept", kill).isBetween(told, told + 1);
            }
        } finally {
            waiting.forEach(Process::destroyForcibly);
        }
    }

    /** Lets a program write a few changes, kills it somewhere in the next one, and says the last number that it told. */
    private static long killed(Process process, Path place, Random random, long before) throws IOException {
        try (BufferedReader says = process.inputReader(StandardCharsets.UTF_8);
                Writer tell = process.outputWriter(StandardCharsets.UTF_8)) {
            tell.write(place + System.lineSeparator());
            tell.flush();
            long told = before;
            int changes = random.nextInt(4);
            for (int i = 0; i <= changes; i++) {
                told = number(says.readLine(), told);
            }
            long moment = System.nanoTime() + random.nextInt(3_000_000);
            while (System.nanoTime() < moment) {
                Thread.onSpinWait();
            }
            process.toHandle().destroyForcibly(); // SIGKILL; what was told before can still be read
            for (String line = says.readLine(); line != null; line = says.readLine()) {
                told = number(line, told);
            }
            return told;
        }
    }

    /** A line that was cut off in the middle tells nothing. */
    private static long number(String line, long told) {
        assertThat(line).as("the program writes").isNotNull();
        return line.equals(String.valueOf(told + 1)) ? told + 1 : told;
    }

    /** Looks whether all that belongs to one change is there, and says its number. */
    private static long whole(Path place) throws SQLException {
        try (Connection connection = Books.IN_FILE.connect(place.toString());
                ResultSet check = connection.createStatement().executeQuery("pragma integrity_check")) {
            assertThat(check.getString(1)).isEqualTo("ok");
        }
        try (RecordBook book = RecordBook.inFile(place, Clock.systemUTC())) {
            Drawer drawer = book.drawer(RecordBook.SINGLE_OWNER);
            KeptProject project = drawer.projects().find(Scribe.PROJECT).orElseThrow();
            String number = String.valueOf(project.version());
            String person = project.head().person().orElseThrow();
            assertThat(drawer.projects().states(Scribe.PROJECT))
                    .containsExactly(new ProjectState(project.version(), "", "", number));
            assertThat(drawer.people().find(person).orElseThrow().note()).isEqualTo(number);
            assertThat(drawer.days().of(person))
                    .containsExactly(
                            Invented.day("2026-10-01", Invented.inches("bust girth", (double) project.version())));
            return project.version();
        }
    }

    /** The program, with its classes in an archive, so that two hundred starts do not take long. */
    private record Program(String classPath, Path archive) {

        Program(Path folder) throws IOException {
            this(onlyFiles(folder), folder.resolve("scribe.jsa"));
            Path scratch = folder.resolve("scratch.sqlite");
            try (RecordBook book = RecordBook.inFile(scratch, Clock.systemUTC())) {
                Scribe.begin(book.drawer(RecordBook.SINGLE_OWNER));
            }
            Process once = started("-XX:ArchiveClassesAtExit=" + archive);
            try (BufferedReader says = once.inputReader(StandardCharsets.UTF_8);
                    Writer tell = once.outputWriter(StandardCharsets.UTF_8)) {
                tell.write(scratch + System.lineSeparator());
                tell.flush();
                assertThat(says.readLine()).isEqualTo("3");
                once.destroy(); // ends in order, and writes the archive
                once.onExit().join();
            }
        }

        Process started() throws IOException {
            return started("-XX:SharedArchiveFile=" + archive);
        }

        private Process started(String archiving) throws IOException {
            return new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            archiving,
                            "-Xshare:auto",
                            "-Xlog:disable",
                            "-Xlog:all=off",
                            "-XX:TieredStopAtLevel=1",
                            "-XX:+UseSerialGC",
                            "-Xmx64m",
                            // A killed program leaves its copy of the database's machine code behind: it goes with the
                            // folder.
                            "-Dorg.sqlite.tmpdir=" + archive.getParent(),
                            "-cp",
                            classPath,
                            Scribe.class.getName())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        }

        /** An archive needs files on the class path: our own folders of classes are put into one. */
        private static String onlyFiles(Path folder) throws IOException {
            Path jar = folder.resolve("classes.jar");
            StringBuilder path = new StringBuilder(jar.toString());
            try (OutputStream out = Files.newOutputStream(jar);
                    JarOutputStream into = new JarOutputStream(out)) {
                for (String entry :
                        List.of(System.getProperty("java.class.path").split(File.pathSeparator))) {
                    if (Files.isDirectory(Path.of(entry))) {
                        pack(Path.of(entry), into);
                    } else {
                        path.append(File.pathSeparator).append(entry);
                    }
                }
            }
            return path.toString();
        }

        private static void pack(Path classes, JarOutputStream into) throws IOException {
            try (Stream<Path> all = Files.walk(classes)) {
                for (Path file : all.filter(Files::isRegularFile).toList()) {
                    String name = classes.relativize(file).toString();
                    if (name.contains("records") || name.startsWith("logback")) {
                        into.putNextEntry(new JarEntry(name));
                        Files.copy(file, into);
                        into.closeEntry();
                    }
                }
            }
        }
    }
}
