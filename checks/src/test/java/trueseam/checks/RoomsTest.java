package trueseam.checks;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The arrows of dependency of ARCHITECTURE.md, and what no room may do. */
class RoomsTest {

    private static final List<String> ROOMS = List.of(
            "geometry", "garment", "intake", "drafting", "fitting", "cloth", "output", "records", "worktable", "app");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("trueseam");

    private static final String[] PURE = {
        "trueseam.geometry..", "trueseam.garment..", "trueseam.drafting..", "trueseam.fitting.."
    };

    /** The one class of each pure room that reads the CSV resources which ship inside it. */
    private static final DescribedPredicate<JavaClass> READS_RESOURCES = DescribedPredicate.describe(
            "reads resources that ship with the room",
            c -> c.getName().startsWith("trueseam.garment.table.ResourceTable")
                    || c.getName().startsWith("trueseam.drafting.Estimate"));

    @Test
    void classesOfEveryRoomAreLookedAt() {
        // A rule over nothing proves nothing.
        for (String room : ROOMS) {
            assertThat(CLASSES.stream().filter(c -> c.getPackageName().startsWith("trueseam." + room)))
                    .as(room)
                    .hasSizeGreaterThan(5);
        }
    }

    @Test
    void arrowsOfDependencyPointLeft() {
        layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .layer("geometry")
                .definedBy("trueseam.geometry..")
                .layer("garment")
                .definedBy("trueseam.garment..")
                .layer("intake")
                .definedBy("trueseam.intake..")
                .layer("drafting")
                .definedBy("trueseam.drafting..")
                .layer("fitting")
                .definedBy("trueseam.fitting..")
                .layer("cloth")
                .definedBy("trueseam.cloth..")
                .layer("output")
                .definedBy("trueseam.output..")
                .layer("records")
                .definedBy("trueseam.records..")
                .layer("worktable")
                .definedBy("trueseam.worktable..")
                .layer("app")
                .definedBy("trueseam.app..")
                .whereLayer("app")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("worktable")
                .mayOnlyBeAccessedByLayers("app")
                .whereLayer("records")
                .mayOnlyBeAccessedByLayers("worktable", "app")
                .whereLayer("output")
                .mayOnlyBeAccessedByLayers("worktable", "app")
                .whereLayer("cloth")
                .mayOnlyBeAccessedByLayers("output", "worktable", "app")
                .whereLayer("fitting")
                .mayOnlyBeAccessedByLayers("output", "worktable", "app")
                .whereLayer("drafting")
                .mayOnlyBeAccessedByLayers("worktable", "app")
                .whereLayer("intake")
                .mayOnlyBeAccessedByLayers("worktable", "app")
                .whereLayer("garment")
                .mayOnlyBeAccessedByLayers(
                        "intake", "drafting", "fitting", "cloth", "output", "records", "worktable", "app")
                .whereLayer("geometry")
                .mayOnlyBeAccessedByLayers(
                        "garment", "intake", "drafting", "fitting", "cloth", "output", "worktable", "app")
                .because("data flows from left to right and arrows of dependency only point left")
                .check(CLASSES);
    }

    @Test
    void noPackagesDependOnEachOtherInACircle() {
        slices().matching("trueseam.(**)")
                .should()
                .beFreeOfCycles()
                .because("a circle of packages is one package in disguise")
                .check(CLASSES);
    }

    @Test
    void eachLibraryStaysInItsRooms() {
        only("org.apache.pdfbox..", "trueseam.output..", "trueseam.intake.pdf..");
        only("org.locationtech.jts..", "trueseam.geometry..", "trueseam.cloth..");
        only("picocli..", "trueseam.app..");
        only(
                "com.fasterxml.jackson..",
                "trueseam.intake..",
                "trueseam.output..",
                "trueseam.records.internal..",
                "trueseam.worktable..",
                "trueseam.app..");
        only("io.javalin..", "trueseam.worktable..");
        only("gg.jte..", "trueseam.worktable..");
        for (String library : List.of(
                "org.jdbi..",
                "org.sqlite..",
                "org.postgresql..",
                "com.zaxxer..",
                "org.flywaydb..",
                "org.bouncycastle..")) {
            only(library, "trueseam.records.internal..");
        }
        only("java.sql..", "trueseam.records.internal..");
        only("org.hipparchus..", "trueseam.drafting..", "trueseam.geometry..");
    }

    private static void only(String library, String... rooms) {
        noClasses()
                .that()
                .resideOutsideOfPackages(rooms)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .because("each library has its named rooms, so that it can be changed there")
                .check(CLASSES);
    }

    @Test
    void pureRoomsTouchNoFilesNoClockNoDatabaseAndNoStream() {
        noClasses()
                .that()
                .resideInAnyPackage(PURE)
                .and(DescribedPredicate.not(READS_RESOURCES))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.io..", "java.nio.file..", "java.sql..", "java.net..")
                .because("the same input must give the same output, on any machine")
                .check(CLASSES);
        noClasses()
                .that()
                .resideInAnyPackage(PURE)
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(System.class, "getProperty", String.class)
                .because("clock, streams and settings are passed in")
                .check(CLASSES);
    }

    @Test
    void nothingReachesIntoAnotherPackagesInternals() {
        for (String room : ROOMS) {
            noClasses()
                    .that()
                    .resideOutsideOfPackage("trueseam." + room + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("trueseam." + room + "..internal..")
                    .because("internal packages are shared inside a room and not offered outside")
                    .check(CLASSES);
        }
    }

    @Test
    void noStaticFieldCanChange() {
        noFields()
                .that()
                .areStatic()
                .and()
                .areDeclaredInClassesThat(DescribedPredicate.describe(
                        "written by us",
                        c -> !c.getName().contains("$SwitchMap") && !c.getName().matches(".*\\$\\d+")))
                .should(new com.tngtech.archunit.lang.ArchCondition<>("be changeable") {
                    @Override
                    public void check(
                            com.tngtech.archunit.core.domain.JavaField field,
                            com.tngtech.archunit.lang.ConditionEvents events) {
                        boolean synthetic = field.getModifiers().contains(JavaModifier.SYNTHETIC);
                        boolean changeable = !field.getModifiers().contains(JavaModifier.FINAL);
                        if (!synthetic) {
                            events.add(new com.tngtech.archunit.lang.SimpleConditionEvent(
                                    field, changeable, field.getFullName() + " is not final"));
                        }
                    }
                })
                .because("there is no global current anything")
                .check(CLASSES);
    }

    @Test
    void noClassIsAHeapOfThisAndThat() {
        noClasses()
                .should()
                .haveNameMatching(".*(Utils?|Helper|Manager|Processor)")
                .because("a class has one idea and is named for it")
                .check(CLASSES);
    }

    @Test
    void nobodyRaisesABareException() {
        noClasses()
                .that()
                .areNotAssignableTo(Throwable.class)
                .should()
                .callConstructor(RuntimeException.class, String.class)
                .orShould()
                .callConstructor(Exception.class, String.class)
                .because("an error carries the type of its room")
                .check(CLASSES);
    }
}
