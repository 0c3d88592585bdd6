package trueseam.worktable.page;

import io.javalin.http.Context;

/** Whose desk a request is answered at. Every screen asks here, so that nobody reaches another desk. Safe for use by several threads. */
public interface Seats {

    /**
     * Where a request is answered.
     *
     * @param desk the desk with the shelf that may be seen
     * @param pages how pages are drawn for whoever asks
     */
    record Seat(Desk desk, Pages pages) {}

    /**
     * The seat of a request.
     *
     * @param context the request
     * @return where it is answered
     * @throws RefusedException if it may not be
     */
    Seat of(Context context);
}
