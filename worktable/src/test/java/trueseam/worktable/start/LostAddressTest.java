package trueseam.worktable.start;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import trueseam.worktable.browser.Browser;
import trueseam.worktable.browser.InBrowser;

/** An address that leads nowhere gets a page that leads back. */
@ExtendWith(InBrowser.class)
class LostAddressTest {

    @Test
    void anAddressThatIsNoPageLeadsBackToTheProjects(Browser browser) {
        String id = browser.begin("Lost");
        browser.open("/p/" + id + "/no-such-screen");
        assertThat(browser.main()).contains("There is no such page");
        browser.assertAccessible();
        browser.open("/p/0000000000000000/person");
        assertThat(browser.main()).doesNotContain("There is no such page");
        browser.assertAccessible();
    }
}
