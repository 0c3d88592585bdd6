package trueseam.worktable;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trueseam.records.RecordBook;
import trueseam.records.account.Accounts;
import trueseam.records.account.Role;
import trueseam.records.person.Person;
import trueseam.worktable.project.PersonPart;
import trueseam.worktable.project.Project;
import trueseam.worktable.project.Shelf;
import trueseam.worktable.studio.Reach;

/** A studio with invented accounts: an owner, two teachers, two students; Ann is in Tea's class, Bill is in Theo's. */
final class Studio implements AutoCloseable {

    static final String PASSWORD = "thimble ladder otter rain";

    private static final Pattern SECRET = Pattern.compile("name=\"secret\" content=\"([0-9a-f]+)\"");

    /** Somebody with a browser of her own: a cookie, and the secret of the page that she looks at. */
    static final class Visitor {
        private final Studio studio;
        private final List<String> cookies = new ArrayList<>();
        String cookie = "";
        String secret = "";

        Visitor(Studio studio) {
            this.studio = studio;
        }

        List<String> cookies() {
            return cookies;
        }

        HttpResponse<String> get(String path) throws IOException, InterruptedException {
            return send(request(path));
        }

        HttpResponse<String> post(String path, String form) throws IOException, InterruptedException {
            return send(request(path)
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .header("Trueseam-Secret", secret)
                    .POST(HttpRequest.BodyPublishers.ofString(form)));
        }

        HttpRequest.Builder request(String path) {
            HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://localhost:" + studio.port + path))
                    .header("Accept", "text/html");
            if (!cookie.isEmpty()) {
                request.header("Cookie", cookie);
            }
            return request;
        }

        HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
            HttpResponse<String> answer = studio.client.send(request.build(), HttpResponse.BodyHandlers.ofString());
            answer.headers().firstValue("Set-Cookie").ifPresent(set -> {
                cookies.add(set);
                cookie = set.replaceAll(";.*", "");
            });
            Matcher page = SECRET.matcher(answer.body());
            if (page.find()) {
                secret = page.group(1);
            }
            return answer;
        }

        HttpResponse<String> signIn(String name, String password) throws IOException, InterruptedException {
            get("/sign-in");
            HttpResponse<String> answer = post("/sign-in", "name=" + name + "&password=" + encoded(password));
            get("/");
            return answer;
        }
    }

    final Worktable worktable;
    final int port;
    final RecordBook book;
    final long teacher;
    final long ann;
    final long bo;
    final String classOfTea;
    /** Ann's: the first of a person whom she shares, the second of one whom she does not. */
    final List<String> annsProjects = new ArrayList<>();

    final List<String> annsPeople = new ArrayList<>();

    private final HttpClient client = HttpClient.newHttpClient();

    Studio(Path data) {
        this(data, Reach.thisMachine());
    }

    Studio(Path data, Reach reach) {
        worktable = Worktable.studio(data, Optional.empty(), Optional.empty(), reach, 0);
        port = worktable.port();
        book = RecordBook.inFile(data.resolve("record-book.sqlite"), Clock.systemUTC());
        Accounts accounts = book.studio().accounts();
        accounts.enter(accounts.invite(RecordBook.SINGLE_OWNER), "Irena", "irena", PASSWORD);
        teacher = account("Tea", Role.TEACHER);
        long other = account("Theo", Role.TEACHER);
        ann = account("Ann", Role.STUDENT);
        bo = account("Bill", Role.STUDENT);
        classOfTea = book.drawer(teacher).classes().begin("Monday");
        book.drawer(teacher).classes().add(classOfTea, ann);
        book.drawer(other).classes().add(book.drawer(other).classes().begin("Friday"), bo);
        fit("Ottilie", true);
        fit("Wanda", false);
    }

    private long account(String name, Role role) {
        Accounts accounts = book.studio().accounts();
        long id = accounts.add(name, role).id();
        accounts.enter(accounts.invite(id), name, name, PASSWORD);
        return id;
    }

    private void fit(String label, boolean shared) {
        PersonPart part = new PersonPart(
                label,
                "cm",
                "",
                List.of(new PersonPart.Day(
                        "2026-11-02", List.of(new PersonPart.Typed("bust girth", "", "97.5", "cm", "", "")), "")));
        annsProjects.add(new Shelf(book.drawer(ann))
                .begin(Project.named("Dress of " + label).with(part)));
        Person person = book.drawer(ann).people().list(label, true).get(0);
        if (shared) {
            book.drawer(ann).sharing().person(classOfTea, person.id(), true);
        }
        annsPeople.add(person.id());
    }

    Visitor nobody() {
        return new Visitor(this);
    }

    /** Somebody who signed in. */
    Visitor signedIn(String name) throws IOException, InterruptedException {
        Visitor visitor = nobody();
        visitor.signIn(name, PASSWORD);
        return visitor;
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        book.close();
        worktable.close();
    }
}
