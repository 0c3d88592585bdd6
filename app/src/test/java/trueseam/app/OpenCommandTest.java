package trueseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Opens the worktable as its user does: a process of its own, ended from outside. */
class OpenCommandTest {

    @TempDir
    private Path folder;

    private Process start(String... args) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                "trueseam.app.Main",
                "open",
                "--no-browser"));
        command.addAll(List.of(args));
        return new ProcessBuilder(command).redirectErrorStream(true).start();
    }

    /** The first thing that it says. */
    private static String address(BufferedReader says) throws IOException {
        String line = says.readLine();
        assertThat(line).startsWith("The worktable is open at http://localhost:");
        return line.substring(line.indexOf("http"));
    }

    private static HttpResponse<String> get(String address) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(address)).build(),
                        HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    @Test
    void whatWasBegunIsThereAfterTheProgramWasEndedAndStartedAnew() throws IOException, InterruptedException {
        Path data = folder.resolve("data");
        Process first = start("--port", "0", "--data", data.toString());
        try (BufferedReader says = first.inputReader(StandardCharsets.UTF_8)) {
            String address = address(says);
            assertThat(get(address).body()).contains("Begin a project");
            String secret = Files.readString(data.resolve("secret"));
            HttpResponse<String> begun = HttpClient.newHttpClient()
                    .send(
                            HttpRequest.newBuilder(URI.create(address + "projects"))
                                    .header("Content-Type", "application/x-www-form-urlencoded")
                                    .POST(HttpRequest.BodyPublishers.ofString("name=Winter+skirt&secret=" + secret))
                                    .build(),
                            HttpResponse.BodyHandlers.ofString());
            assertThat(begun.statusCode()).isEqualTo(303);
        } finally {
            first.destroyForcibly().waitFor();
        }
        Process second = start("--port", "0", "--data", data.toString());
        try (BufferedReader says = second.inputReader(StandardCharsets.UTF_8)) {
            assertThat(get(address(says)).body()).contains("Winter skirt");
            second.destroy();
            assertThat(second.waitFor(20, TimeUnit.SECONDS))
                    .as("it ends when asked to")
                    .isTrue();
        } finally {
            second.destroyForcibly();
        }
    }

    @Test
    void aSecondOneOnTheSameFolderSaysSoInOneSentence() throws IOException, InterruptedException {
        Process first = start("--port", "0", "--data", folder.toString());
        try (BufferedReader says = first.inputReader(StandardCharsets.UTF_8)) {
            address(says);
            Process second = start("--port", "0", "--data", folder.toString());
            String said;
            try (BufferedReader other = second.inputReader(StandardCharsets.UTF_8)) {
                said = String.join("\n", other.lines().toList());
            }
            assertThat(second.waitFor()).isEqualTo(2);
            assertThat(said).contains("in use by another running Trueseam").doesNotContain("\tat ");
            assertThat(said.lines()).hasSize(1);
        } finally {
            first.destroyForcibly().waitFor();
        }
    }

    @Test
    void aPortThatIsTakenIsSaidInOneSentence() throws IOException, InterruptedException {
        try (java.net.ServerSocket taken = new java.net.ServerSocket(0, 1, java.net.InetAddress.getLoopbackAddress())) {
            Process process = start("--port", String.valueOf(taken.getLocalPort()), "--data", folder.toString());
            String said;
            try (BufferedReader says = process.inputReader(StandardCharsets.UTF_8)) {
                said = String.join("\n", says.lines().toList());
            }
            assertThat(process.waitFor()).isEqualTo(2);
            assertThat(said)
                    .contains("Port " + taken.getLocalPort())
                    .contains("--port")
                    .doesNotContain("\tat ");
        }
    }
}
