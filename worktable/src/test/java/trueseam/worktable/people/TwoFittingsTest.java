package trueseam.worktable.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import trueseam.worktable.browser.Browser;
import trueseam.worktable.browser.InBrowser;
import trueseam.worktable.browser.Rosalind;
import trueseam.worktable.project.ChartPart;
import trueseam.worktable.project.Project;

/** Two fittings of an invented person, measure by measure. */
@ExtendWith(InBrowser.class)
class TwoFittingsTest {

    @Test
    void twoFittingsOfOnePersonLieSideBySideWithDifferencesMarkedByASign(Browser browser) {
        Project skirt = Rosalind.before("skirt");
        String first = browser.put(skirt);
        browser.open("/");
        String person = browser.find(".people a").getAttribute("href").replaceAll("^.*?(?=/people/)", "");
        // For the second skirt she leaves the waist as it is.
        String second = browser.putFor(
                person.replace("/people/", ""),
                skirt.withName("Second")
                        .with(new ChartPart(Map.of(), Map.of("waist girth", "leave"), Map.of(), List.of())));
        browser.open(person + "/compare?first=" + first + "&second=" + second);
        assertThat(browser.find("table.pair").getText()).contains("≠").contains("Waist");
        assertThat(browser.all("table.pair tr.chosen")).isNotEmpty();
        assertThat(browser.find("table.pair tr.chosen").getText()).contains("differs");
        browser.assertAccessible();
        browser.picture("two-fittings-1440");
        browser.open(person + "/compare?first=" + first + "&second=" + first);
        assertThat(browser.find("table.pair").getText()).doesNotContain("≠");
    }
}
