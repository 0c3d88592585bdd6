package trueseam.worktable;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;
import java.util.Set;

/**
 * Keeps other people's pages out: only the names of this very machine are answered (a foreign name that leads here is not), and what
 * changes something must come from one of our own pages and know the secret of the data folder.
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

    private final String secret;

    Guard(String secret) {
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
    }

    /** Before anything else is done. */
    void check(Context context) {
        int port = context.port();
        List<String> ours = List.of("localhost:" + port, "127.0.0.1:" + port, "[::1]:" + port);
        String host = String.valueOf(context.host());
        if (!ours.contains(host)) {
            throw new RefusedException("This address is not Trueseam's; open http://localhost:" + port + " instead.");
        }
        if (ONLY_LOOK.contains(context.method().name())) {
            return;
        }
        measure(context.header("Content-Length"));
        String origin = context.header("Origin");
        if (origin != null && !origin.equals("http://" + host)) {
            throw new RefusedException("Another page asked for a change; only Trueseam's own pages may.");
        }
        String told = context.header("Trueseam-Secret");
        if (told == null) {
            told = context.formParam("secret");
        }
        if (told == null || !same(told, secret)) {
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
                    "The file is larger than 32 MB; a pattern is smaller. Bring the pattern alone, without"
                            + " pictures.");
        }
    }

    private static boolean same(String told, String secret) {
        return MessageDigest.isEqual(told.getBytes(StandardCharsets.UTF_8), secret.getBytes(StandardCharsets.UTF_8));
    }
}
