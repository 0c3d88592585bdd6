package trueseam.worktable;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trueseam.worktable.Studio.Visitor;

/**
 * Every route of the program is tried as everybody, about a project, a person and a class that are not theirs. A route that the table
 * does not have fails the test.
 */
class EveryRouteTest {

    /** What a project's own student gets: anything but being refused, or a fault of the program. */
    private static final int IN = 0;

    /** Who asks, in this order; whose it is comes last, as she may end it. */
    private static final List<String> WHO = List.of("nobody", "Bill", "Theo", "irena", "Tea", "Ann");

    /** Answers in the order of WHO; tried in this order, so that what ends something comes last. */
    private static final Map<String, int[]> TABLE = new LinkedHashMap<>();

    private static void row(String route, int... answers) {
        TABLE.put(route, answers);
    }

    static {
        row("GET /p/{id}/*", 303, 404, 404, 404, IN, IN);
        row("POST /p/{id}/*", 401, 404, 404, 404, 403, IN);
        row("GET /", 303, 200, 200, 200, 200, 200);
        row("GET /favicon.ico", 302, 302, 302, 302, 302, 302);
        row("POST /projects", 401, 303, 303, 303, 303, 303);
        row("GET /sign-in", 200, 200, 200, 200, 200, 200);
        row("POST /sign-in", 422, 422, 422, 422, 422, 422);
        row("GET /invited/{token}", 422, 422, 422, 422, 422, 422);
        row("POST /invited/{token}", 422, 422, 422, 422, 422, 422);
        row("GET /accounts", 303, 403, 403, 200, 403, 403);
        row("POST /accounts", 401, 403, 403, 422, 403, 403);
        row("POST /accounts/{account}/invite", 401, 403, 403, 422, 403, 403);
        row("POST /accounts/{account}/closed", 401, 403, 403, 303, 403, 403);
        row("GET /classes", 303, 403, 200, 200, 200, 403);
        row("POST /classes", 401, 403, 422, 422, 422, 403);
        row("POST /classes/{class}/add", 401, 403, 422, 422, 303, 403);
        row("POST /classes/{class}/remove", 401, 403, 422, 422, 303, 403);
        row("GET /my-people", 303, 200, 200, 200, 200, 200);
        row("POST /projects/{id}/duplicate", 401, 404, 404, 404, 404, 303);
        row("POST /projects/{id}/archive", 401, 303, 303, 303, 303, 303);
        row("POST /measure-again", 401, 303, 303, 303, 303, 303);
        row("GET /take-away", 303, 200, 200, 200, 200, 200);
        row("POST /bring-back", 401, 400, 400, 400, 400, 400);
        row("GET /people/{id}", 303, 404, 404, 404, 404, 200);
        row("GET /people/{id}/photo", 303, 404, 404, 404, 404, 404); // she has none
        row("GET /people/{id}/compare", 303, 404, 404, 404, 404, 404); // two fittings are named to nobody
        row("POST /people/{id}", 401, 404, 404, 404, 404, 409);
        row("POST /people/{id}/photo", 401, 404, 404, 404, 404, 303);
        row("POST /people/{id}/archive", 401, 404, 404, 404, 404, 303);
        row("POST /my-people/{person}/shared", 401, 422, 422, 422, 422, 303);
        row("POST /my-projects/{id}/shared", 401, 422, 422, 422, 422, 303);
        row("POST /accounts/{account}/erase", 401, 403, 403, 422, 403, 403); // there is no such account
        row("POST /erase-my-account", 401, 422, 422, 422, 422, 422); // nobody typed her name
        // From here on something ends; in another's hands it does not.
        row("POST /projects/{id}/delete", 401, 303, 303, 303, 303, 303);
        row("POST /people/{id}/erase", 401, 404, 404, 404, 404, 303);
        row("POST /classes/{class}/end", 401, 403, 422, 422, 303, 403);
        row("POST /sign-out-everywhere", 401, 303, 303, 303, 303, 303);
        row("POST /sign-out", 401, 403, 403, 403, 403, 403); // the page is of a session that has ended
    }

    @TempDir
    private Path data;

    private Studio studio;
    private final Map<String, Visitor> visitors = new LinkedHashMap<>();

    @BeforeEach
    void open() throws IOException, InterruptedException {
        studio = new Studio(data);
        for (String who : WHO) {
            visitors.put(who, who.equals("nobody") ? studio.nobody() : studio.signedIn(who));
        }
        visitors.get("nobody").get("/sign-in"); // the secret of nobody's pages: it lets nobody in
    }

    @AfterEach
    void close() {
        studio.close();
    }

    private static String entry(String route) {
        return route.replaceFirst("/p/\\{id}/.*", "/p/{id}/*");
    }

    private String filled(String route, String project, String person) {
        return route.replaceFirst(".* ", "")
                .replace("/people/{id}", "/people/" + person)
                .replace("{id}", project)
                .replace("{person}", person)
                .replace("{class}", studio.classOfTea)
                .replace("{account}", "999")
                .replaceAll("\\{\\w+}", "made-up");
    }

