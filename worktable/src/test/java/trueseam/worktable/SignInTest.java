package trueseam.worktable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trueseam.records.access.Access;
import trueseam.worktable.Studio.Visitor;
import trueseam.worktable.studio.Reach;

/** Signing in and out, over real connections. */
class SignInTest {

    @TempDir
    private Path data;

    private Studio studio;

    @BeforeEach
    void open() {
        studio = new Studio(data);
    }

    @AfterEach
    void close() {
        studio.close();
    }

    @Test
    void aSessionIsACookieThatNoScriptAndNoOtherSiteGetsAndIsNewEveryTime() throws IOException, InterruptedException {
        Visitor ann = studio.nobody();
        ann.cookie = "trueseam-session=prepared-by-somebody-else";
        assertThat(ann.signIn("Ann", Studio.PASSWORD).statusCode()).isEqualTo(303);
        assertThat(ann.cookies().get(0))
                .startsWith("trueseam-session=")
                .contains("HttpOnly")
                .contains("SameSite=Strict")
                .contains("Path=/")
                .doesNotContain("Secure")
                .doesNotContain("prepared");
        String first = ann.cookie;
        ann.signIn("Ann", Studio.PASSWORD);
        assertThat(ann.cookie).isNotEqualTo(first);
        Visitor old = studio.nobody();
        old.cookie = first;
        assertThat(old.get("/").statusCode()).as("the session before is ended").isEqualTo(303);
    }

