package trueseam.worktable;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import trueseam.worktable.browser.Browser;
import trueseam.worktable.browser.InBrowser;

/** The screens of a studio in a browser. */
@ExtendWith(InBrowser.class)
class StudioScreensTest {

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

    private void go(Browser browser, String path) {
        browser.driver().get("http://localhost:" + studio.port + path);
    }

    private void signIn(Browser browser, String name) {
        go(browser, "/sign-in");
        browser.type("#name", name);
        browser.type("#password", Studio.PASSWORD);
        browser.click("#sign-in");
        browser.waitForText("Begin a project");
    }

    /** At both widths, light and dark. */
    private static void look(Browser browser, String name) {
        for (int width : new int[] {Browser.DESK, Browser.TABLET}) {
            browser.width(width);
            for (boolean dark : new boolean[] {false, true}) {
                browser.dark(dark);
                browser.assertAccessible();
                browser.picture("studio-" + name + "-" + width + (dark ? "-dark" : ""));
            }
        }
        browser.dark(false);
        browser.width(Browser.DESK);
    }

    @Test
    void fromTheSignInToOnesOwnPeopleAndWhatATeacherSeesOfThem(Browser browser) {
        go(browser, "/my-people");
        assertThat(browser.main()).contains("Sign in").doesNotContain("Ottilie");
        look(browser, "sign-in");
        signIn(browser, "Ann");
        assertThat(browser.main()).contains("Dress of Ottilie").contains("Dress of Wanda");
        go(browser, "/my-people");
        assertThat(browser.main())
                .contains("Ottilie")
                .contains("Wanda")
                .contains("fitting patterns to this person")
                .contains("Monday (Tea): shared, with all her projects");
        browser.click(".one summary");
        browser.click(".delete summary");
        look(browser, "people");
        browser.type("#typed", "Anna");
        browser.click("#erase-me");
        browser.waitForText("Nothing was erased");
        browser.click("#sign-out");
        browser.waitForText("Sign in");
        signIn(browser, "Tea");
        assertThat(browser.main()).doesNotContain("Ottilie");
        go(browser, "/classes");
        assertThat(browser.main())
                .contains("Monday")
                .contains("Dress of Ottilie")
                .doesNotContain("Wanda");
        look(browser, "classes");
        go(browser, "/p/" + studio.annsProjects.get(0) + "/person");
        assertThat(browser.find(".whose").getText()).contains("Ann").contains("look");
        look(browser, "looked-at");
        browser.type("#label", "Changed", org.openqa.selenium.Keys.TAB);
        browser.waitFor(() -> browser.find("#notice").getText().contains("nothing was changed"));
        browser.click("#sign-out");
        signIn(browser, "irena");
        go(browser, "/accounts");
        browser.type("#called", "Dora");
        browser.click("#add");
        browser.waitForText("Give this link to Dora");
        browser.click(".delete summary");
        look(browser, "accounts");
        String link = browser.find("#link").getText();
        browser.click("#sign-out");
        browser.driver().get(link);
        browser.waitForText("Set your name and password");
        look(browser, "invited");
    }
}
