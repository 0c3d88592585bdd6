package trueseam.worktable.page;

import java.util.Optional;
import java.util.Set;

/**
 * What stands around every screen.
 *
 * @param id the project's mark; empty on the list of projects
 * @param name the project's name
 * @param version which version is shown
 * @param step which screen; empty on the list of projects
 * @param done the screens that have what they need
 * @param undo what undoing takes back
 * @param redo what redoing brings back
 * @param secret tells our own pages from other people's
 * @param signed who is signed in, in a studio
 */
public record Frame(
        String id,
        String name,
        long version,
        Optional<Step> step,
        Set<Step> done,
        Optional<String> undo,
        Optional<String> redo,
        String secret,
        Optional<Signed> signed) {

    /** Does not change. */
    public Frame {
        done = Set.copyOf(done);
    }

    /**
     * The window's title.
     *
     * @return screen, project, program
     */
    public String title() {
        return step.map(s -> s.label() + " - " + name + " - Trueseam").orElse("Trueseam");
    }

    /**
     * The address of a screen of this project.
     *
     * @param of the screen
     * @return the address
     */
    public String address(Step of) {
        return "/p/" + id + "/" + of.word();
    }

    /**
     * The address of something of this project.
     *
     * @param what the rest of the address
     * @return the address
     */
    public String address(String what) {
        return "/p/" + id + "/" + what;
    }
}
