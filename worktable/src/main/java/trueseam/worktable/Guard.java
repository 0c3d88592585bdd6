package trueseam.worktable;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Set;
import java.util.function.Function;
import trueseam.worktable.page.RefusedException;
import trueseam.worktable.studio.Reach;

/**
 * Keeps other people's pages out: only our own names are answered (a foreign name that leads here is not), and what changes something
 * must come from one of our own pages and know the secret of the data folder, or of the session.
 */
final class Guard {

    /** Nothing is loaded from elsewhere, no script or style stands in a page, and no other page may frame ours. */
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                    + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'; frame-src 'self';"
                    + " object-src 'none'; manifest-src 'self'";

    /** A pattern file of a whole garment has some hundred kilobytes; a nested pattern as a PDF has up to some ten megabytes. */
    static final long LARGEST_REQUEST_BYTES = 32L << 20;

    private static final Set<String> ONLY_LOOK = Set.of("GET", "HEAD");

    private final Reach reach;
    private final Function<Context, String> secret;

    Guard(Reach reach, Function<Context, String> secret) {
        this.reach = reach;
        this.secret = secret;
    }

    void headers(Context context) {
        context.header("Content-Security-Policy", POLICY)
                .header("X-Content-Type-Options", "nosniff")
                .header("Referrer-Policy", "same-origin")
                .header("Cross-Origin-Opener-Policy", "same-origin")
                .header("Cross-Origin-Resource-Policy", "same-origin")
                .header("X-Frame-Options", "DENY")
                .header("Cache-Control", "no-store");
        if (reach.tls()) {
            context.header("Strict-Transport-Security", "max-age=31536000");
        }
    }

    /** Before anything else is done. */
    void check(Context context) {
        int port = context.port();
        String ours = reach.origin(String.valueOf(context.host()), port).orElseThrow(() -> {
            String open = reach.address(port).replaceFirst("/$", "");
            return new RefusedException("This address is not Trueseam's; open " + open + " instead.");
        });
        if (ONLY_LOOK.contains(context.method().name())) {
            return;
        }
        measure(context.header("Content-Length"));
        String origin = context.header("Origin");
        if (origin != null && !origin.equals(ours)) {
            throw new RefusedException("Another page asked for a change; only Trueseam's own pages may.");
        }
        String told = context.header("Trueseam-Secret");
        if (told == null) {
            told = context.formParam("secret");
        }
        if (told == null || !same(told, secret.apply(context))) {
            throw new RefusedException("This page is from another Trueseam; reload it, then make your change again.");
        }
    }

    /** What is sent says how long it is, and is no longer than a PDF of a nested pattern. */
    private static void measure(String length) {
        if (length == null || !length.matches("\\d{1,18}")) {
            throw new TooLargeException("What was sent does not say how long it is; send it from Trueseam's own page.");
        }
        if (Long.parseLong(length) > LARGEST_REQUEST_BYTES) {
            throw new TooLargeException(
                    "The file is larger than 32 MB. Bring the pattern alone, without pictures; a larger zip of a record"
                            + " book comes back by the command trueseam book bring-back.");
        }
    }

    private static boolean same(String told, String secret) {
        return MessageDigest.isEqual(told.getBytes(StandardCharsets.UTF_8), secret.getBytes(StandardCharsets.UTF_8));
    }
}