    @Test
    void behindTlsTheCookieIsSecureAndOnlyTheNameOfTheProxyIsBelieved(@TempDir Path other)
            throws IOException, InterruptedException {
        Reach reach = new Reach("127.0.0.1", Optional.of("studio.example.org"), true);
        try (Studio behind = new Studio(other, reach)) {
            assertThat(behind.worktable.address()).isEqualTo("https://studio.example.org/");
            HttpResponse<String> answer = behind.nobody().signIn("Ann", Studio.PASSWORD);
            assertThat(answer.headers().firstValue("Set-Cookie").orElse(""))
                    .startsWith("__Host-trueseam=")
                    .contains("Secure")
                    .doesNotContain("Domain");
            assertThat(answer.headers().firstValue("Strict-Transport-Security")).isPresent();
        }
        assertThat(reach.origin("studio.example.org", 7431)).contains("https://studio.example.org");
        assertThat(reach.origin("other.example.org", 7431)).isEmpty();
        assertThatThrownBy(() -> new Reach("0.0.0.0", Optional.empty(), false))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void signingOutEverywhereEndsTheOtherBrowserToo() throws IOException, InterruptedException {
        Visitor here = studio.signedIn("Ann");
        Visitor there = studio.signedIn("Ann");
        assertThat(there.get("/").statusCode()).isEqualTo(200);
        assertThat(here.post("/sign-out-everywhere", "").statusCode()).isEqualTo(303);
        assertThat(there.get("/").statusCode()).isEqualTo(303);
        assertThat(there.post("/projects", "name=Late").statusCode()).isIn(401, 403);
    }

    @Test
    void aChangeNeedsTheSecretOfThisVerySessionAndOurOwnOrigin() throws IOException, InterruptedException {
        Visitor ann = studio.signedIn("Ann");
        Visitor bo = studio.signedIn("Bill");
        assertThat(ann.secret).isNotEqualTo(bo.secret);
        String own = ann.secret;
        ann.secret = bo.secret;
        assertThat(ann.post("/projects", "name=Foreign").statusCode()).isEqualTo(403);
        ann.secret = own;
        HttpResponse<String> foreign = ann.send(ann.request("/projects")
                .header("Trueseam-Secret", own)
                .header("Origin", "http://elsewhere.example")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(java.net.http.HttpRequest.BodyPublishers.ofString("name=Foreign")));
        assertThat(foreign.statusCode()).isEqualTo(403);
        assertThat(ann.post("/projects", "name=Own").statusCode()).isEqualTo(303);
    }

    @Test
    void afterTenWrongPasswordsTheRightOneWaitsTooAndNobodyElse() throws IOException, InterruptedException {
        Visitor guesser = studio.nobody();
        for (int i = 0; i < 10; i++) {
            HttpResponse<String> answer = guesser.signIn("Ann", "guess number " + i);
            assertThat(answer.statusCode()).isEqualTo(422);
            assertThat(answer.body()).doesNotContain("guess number");
        }
        HttpResponse<String> waits = studio.nobody().signIn("Ann", Studio.PASSWORD);
        assertThat(waits.statusCode()).isEqualTo(429);
        assertThat(waits.body()).contains("quarter of an hour");
        assertThat(studio.nobody().signIn("Bill", Studio.PASSWORD).statusCode()).isEqualTo(303);
    }

    @Test
    void anInvitationSetsAPasswordOnceAndSignsIn() throws IOException, InterruptedException {
        Visitor owner = studio.signedIn("irena");
        String page = owner.post("/accounts", "called=Dora&role=student").body();
        String link = page.replaceAll("(?s).*/invited/([A-Za-z0-9_-]+).*", "/invited/$1");
        Visitor dora = studio.nobody();
        assertThat(dora.get(link).body()).contains("Dora").contains("one purpose: fitting patterns");
        String form = "called=Dora&name=dora&password=" + Studio.encoded("otter rain thimble") + "&again="
                + Studio.encoded("otter rain thimble");
        assertThat(dora.post(link, form.replace("&again=otter", "&again=other")).body())
                .contains("not the same");
        assertThat(dora.post(link, form).statusCode()).isEqualTo(303);
        assertThat(dora.get("/").body()).contains("Dora");
        Visitor second = studio.nobody();
        assertThat(second.get(link).statusCode()).isEqualTo(422);
    }

    @Test
    void theTrailTellsTheStudentWhoLookedAndDoesSoOnceAWhile() throws IOException, InterruptedException {
        String project = "/p/" + studio.annsProjects.get(0);
        Visitor tea = studio.signedIn("Tea");
        assertThat(tea.get(project + "/chart").body()).contains("shared with you to look at");
        assertThat(tea.get(project + "/person").statusCode()).isEqualTo(200);
        List<Access> trail = studio.book.drawer(studio.ann).trail().of(studio.annsPeople.get(0));
        assertThat(trail).hasSize(1);
        assertThat(trail.get(0).account()).isEqualTo(studio.teacher);
        assertThat(trail.get(0).what()).isEqualTo("looked at a project");
        assertThat(studio.signedIn("Ann").get("/my-people").body())
                .contains("<td>Tea</td><td>looked at a project</td>");
    }

    @Test
    void whatIsKeptOfAPersonCanBeTakenAwayAndErased() throws IOException, InterruptedException {
        Visitor ann = studio.signedIn("Ann");
        String mark = studio.annsPeople.get(0);
        HttpResponse<String> taken = ann.get("/take-away?person=" + mark);
        assertThat(taken.headers().firstValue("Content-Type")).contains("application/zip");
        assertThat(ann.post("/people/" + mark + "/erase", "").statusCode()).isEqualTo(303);
        assertThat(studio.book.drawer(studio.ann).trail().of(mark))
                .extracting(Access::what)
                .containsExactlyInAnyOrder("took away", "erased");
        assertThat(ann.get("/my-people").body()).doesNotContain("Ottilie").contains("Wanda");
        assertThat(ann.get("/p/" + studio.annsProjects.get(0) + "/person").statusCode())
                .isEqualTo(404);
    }

    @Test
    void theOwnerErasesAnAccountByTypingItsNameAndNothingOfItIsLeftOnAnyPage()
            throws IOException, InterruptedException {
        Visitor ann = studio.signedIn("Ann");
        Visitor owner = studio.signedIn("irena");
        String erase = "/accounts/" + studio.ann + "/erase";
        HttpResponse<String> slip = owner.post(erase, "typed=Anna");
        assertThat(slip.statusCode()).isEqualTo(422);
        assertThat(slip.body()).contains("type its name as it stands here: Ann. Nothing was erased.");
        assertThat(ann.get("/p/" + studio.annsProjects.get(0) + "/person").statusCode())
                .isEqualTo(200);
        assertThat(owner.post(erase, "typed=+Ann+").statusCode()).isEqualTo(303);
        assertThat(owner.get("/accounts").body()).contains("Erased so far: 1").doesNotContain(">Ann<");
        assertThat(ann.get("/p/" + studio.annsProjects.get(0) + "/person").statusCode())
                .as("signed out")
                .isEqualTo(303);
        assertThat(studio.nobody().signIn("Ann", Studio.PASSWORD).statusCode()).isEqualTo(422);
        assertThat(studio.signedIn("Tea").get("/classes").body())
                .doesNotContain("Ottilie")
                .doesNotContain("Ann");
    }

    @Test
    void whoLeavesErasesAllOfHersHerselfAndTheLastOwnerCannot() throws IOException, InterruptedException {
        Visitor tea = studio.signedIn("Tea");
        assertThat(tea.post("/erase-my-account", "typed=tea").statusCode()).isEqualTo(422);
        assertThat(tea.post("/erase-my-account", "typed=Tea").statusCode()).isEqualTo(303);
        assertThat(tea.get("/classes").statusCode()).isEqualTo(303);
        assertThat(studio.book.drawer(studio.ann).sharing().classes()).isEmpty();
        Visitor owner = studio.signedIn("irena");
        HttpResponse<String> last = owner.post("/erase-my-account", "typed=Irena");
        assertThat(last.statusCode()).isEqualTo(422);
        assertThat(last.body()).contains("only owner");
        assertThat(owner.get("/accounts").statusCode()).isEqualTo(200);
    }

    @Test
    void aStudentSharesOneProjectWithOneClassAndTakesItBack() throws IOException, InterruptedException {
        Visitor ann = studio.signedIn("Ann");
        Visitor tea = studio.signedIn("Tea");
        String wandas = studio.annsProjects.get(1);
        String share = "/my-projects/" + wandas + "/shared";
        assertThat(tea.get("/p/" + wandas + "/person").statusCode()).isEqualTo(404);
        assertThat(ann.post(share, "shared=1&class=" + studio.classOfTea).statusCode())
                .isEqualTo(303);
        assertThat(tea.get("/p/" + wandas + "/person").statusCode()).isEqualTo(200);
        assertThat(ann.get("/my-people").body()).contains("Monday (Tea): shared, this project alone");
        assertThat(ann.post(share, "shared=0&class=" + studio.classOfTea).statusCode())
                .isEqualTo(303);
        assertThat(tea.get("/p/" + wandas + "/person").statusCode()).isEqualTo(404);
        HttpResponse<String> foreign = ann.post(share, "shared=1&class=made-up");
        assertThat(foreign.statusCode()).isEqualTo(422);
        assertThat(foreign.body()).contains("Nothing was shared");
    }

    @Test
    void afterHowLongToMeasureAgainIsKeptForTheAccountAndNotForTheBrowser() throws IOException, InterruptedException {
        assertThat(studio.signedIn("Ann")
                        .post("/measure-again", "months=9&growing=2")
                        .statusCode())
                .isEqualTo(303);
        assertThat(studio.signedIn("Ann").get("/").body())
                .contains("value=\"9\"")
                .contains("value=\"2\"");
        assertThat(studio.book.drawer(studio.bo).reminding().told()).isEmpty();
        HttpResponse<String> none = studio.signedIn("Ann").post("/measure-again", "months=0&growing=two");
        assertThat(none.statusCode()).isEqualTo(422);
        assertThat(none.body()).contains("whole numbers from 1 to 60; nothing was changed");
    }
}
