package trueseam.worktable;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What other people's pages and programs cannot do, over real connections. */
class GuardTest {

    @TempDir
    private Path data;

    private Worktable worktable;
    private int port;
    private String secret;
    private final HttpClient client = HttpClient.newHttpClient();

    @BeforeEach
    void open() throws IOException {
        worktable = Worktable.open(data, 0);
        port = URI.create(worktable.address()).getPort();
        secret = Files.readString(data.resolve("secret"));
    }

    @AfterEach
    void close() {
        worktable.close();
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(URI.create("http://localhost:" + port + path))
                        .header("Accept", "text/html")
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, String form, String... headers)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://localhost:" + port + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    /** The address of a project that was just begun. */
    private String begun() throws IOException, InterruptedException {
        return post("/projects", "name=Own&secret=" + secret)
                .headers()
                .firstValue("Location")
                .orElseThrow()
                .replaceAll("/[a-z]+$", "");
    }

    private HttpResponse<String> bring(String project, String name, String content)
            throws IOException, InterruptedException {
        String boundary = "----trueseam";
        String body = "--" + boundary + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"" + name
                + "\"\r\nContent-Type: image/svg+xml\r\n\r\n" + content + "\r\n--" + boundary
                + "\r\nContent-Disposition: form-data; name=\"version\"\r\n\r\n1\r\n--" + boundary + "--\r\n";
        return client.send(
                HttpRequest.newBuilder(URI.create("http://localhost:" + port + project + "/pattern/bring"))
                        .header("Content-Type", "multipart/form-data; boundary=" + boundary)
                        .header("Trueseam-Secret", secret)
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    /** One request by hand, so that its Host header can be anything. */
    private String raw(String request) throws IOException {
        try (Socket socket = new Socket(java.net.InetAddress.getLoopbackAddress(), port)) {
            OutputStream out = socket.getOutputStream();
            out.write(request.getBytes(StandardCharsets.ISO_8859_1));
            out.flush();
            InputStream in = socket.getInputStream();
            return new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        }
    }

    @Test
    void aForeignNameThatLeadsHereIsNotAnswered() throws IOException {
        String answer = raw("GET / HTTP/1.1\r\nHost: rebound.example:" + port + "\r\nConnection: close\r\n\r\n");
        assertThat(answer).startsWith("HTTP/1.1 403").doesNotContain("Begin a project");
    }

    @Test
    void itListensOnThisMachineAlone() throws IOException {
        try (Socket loopback = new Socket(java.net.InetAddress.getLoopbackAddress(), port)) {
            assertThat(loopback.isConnected()).isTrue();
        }
        for (var network : java.util.Collections.list(java.net.NetworkInterface.getNetworkInterfaces())) {
            for (var address : java.util.Collections.list(network.getInetAddresses())) {
                if (!address.isLoopbackAddress() && address instanceof java.net.Inet4Address) {
                    org.assertj.core.api.Assertions.assertThatThrownBy(() -> new Socket(address, port).close())
                            .isInstanceOf(IOException.class);
                }
            }
        }
    }

    @Test
    void aChangeNeedsTheSecretOfTheDataFolder() throws IOException, InterruptedException {
        assertThat(post("/projects", "name=Foreign").statusCode()).isEqualTo(403);
        assertThat(post("/projects", "name=Foreign&secret=guessed").statusCode())
                .isEqualTo(403);
        assertThat(post("/projects", "name=Own&secret=" + secret).statusCode()).isEqualTo(303);
    }

    @Test
    void aChangeFromAnotherPagesOriginIsRefusedEvenWithTheSecret() throws IOException, InterruptedException {
        HttpResponse<String> answer =
                post("/projects", "name=Foreign&secret=" + secret, "Origin", "http://elsewhere.example");
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).contains("only Trueseam's own pages may");
        assertThat(post("/projects", "name=Own&secret=" + secret, "Origin", "http://localhost:" + port)
                        .statusCode())
                .isEqualTo(303);
    }

    @Test
    void everyAnswerForbidsInlineScriptsAndFraming() throws IOException, InterruptedException {
        for (String path : new String[] {"/", "/static/base.css", "/nowhere"}) {
            var headers = get(path).headers();
            assertThat(headers.firstValue("Content-Security-Policy").orElse(""))
                    .as(path)
                    .contains("default-src 'none'")
                    .contains("script-src 'self'")
                    .contains("frame-ancestors 'none'")
                    .doesNotContain("unsafe");
            assertThat(headers.firstValue("X-Content-Type-Options")).as(path).contains("nosniff");
        }
    }

    @Test
    void noPageNamesAPathOfThisMachine() throws IOException, InterruptedException {
        String project = begun();
        for (String path :
                new String[] {"/", "/nowhere", project + "/pattern", project + "/chart", "/p/00000000/chart"}) {
            assertThat(get(path).body())
                    .as(path)
                    .doesNotContain(data.toString())
                    .doesNotContain(System.getProperty("user.home"))
                    .doesNotContain("Exception");
        }
    }

    @Test
    void anotherProjectsMarkOrAPathIsNoWayOut() throws IOException, InterruptedException {
        assertThat(get("/p/..%2f..%2fsecret/pattern").statusCode()).isBetween(400, 404);
        assertThat(get("/static/..%2f..%2f..%2flogback.xml").statusCode()).isBetween(400, 404);
        HttpResponse<String> none = get("/p/0123456789abcdef/pattern");
        assertThat(none.statusCode()).isEqualTo(404);
        assertThat(none.body()).contains("There is no such project");
    }

    @Test
    void anUploadAboveTheLimitIsRefusedInOneSentence() throws IOException, InterruptedException {
        HttpResponse<String> answer = bring(begun(), "big.svg", "x".repeat(33 << 20));
        assertThat(answer.statusCode()).isEqualTo(413);
        assertThat(answer.body()).contains("32 MB");
    }

    @Test
    void aPatternFileThatUnfoldsWithoutEndIsRefused() throws IOException, InterruptedException {
        StringBuilder bomb = new StringBuilder("<?xml version=\"1.0\"?><!DOCTYPE svg [<!ENTITY a \"aaaaaaaaaa\">");
        for (char c = 'b'; c <= 'j'; c++) {
            String before = "&" + (char) (c - 1) + ";";
            bomb.append("<!ENTITY ")
                    .append(c)
                    .append(" \"")
                    .append(before.repeat(10))
                    .append("\">");
        }
        bomb.append("]><svg xmlns=\"http://www.w3.org/2000/svg\"><text>&j;</text></svg>");
        HttpResponse<String> answer = bring(begun(), "bomb.svg", bomb.toString());
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body())
                .contains("class=\"problem\"")
                .contains("bomb.svg")
                .doesNotContain("aaaaaaaaaa");
    }
}
