package trueseam.worktable.page;

import io.javalin.config.RoutesConfig;
import java.util.function.Consumer;

/** The addresses of the screens, all below {@code /p/PROJECT/}. */
public final class Routes {

    private final RoutesConfig javalin;
    private final Desk desk;
    private final Pages pages;

    /**
     * For the server.
     *
     * @param javalin the server's own routes
     * @param desk the desk
     * @param pages how pages are drawn
     */
    public Routes(RoutesConfig javalin, Desk desk, Pages pages) {
        this.javalin = javalin;
        this.desk = desk;
        this.pages = pages;
    }

    /**
     * Answers a request that only looks.
     *
     * @param what the address below the project, such as {@code person} or {@code print/print.pdf}
     * @param answer what is done
     */
    public void look(String what, Consumer<Visit> answer) {
        javalin.get("/p/{id}/" + what, ctx -> answer.accept(new Visit(ctx, desk, pages)));
    }

    /**
     * Answers a request that changes or computes.
     *
     * @param what the address below the project
     * @param answer what is done
     */
    public void act(String what, Consumer<Visit> answer) {
        javalin.post("/p/{id}/" + what, ctx -> answer.accept(new Visit(ctx, desk, pages)));
    }
}
