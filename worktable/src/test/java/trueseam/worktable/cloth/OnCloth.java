package trueseam.worktable.cloth;

import java.time.Duration;
import java.util.List;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;
import trueseam.worktable.browser.Browser;

/** What the tests of the Cloth screen do and look at. */
final class OnCloth {

    private OnCloth() {}

    static void open(Browser browser, String id) {
        browser.open("/p/" + id + "/cloth");
        browser.settled();
    }

    static String length(Browser browser) {
        return browser.find("#cloth-length").getText();
    }

    static WebElement piece(Browser browser, int at) {
        return browser.find("#piece-" + at);
    }

    /** A search has so many rounds and takes as long as the machine needs for them. */
    static void searched(Browser browser) {
        new WebDriverWait(browser.driver(), Duration.ofMinutes(2))
                .ignoring(StaleElementReferenceException.class)
                .until(d -> !isRunning(browser));
        browser.settled();
    }

    static boolean isRunning(Browser browser) {
        return "true".equals(browser.find("#progress").getDomAttribute("data-running"));
    }

    /** Where a piece is drawn, x and y of its middle, in mm. */
    static List<Double> middle(Browser browser, int at) {
        WebElement piece = piece(browser, at);
        return List.of(
                Double.valueOf(piece.getDomAttribute("data-x")), Double.valueOf(piece.getDomAttribute("data-y")));
    }

    static void looksRightEverywhere(Browser browser, String name) {
        for (int width : new int[] {Browser.DESK, Browser.TABLET}) {
            browser.width(width);
            for (boolean dark : new boolean[] {false, true}) {
                browser.dark(dark);
                browser.assertAccessible();
                browser.picture(name + "-" + width + (dark ? "-dark" : ""));
            }
        }
        browser.dark(false);
        browser.width(Browser.DESK);
    }
    /** Drags a piece by its middle so that its middle comes to lie on another's, by the pointer. */
    static void drag(Browser browser, int piece, int onto, double part) {
        WebElement hand = browser.find("#piece-" + piece + " .cut");
        WebElement goal = browser.find("#piece-" + onto + " .cut");
        double dx = goal.getRect().x + goal.getRect().width / 2.0 - hand.getRect().x - hand.getRect().width / 2.0;
        double dy = goal.getRect().y + goal.getRect().height / 2.0 - hand.getRect().y - hand.getRect().height / 2.0;
        new Actions(browser.driver())
                .scrollToElement(browser.find("#hand-keys"))
                .moveToElement(hand)
                .clickAndHold()
                .moveByOffset((int) (dx * part / 2), (int) (dy * part / 2))
                .moveByOffset((int) (dx * part / 2), (int) (dy * part / 2))
                .release()
                .perform();
        browser.settled();
    }

    static void search(Browser browser) {
        browser.click("#search");
        searched(browser);
    }
}
