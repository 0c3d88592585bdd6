package trueseam.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.records.access.Access;
import trueseam.records.archive.ArchiveException;
import trueseam.records.archive.Brought;
import trueseam.records.archive.Made;
import trueseam.records.pattern.KeptPattern;
import trueseam.records.pattern.KeptTable;
import trueseam.records.person.Person;
import trueseam.records.person.Reminding;
import trueseam.records.person.TapeReading;
import trueseam.records.project.KeptFit;
import trueseam.records.project.KeptPrint;
import trueseam.records.project.KeptProject;
import trueseam.records.project.ProjectChange;
import trueseam.records.project.ProjectState;
import trueseam.records.sitting.KeptSitting;

/** An archive goes out of one database and comes back into the other; anything wrong with it is refused whole. */
@ParameterizedClass
@CsvSource({"IN_FILE, AT_SERVER", "AT_SERVER, IN_FILE"})
class ArchiveTest {

    /** What CSV, JSON and two databases like to change: quotes, commas, line ends, blanks, signs beyond ASCII and beyond 16 bits. */
    private static final String NASTY = " \"Ärmel\", ½\r\n; 'x' \\n =1+1 \t𝔸 ";

    @Parameter(0)
    private Books from;

    @Parameter(1)
    private Books to;

    @TempDir
    private Path folder;

    private String fromPlace;
    private String toPlace;
    private RecordBook old;
    private RecordBook other;
    private Person anna;

