package trueseam.checks.script;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** Runs a script of the test resources with Debian's Python and its libraries, which the script {@code check} brings. */
public final class PythonScript {

    private static final String PYTHON = "/usr/bin/python3";

    private PythonScript() {}

    /**
     * Runs a script.
     *
     * @param beside the class in whose package its resource lies
     * @param script its name
     * @param folder where it reads and writes
     * @param more further arguments
     * @return the text files ending in csv that lie in the folder afterwards, by name
     * @throws IOException if a file cannot be read
     * @throws InterruptedException if the test is stopped
     */
    public static Map<String, List<String>> run(Class<?> beside, String script, Path folder, String... more)
            throws IOException, InterruptedException {
        Path copy = folder.resolve(script);
        try (InputStream in = beside.getResourceAsStream(script)) {
            Files.write(copy, in.readAllBytes());
        }
        List<String> command = new ArrayList<>(List.of(PYTHON, copy.toString(), folder.toString()));
        command.addAll(List.of(more));
        Path said = folder.resolve("said.txt");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        if (!process.waitFor(2, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new IOException(script + " did not end.");
        }
        if (process.exitValue() != 0) {
            throw new IOException("Debian's Python libraries are needed (tools/need-readers installs them): " + script
                    + " said:\n" + Files.readString(said));
        }
        Map<String, List<String>> tables = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".csv")).toList()) {
                tables.put(file.getFileName().toString(), Files.readAllLines(file));
            }
        }
        return tables;
    }
}
