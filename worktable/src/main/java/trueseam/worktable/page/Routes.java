package trueseam.worktable.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.function.Consumer;

/** The addresses of the screens, all below {@code /p/PROJECT/}. */
public final class Routes {

    private final RoutesConfig javalin;
    private final Seats seats;

    /**
     * For the server.
     *
     * @param javalin the server's own routes
     * @param seats whose desk a request is answered at
     */
    public Routes(RoutesConfig javalin, Seats seats) {
        this.javalin = javalin;
        this.seats = seats;
    }

    /**
     * Answers a request that only looks.
     *
     * @param what the address below the project, such as {@code person} or {@code print/print.pdf}
     * @param answer what is done
     */
    public void look(String what, Consumer<Visit> answer) {
        javalin.get("/p/{id}/" + what, ctx -> answer.accept(visit(ctx)));
    }

    /**
     * Answers a request that changes or computes.
     *
     * @param what the address below the project
     * @param answer what is done
     */
    public void act(String what, Consumer<Visit> answer) {
        javalin.post("/p/{id}/" + what, ctx -> answer.accept(visit(ctx)));
    }

    private Visit visit(Context context) {
        Seats.Seat seat = seats.of(context);
        return new Visit(context, seat.desk(), seat.pages());
    }
}
