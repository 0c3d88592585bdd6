package trueseam.worktable.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static trueseam.worktable.cloth.OnCloth.drag;
import static trueseam.worktable.cloth.OnCloth.length;
import static trueseam.worktable.cloth.OnCloth.looksRightEverywhere;
import static trueseam.worktable.cloth.OnCloth.middle;
import static trueseam.worktable.cloth.OnCloth.open;
import static trueseam.worktable.cloth.OnCloth.piece;
import static trueseam.worktable.cloth.OnCloth.search;
import static trueseam.worktable.cloth.OnCloth.searched;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;
import trueseam.worktable.browser.Browser;
import trueseam.worktable.browser.InBrowser;
import trueseam.worktable.browser.Rosalind;

/** Laying pieces by hand, with the pointer and with keys, as a dressmaker does it in the browser. */
@ExtendWith(InBrowser.class)
class ClothHandTest {

    private String id;

    @BeforeEach
    void rosalindsBodiceIsFitted(Browser browser) {
        id = browser.put(Rosalind.before("bodice"));
    }

    @Test
    void aPieceIsDraggedOntoAnotherAndStaysThereAndIsSaidToBeWrong(Browser browser) throws IOException {
        open(browser, id);
        String before = length(browser);
        List<Double> from = middle(browser, 2);
        drag(browser, 2, 0, 1);
        browser.waitForText("lie on each other; move one of them away");
        browser.settled();
        assertThat(middle(browser, 2)).as("it stays where it was put").isNotEqualTo(from);
        assertThat(piece(browser, 2).getDomAttribute("class"))
                .contains("faulty")
                .contains("held-here");
        assertThat(piece(browser, 2).getDomAttribute("aria-label")).contains("lies wrongly");
        List<Double> there = middle(browser, 2);
        looksRightEverywhere(browser, "cloth-overlap");
        // It is not given away as a layout that can be cut, neither here nor by the address.
        assertThat(browser.all("a[data-file]")).isEmpty();
        assertThat(browser.main()).contains("A layout that cannot be cut is not given away");
        browser.restart();
        open(browser, id);
        assertThat(middle(browser, 2)).isEqualTo(there);
        assertThat(browser.main()).contains("lie on each other").contains("Laid by hand.");
        // Let go, it is laid anew with the rest.
        browser.click("#free");
        browser.choose("#patience", "quick");
        search(browser);
        assertThat(browser.main()).doesNotContain("lie on each other");
        assertThat(browser.all("a[data-file]")).hasSize(3);
        assertThat(before).startsWith("Needs ");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void keysMoveTurnAndHoldAPieceAndTheRestIsLaidAroundIt(Browser browser) {
        open(browser, id);
        browser.choose("#patience", "quick");
        search(browser);
        String shortest = length(browser);
        List<Double> from = middle(browser, 2);
        browser.tabTo("#piece-2");
        // One after another without a rest, so that it is one move.
        Actions keys = new Actions(browser.driver()).keyDown(Keys.SHIFT);
        for (int i = 0; i < 20; i++) {
            keys.sendKeys(Keys.ARROW_RIGHT);
        }
        keys.keyUp(Keys.SHIFT).sendKeys(Keys.ENTER).perform();
        browser.waitForText("1 piece is held where you put it.");
        assertThat(length(browser)).isNotEqualTo(shortest);
        // Twenty times an inch, the far step of a user of inches.
        assertThat(middle(browser, 2).get(0) - from.get(0))
                .isCloseTo(20 * 25.4, org.assertj.core.data.Offset.offset(0.1));
        assertThat(browser.driver().switchTo().activeElement().getDomAttribute("id"))
                .as("the key's place is kept")
                .isEqualTo("piece-2");
        browser.press("r");
        browser.waitFor(() -> browser.find("#undo").getDomAttribute("title").contains("Turn sleeve"));
        browser.press("f");
        browser.settled();
        browser.press("[");
        browser.waitFor(() -> browser.find("#notice").isDisplayed());
        assertThat(browser.find("#notice").getText()).contains("stays on the grain");
        assertThat(browser.complaints()).as("the refusal alone").isNotEmpty().allMatch(c -> c.contains("422"));
        List<Double> there = middle(browser, 2);
        browser.click("#search");
        searched(browser);
        assertThat(middle(browser, 2))
                .as("it stays; the rest is laid around it")
                .isEqualTo(there);
        browser.tabTo("#piece-2");
        browser.press("h");
        browser.waitFor(() -> !piece(browser, 2).getDomAttribute("class").contains("held-here"));
        search(browser);
        assertThat(length(browser)).isEqualTo(shortest);
    }

    @Test
    void escapePutsAPieceBackAndUndoTakesAMoveBack(Browser browser) {
        open(browser, id);
        List<Double> from = middle(browser, 2);
        String before = length(browser);
        browser.tabTo("#piece-2");
        new Actions(browser.driver())
                .keyDown(Keys.SHIFT)
                .sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT)
                .keyUp(Keys.SHIFT)
                .sendKeys(Keys.ESCAPE)
                .perform();
        browser.settled();
        assertThat(piece(browser, 2).getDomAttribute("transform")).isNull();
        assertThat(length(browser)).isEqualTo(before);
        browser.click("#piece-2");
        browser.click("[data-nudge='1 0']");
        browser.waitForText("1 piece is held where you put it.");
        assertThat(middle(browser, 2)).isNotEqualTo(from);
        browser.click("#undo");
        browser.waitForText("A first layout, made at once");
        assertThat(middle(browser, 2)).isEqualTo(from);
    }
}
