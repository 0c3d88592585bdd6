package trueseam.worktable.studio;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import trueseam.records.Studio;
import trueseam.records.account.Account;
import trueseam.records.account.Role;
import trueseam.worktable.page.RefusedException;

/** Who is let in where: without a session nothing but signing in, and each part of the studio only for its roles. */
public final class Gate {

    private static final String SESSION = "session";

    /** What is answered to everybody; nothing else is. */
    private static final List<String> OPEN = List.of("/static/", "/favicon.ico", "/sign-in", "/invited/");

    /** What only some may see; all else is everybody's own. */
    private static final Map<String, Predicate<Role>> ONLY =
            Map.of("/accounts", role -> role == Role.OWNER, "/classes", Role::leads);

    private final Supplier<Studio> studio;
    private final Reach reach;
    private final String secretOfNobody;

    /** Somebody who is signed in, and the token that proves it. */
    private record Session(Account account, String token) {}

    /**
     * For the server.
     *
     * @param studio gives accounts and sessions, once the record book is open
     * @param reach from where it is reached
     * @param secretOfNobody tells our own pages from other people's as long as nobody is signed in
     */
    public Gate(Supplier<Studio> studio, Reach reach, String secretOfNobody) {
        this.studio = studio;
        this.reach = reach;
        this.secretOfNobody = secretOfNobody;
    }

    /**
     * Lets a request in, or sends it to sign in.
     *
     * @param context the request
     * @throws RefusedException if it is not for her who asks
     */
    public void admit(Context context) {
        String path = context.path();
        if (OPEN.stream().anyMatch(open -> open.endsWith("/") ? path.startsWith(open) : path.equals(open))) {
            return;
        }
        Optional<Session> session = session(context);
        if (session.isEmpty()) {
            turnAway(context);
            return;
        }
        Role role = session.get().account().role();
        ONLY.forEach((part, may) -> {
            if ((path.equals(part) || path.startsWith(part + "/")) && !may.test(role)) {
                throw new RefusedException("This page is not for a " + role.word() + "; go to the list of projects.");
            }
        });
    }

    private static void turnAway(Context context) {
        boolean page = String.valueOf(context.header("Accept")).contains("text/html")
                && context.header("HX-Request") == null
                && context.method().name().equals("GET");
        if (page) {
            context.redirect("/sign-in", HttpStatus.SEE_OTHER);
        } else {
            context.status(HttpStatus.UNAUTHORIZED)
                    .contentType("text/plain; charset=utf-8")
                    .result("You are signed out, so your last change was not made; reload the page and sign in.");
        }
        context.skipRemainingHandlers();
    }

    private Optional<Session> session(Context context) {
        Optional<Session> known = context.attribute(SESSION);
        if (known == null) {
            known = Optional.ofNullable(context.cookie(cookie()))
                    .flatMap(token -> studio.get().sessions().of(token).map(a -> new Session(a, token)));
            context.attribute(SESSION, known);
        }
        return known;
    }

    /**
     * Who asks.
     *
     * @param context a request that was let in
     * @return the account, if anybody is signed in
     */
    Optional<Account> account(Context context) {
        return session(context).map(Session::account);
    }

    /**
     * What tells our own pages from other people's, for this session.
     *
     * @param context the request
     * @return made of the session's token, which cannot be found from it
     */
    public String secret(Context context) {
        return session(context)
                .map(session -> digest("page of " + session.token()))
                .orElse(secretOfNobody);
    }

    private static String digest(String text) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Begins a session under a token that did not exist before; one that the browser had already is ended. */
    void begin(Context context, String signIn, String password) {
        String token = studio.get().sessions().begin(signIn, password, from(context));
        session(context).ifPresent(old -> studio.get().sessions().end(old.token()));
        set(context, token, -1);
    }

    /** The proxy says for whom it asks; without one nobody is believed. */
    private String from(Context context) {
        String forwarded = context.header("X-Forwarded-For");
        return reach.tls() && forwarded != null
                ? forwarded.replaceAll(".*,", "").strip()
                : context.ip();
    }

    void end(Context context) {
        session(context).ifPresent(session -> studio.get().sessions().end(session.token()));
        set(context, "", 0);
    }

    /** No script and no other site gets it; over TLS no page without TLS either, and the browser holds it to this very host. */
    private void set(Context context, String token, int maxAge) {
        context.cookie(new Cookie(cookie(), token, "/", maxAge, reach.tls(), true, null, SameSite.STRICT));
    }

    private String cookie() {
        return reach.tls() ? "__Host-trueseam" : "trueseam-session";
    }
}
