package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The list of libraries in docs/dependencies.md is what the poms say. */
class DependenciesTest {

    private static final Path ROOT = root();

    private static Path root() {
        Path here = Path.of("").toAbsolutePath();
        return Files.exists(here.resolve("docs")) ? here : here.getParent();
    }

    private static final Pattern MANAGED = Pattern.compile("<dependency>\\s*<groupId>([^<]+)</groupId>\\s*"
            + "<artifactId>([^<]+)</artifactId>\\s*<version>([^<]+)</version>");

    private static final Pattern LISTED =
            Pattern.compile("(?m)^\\| ([\\w.-]+:[\\w.-]+) \\| ([\\w.-]+) \\| [^|]+ \\| [^|]+ \\|$");

    private static String version(String pom, String written) {
        if (!written.startsWith("${")) {
            return written;
        }
        String property = written.substring(2, written.length() - 1);
        return pom.replaceAll("(?s).*<" + Pattern.quote(property) + ">([^<]+)<.*", "$1");
    }

    @Test
    void theListHasEveryLibraryOfThePomsInItsVersionAndNoOther() throws IOException {
        String properties = Files.readString(ROOT.resolve("pom.xml"));
        Set<String> wanted = new TreeSet<>();
        try (var poms = Files.find(ROOT, 2, (path, what) -> path.endsWith("pom.xml"))) {
            for (Path pom : poms.toList()) {
                MANAGED.matcher(Files.readString(pom))
                        .results()
                        .filter(one -> !one.group(1).equals("trueseam"))
                        .forEach(one -> wanted.add(
                                one.group(1) + ":" + one.group(2) + " " + version(properties, one.group(3))));
            }
        }
        Set<String> listed = LISTED.matcher(Files.readString(ROOT.resolve("docs/dependencies.md")))
                .results()
                .map(one -> one.group(1) + " " + one.group(2))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(wanted).hasSizeGreaterThan(20);
        assertThat(listed).isEqualTo(wanted);
    }
}
