package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Everything public is documented: the compiler's own doclint says so. */
class JavadocTest {

    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();

    @ParameterizedTest
    @ValueSource(strings = {"geometry", "garment", "intake", "drafting", "fitting", "output", "app"})
    void everyPublicTypeAndMethodIsDocumented(String room) throws IOException {
        List<String> missing = new ArrayList<>();
        for (Diagnostic<? extends JavaFileObject> found : doclint(sources(room))) {
            String said = found.getMessage(null);
            if ((said.contains("no comment") || said.contains("no @")) && !isCompactConstructor(found)) {
                missing.add(
                        ROOT.relativize(Path.of(found.getSource().toUri())) + ":" + found.getLineNumber() + " " + said);
            }
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void everyPackageSaysWhatItIs() throws IOException {
        List<String> silent = new ArrayList<>();
        for (String room : List.of("geometry", "garment", "intake", "drafting", "fitting", "output", "app")) {
            for (Path source : sources(room)) {
                Path info = source.resolveSibling("package-info.java");
                if (!Files.exists(info)) {
                    silent.add(ROOT.relativize(source.getParent()).toString());
                }
            }
        }
        assertThat(silent).isEmpty();
    }

    private static List<Path> sources(String room) throws IOException {
        try (Stream<Path> files = Files.walk(ROOT.resolve(room).resolve("src/main/java"))) {
            List<Path> found = files.filter(f -> f.toString().endsWith(".java")).toList();
            assertThat(found).as("sources of " + room).hasSizeGreaterThan(5);
            return found;
        }
    }

    private static List<Diagnostic<? extends JavaFileObject>> doclint(List<Path> sources) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        DiagnosticCollector<JavaFileObject> found = new DiagnosticCollector<>();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(found, null, null)) {
            compiler.getTask(
                            new StringWriter(),
                            files,
                            found,
                            List.of(
                                    "-proc:none",
                                    "-Xdoclint:missing/public",
                                    "-Xmaxwarns",
                                    "10000",
                                    "-d",
                                    Files.createTempDirectory("doclint").toString()),
                            null,
                            files.getJavaFileObjectsFromPaths(sources))
                    .call();
        }
        return found.getDiagnostics();
    }

    /** The components of a record are documented on the record; its compact constructor says the same thing. */
    private static boolean isCompactConstructor(Diagnostic<? extends JavaFileObject> found) throws IOException {
        String line = found.getSource()
                .getCharContent(true)
                .toString()
                .lines()
                .skip(found.getLineNumber() - 1)
                .findFirst()
                .orElse("");
        return line.strip().matches("public \\w+ \\{");
    }
}