    private HttpResponse<String> ask(Visitor visitor, String route, String path)
            throws IOException, InterruptedException {
        return route.startsWith("GET ")
                ? visitor.get(path)
                : visitor.post(
                        path,
                        "shared=1&class=" + studio.classOfTea + "&months=6&growing=3&measure=bust+girth&student="
                                + studio.bo + "&version=0");
    }

    @Test
    void everyRouteAnswersEverybodyAsTheTableSays() throws IOException, InterruptedException {
        List<String> routes = studio.worktable.routes();
        assertThat(routes).hasSizeGreaterThan(50);
        assertThat(routes.stream().map(EveryRouteTest::entry))
                .as("routes without an entry")
                .allMatch(TABLE::containsKey);
        List<String> wrong = new ArrayList<>();
        for (String entry : TABLE.keySet()) {
            List<String> tried =
                    routes.stream().filter(route -> entry(route).equals(entry)).toList();
            assertThat(tried).as("no such route: " + entry).isNotEmpty();
            for (String route : tried) {
                wrong.addAll(tryAsEverybody(entry, route));
            }
        }
        assertThat(wrong).isEmpty();
    }

    private List<String> tryAsEverybody(String entry, String route) throws IOException, InterruptedException {
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < WHO.size(); i++) {
            String who = WHO.get(i);
            HttpResponse<String> answer =
                    ask(visitors.get(who), route, filled(route, studio.annsProjects.get(0), studio.annsPeople.get(0)));
            int wanted = TABLE.get(entry)[i];
            boolean right = wanted == IN ? isIn(answer) : answer.statusCode() == wanted;
            if (!right) {
                wrong.add(route + " as " + who + ": " + answer.statusCode() + ", wanted " + wanted);
            }
            if (!Set.of("Ann", "Tea").contains(who) && tells(answer)) {
                wrong.add(route + " tells " + who + " of Ann's person");
            }
        }
        return wrong;
    }

    /** She was let in; what she asked for may still not be there, or not be done on an old version. */
    private static boolean isIn(HttpResponse<String> answer) {
        return !Set.of(401, 403, 500).contains(answer.statusCode())
                && !answer.body().contains("There is no such project");
    }

    private static boolean tells(HttpResponse<String> answer) {
        return answer.body().contains("Ottilie")
                || answer.body().contains("97.5")
                || answer.body().contains("Wanda");
    }

    /** As a script that guesses would send it: the answer is a sentence, never a fault of the program. */
    @Test
    void whatNoPageWouldSendIsASentenceOnEveryRoute() throws IOException, InterruptedException {
        List<String> wrong = new ArrayList<>();
        String project = studio.annsProjects.get(0);
        for (String route : studio.worktable.routes()) {
            if (route.startsWith("POST /p/{id}/")) {
                long version = studio.book
                        .drawer(studio.ann)
                        .projects()
                        .find(project)
                        .orElseThrow()
                        .version();
                String made = "measure=made+up&side=left&decision=made+up&amount=made+up&ease=made+up&choice=made+up"
                        + "&word=made+up&entry=made+up&way=made+up&at=999&text=made+up&date=made+up&symptom=made+up"
                        + "&handle=made+up&mm=made+up&version=" + version + "&tab=one";
                HttpResponse<String> answer =
                        visitors.get("Ann").post(filled(route, project, studio.annsPeople.get(0)), made);
                if (answer.statusCode() == 500) {
                    wrong.add(route);
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void aMeasureThatIsNoneIsSaidSoOnTheChartAndNothingIsChanged() throws IOException, InterruptedException {
        String project = studio.annsProjects.get(0);
        for (String act : List.of("decide", "amount", "ease")) {
            HttpResponse<String> answer = visitors.get("Ann")
                    .post("/p/" + project + "/chart/" + act, "measure=made+up&amount=1&ease=1&version=1&tab=one");
            assertThat(answer.statusCode()).as(act).isEqualTo(422);
            assertThat(answer.body()).as(act).contains("is not a measure this program knows");
        }
        assertThat(studio.book
                        .drawer(studio.ann)
                        .projects()
                        .find(project)
                        .orElseThrow()
                        .version())
                .isEqualTo(1);
    }

    @Test
    void whatIsNotSharedIsNobodysBusinessOnAnyRoute() throws IOException, InterruptedException {
        List<String> wrong = new ArrayList<>();
        for (String route : studio.worktable.routes()) {
            if (route.contains("{id}") || route.contains("{person}")) {
                for (String who : List.of("nobody", "Bill", "Theo", "irena", "Tea")) {
                    HttpResponse<String> answer = ask(
                            visitors.get(who),
                            route,
                            filled(route, studio.annsProjects.get(1), studio.annsPeople.get(1)));
                    if (tells(answer) || answer.statusCode() < 300) {
                        wrong.add(route + " as " + who + ": " + answer.statusCode());
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
        HttpResponse<String> hers = visitors.get("Ann").get("/p/" + studio.annsProjects.get(1) + "/person");
        assertThat(hers.statusCode()).as("nobody deleted it").isEqualTo(200);
        assertThat(hers.body()).contains("Wanda").contains("97.5");
        assertThat(studio.book.drawer(studio.ann).people().find(studio.annsPeople.get(1)))
                .as("nobody erased her")
                .isPresent();
    }
}