    @BeforeEach
    void fill() {
        fromPlace = from.fresh();
        toPlace = to.fresh();
        old = from.open(fromPlace);
        other = to.open(toPlace);
        Drawer drawer = old.drawer(RecordBook.SINGLE_OWNER);
        String photo = drawer.files().keep(new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, 0, 10, 13});
        anna = drawer.people().add(Person.named(NASTY, "in", "women"));
        anna = drawer.people().change(anna.withNote("left\nshoulder").withPhoto(Optional.of(photo)));
        Person berta = drawer.people().add(Person.named("Berta", "cm", ""));
        drawer.days()
                .replaceOwn(
                        anna.id(),
                        List.of(Invented.day("2024-01-01", Invented.inches("bust girth", 36.1), unread("37 ?"))));
        project(drawer, "a1a1a1a1", anna, "<svg xmlns=\"http://www.w3.org/2000/svg\"/>");
        project(drawer, "b2b2b2b2", berta, "%PDF-1.7 invented");
        String table = drawer.files().keep("of no project".getBytes(StandardCharsets.UTF_8));
        drawer.tables().add(new KeptTable("", "our class", "measured by us", table, false, 0));
        drawer.reminding().tell(new Reminding.Pause(9, 2));
        drawer.trail().note(RecordBook.SINGLE_OWNER, anna.id(), "looked");
    }

    private static TapeReading unread(String typed) {
        return new TapeReading("hip girth", "left", typed, "in", "tape", NASTY, OptionalDouble.empty());
    }

    /** A project with everything that can hang on one. */
    static void project(Drawer drawer, String id, Person person, String file) {
        String mark = drawer.files().keep(file.getBytes(StandardCharsets.UTF_8));
        KeptPattern pattern = drawer.patterns()
                .keep(KeptPattern.of(
                        "file/" + mark, "a pattern", "bodice", "misses", List.of(new KeptPattern.InFile(mark, NASTY))));
        KeptProject.Head head =
                new KeptProject.Head("Dress", Optional.of(person.id()), Optional.of(pattern.id()), "14");
        drawer.projects().begin(Invented.begun(id, head, "{\"typed\":\"37 ½\",\"mm\":0.10,\"n\":1e3,\"x\":0.1}"));
        drawer.projects()
                .change(new ProjectChange(
                        id,
                        1,
                        2,
                        head,
                        3,
                        List.of(),
                        List.of(
                                new ProjectState(2, NASTY, "f", "no JSON" + NASTY),
                                new ProjectState(3, "", "", "{\"file\":\"" + mark + "\",\"of\":[1,2.5,null,true]}"))));
        drawer.days()
                .replaceOf(
                        id,
                        person.id(),
                        List.of(Invented.day("", Invented.inches("bust girth", 1.0 / 3)), Invented.day("2026-10-01")));
        drawer.sittings()
                .replaceOf(id, List.of(new KeptSitting("2026-11-01", List.of(Invented.pinned("sway-back+", 3.0 / 8)))));
        String report = drawer.files().keep(("{\"report\":\"" + id + "\"}").getBytes(StandardCharsets.UTF_8));
        KeptFit fit = drawer.fits().keep(new KeptFit("", id, 2, true, report, Optional.of(mark), 0));
        drawer.fits().printed(new KeptPrint("", id, fit.id(), "steps", "a4", 0));
    }

    @AfterEach
    void close() {
        old.close();
        other.close();
    }

    private Path written(Optional<String> person) {
        Path file = folder.resolve("book.zip");
        try (OutputStream out = Files.newOutputStream(file)) {
            old.drawer(RecordBook.SINGLE_OWNER)
                    .archive()
                    .write(out, person, 1, id -> List.of(new Made("step-sheet.pdf", new byte[] {'%', 'P', 'D', 'F'})));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file;
    }

    private Brought back(Path file) {
        return other.drawer(RecordBook.SINGLE_OWNER).archive().bringBack(file);
    }

    @Test
    void everythingComesBackIntoTheOtherDatabaseRowByRow() {
        Brought came = back(written(Optional.empty()));
        assertThat(came).isEqualTo(new Brought(2, 2, 2, 0));
        var before = EveryRow.of(from, fromPlace);
        assertThat(before)
                .allSatisfy((table, rows) -> assertThat(rows).as(table).isNotEmpty());
        assertThat(EveryRow.of(to, toPlace)).isEqualTo(before);
    }

    @Test
    void onePersonComesBackWithAllOfHersAndNothingOfOthers() throws IOException {
        Path file = written(Optional.of(anna.id()));
        assertThat(back(file)).isEqualTo(new Brought(1, 1, 1, 0));
        var rows = EveryRow.of(to, toPlace);
        assertThat(rows.toString()).doesNotContain("b2b2b2b2").doesNotContain("Berta");
        assertThat(rows.get("file")).hasSize(3); // her photo, her pattern, her report
        rows.forEach((table, lines) ->
                assertThat(EveryRow.of(from, fromPlace).get(table)).as(table).containsAll(lines));
        assertThat(rows.get("reading")).hasSize(3);
        try (ZipFile zip = new ZipFile(file.toFile())) {
            assertThat(zip.stream().map(ZipEntry::getName))
                    .contains("people.csv", "projects/a1a1a1a1.json", "made/a1a1a1a1/step-sheet.pdf", "access.csv")
                    .anyMatch(name -> name.matches("patterns/[0-9a-f]{64}\\.svg"))
                    .anyMatch(name -> name.matches("photos/[0-9a-f]{64}\\.jpg"))
                    .anyMatch(name -> name.matches("reports/[0-9a-f]{64}\\.json"));
        }
    }

    @Test
    void whoTookAnArchiveAwayStandsInTheTrailOfEachPersonInIt() {
        written(Optional.of(anna.id()));
        Drawer drawer = old.drawer(RecordBook.SINGLE_OWNER);
        assertThat(drawer.trail().of(anna.id())).extracting(Access::what).contains("took away");
        assertThat(drawer.people().list("berta", true))
                .allSatisfy(berta -> assertThat(drawer.trail().of(berta.id())).isEmpty());
    }

    @Test
    void anArchiveOfAnEarlierVersionWithoutReminderAndWithSharingComesBack() throws IOException {
        Map<String, byte[]> files = entries(written(Optional.empty()));
        listed(files, "people.csv", earlier(files.get("people.csv")));
        unlisted(files, "measure-again.csv");
        assertThat(back(zipped(files))).isEqualTo(new Brought(2, 2, 2, 0));
        assertThat(other.drawer(RecordBook.SINGLE_OWNER).reminding().told()).isEmpty();
    }

    /** As it was when a person was shared with all classes or none. */
    private static byte[] earlier(byte[] people) {
        String csv = new String(people, StandardCharsets.UTF_8);
        return csv.replaceFirst("\n", ",shared\n")
                .replaceAll("\"(\\d+)\"\n", "\"$1\",\"1\"\n")
                .getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void whatIsThereAlreadyIsLeftAsItIs() {
        Path file = written(Optional.empty());
        back(file);
        Drawer drawer = other.drawer(RecordBook.SINGLE_OWNER);
        drawer.people().change(drawer.people().find(anna.id()).orElseThrow().withNote("changed since"));
        drawer.days().replaceOwn(anna.id(), List.of());
        drawer.projects().delete("b2b2b2b2");
        Brought again = back(file);
        assertThat(again.projects()).isEqualTo(1);
        assertThat(again.sentence()).contains("1 project,").contains("left as they are there");
        assertThat(drawer.people().find(anna.id()).orElseThrow().note()).isEqualTo("changed since");
        assertThat(drawer.days().own(anna.id())).isEmpty();
        assertThat(drawer.projects().states("b2b2b2b2")).hasSize(3);
    }

    @Test
    void aPatternOfTheSameFileIsNotBroughtTwice() {
        Drawer drawer = other.drawer(RecordBook.SINGLE_OWNER);
        String mark = drawer.files().keep("%PDF-1.7 invented".getBytes(StandardCharsets.UTF_8));
        String known = drawer.patterns()
                .keep(KeptPattern.of("file/" + mark, "mine", "bodice", "misses", List.of()))
                .id();
        assertThat(back(written(Optional.empty()))).isEqualTo(new Brought(2, 2, 1, 1));
        assertThat(drawer.projects().find("b2b2b2b2").orElseThrow().head().pattern())
                .contains(known);
    }

    @Test
    void anotherOwnersRowsCannotBeTakenOrSeen() throws Exception {
        back(written(Optional.empty()));
        to.addAccount(toPlace, 2);
        var before = EveryRow.of(to, toPlace);
        assertThatThrownBy(() -> other.drawer(2).archive().bringBack(folder.resolve("book.zip")))
                .isInstanceOf(ArchiveException.class)
                .hasMessageContaining("under another owner");
        assertThat(EveryRow.of(to, toPlace)).isEqualTo(before);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertThat(other.drawer(2).archive().write(out, Optional.empty(), 2, id -> List.of()))
                .isZero();
        assertThat(other.drawer(2).archive().write(out, Optional.of(anna.id()), 2, id -> List.of()))
                .isZero();
    }

    @Test
    void aBrokenOrHostileArchiveIsRefusedInOneSentenceAndNothingIsWritten() throws IOException {
        Path whole = written(Optional.empty());
        refused("no whole zip", bytes -> {}, Files.write(folder.resolve("cut.zip"), cut(Files.readAllBytes(whole))));
        refused("no whole zip", bytes -> {}, Files.writeString(folder.resolve("text.zip"), "not a zip"));
        refused("has no manifest.json", all -> all.remove("manifest.json"), whole);
        refused("\"people.csv\" is missing", all -> all.remove("people.csv"), whole);
        refused("\"../../evil.sh\"", all -> all.put("../../evil.sh", new byte[1]), whole);
        refused("\"/etc/cron.d/x\"", all -> all.put("/etc/cron.d/x", new byte[1]), whole);
        refused("\"a\\b\"", all -> all.put("a\\b", new byte[1]), whole);
        refused("\"more.txt\" is not in its list", all -> all.put("more.txt", new byte[1]), whole);
        refused(
                "people.csv is not as it was written",
                all -> all.computeIfPresent("people.csv", ArchiveTest::other),
                whole);
        refused("unpacks to more than it may", all -> all.put("people.csv", new byte[300 << 20]), whole);
        refused("unpacks to far more", all -> listed(all, "files/bomb.txt", new byte[100 << 20]), whole);
        refused("is no archive of a record book", all -> all.put("manifest.json", text("{\"files\":[]}")), whole);
        refused(
                "people.csv has not the columns",
                all -> listed(all, "people.csv", text("id,label\n\"x\",\"y\"\n")),
                whole);
        refused("hangs on something", all -> listed(all, "days.csv", text(days("nobody"))), whole);
        refused(
                "has no number in place",
                all -> listed(all, "days.csv", text(days(anna.id()).replace(",0,", ",zero,"))),
                whole);
        refused("is no JSON", all -> listed(all, "projects/a1a1a1a1.json", text("{")), whole);
        refused(
                "has no states",
                all -> {
                    String json = new String(all.get("projects/a1a1a1a1.json"), StandardCharsets.UTF_8);
                    listed(all, "projects/a1a1a1a1.json", text(json.replace("\"states\"", "\"status\"")));
                },
                whole);
    }

    private String days(String person) {
        return "id,person_id,project_id,place,measured_on,note\n\"d1\",\"" + person + "\",\"a1a1a1a1\",0,\"\",\"\"\n";
    }

    private void refused(String because, Consumer<Map<String, byte[]>> how, Path whole) throws IOException {
        Path file = whole;
        if (whole.getFileName().toString().equals("book.zip")) {
            Map<String, byte[]> all = entries(whole);
            how.accept(all);
            file = zipped(all);
        }
        Path broken = file;
        assertThatThrownBy(() -> back(broken))
                .isInstanceOf(ArchiveException.class)
                .hasMessageStartingWith("This archive cannot be brought back: ")
                .hasMessageContaining(because)
                .hasMessageEndingWith("; nothing of it was taken.");
        assertThat(EveryRow.of(to, toPlace)).as(because).allSatisfy((table, rows) -> assertThat(rows)
                .isEmpty());
    }

    /** Puts a file in with a manifest that agrees, as only somebody who means it would. */
    private static void listed(Map<String, byte[]> all, String name, byte[] content) {
        all.put(name, content);
        String entry =
                "{\"name\":\"" + name + "\",\"bytes\":" + content.length + ",\"sha256\":\"" + sha(content) + "\"}";
        all.put(
                "manifest.json",
                text(without(all, name).replaceFirst("(?s)\"files\" : \\[", "\"files\" : [ " + entry + ",")));
    }

    private static void unlisted(Map<String, byte[]> all, String name) {
        all.remove(name);
        all.put("manifest.json", text(without(all, name)));
    }

    private static String without(Map<String, byte[]> all, String name) {
        String manifest = new String(all.get("manifest.json"), StandardCharsets.UTF_8);
        return manifest.replaceAll("(?s)\\{\\s*\"name\" : \"" + name.replace(".", "\\.") + "\"[^}]*\\},", "");
    }

    private static String sha(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (java.security.NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] other(String name, byte[] content) {
        byte[] changed = content.clone();
        changed[content.length - 3] ^= 1;
        return changed;
    }

    private static byte[] cut(byte[] content) {
        return java.util.Arrays.copyOf(content, content.length / 2);
    }

    private static Map<String, byte[]> entries(Path file) throws IOException {
        Map<String, byte[]> all = new LinkedHashMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                all.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        }
        return all;
    }

    private Path zipped(Map<String, byte[]> all) throws IOException {
        Path file = folder.resolve("broken.zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (var entry : all.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
                zip.closeEntry();
            }
        }
        return file;
    }
}
