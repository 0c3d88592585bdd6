package trueseam.records.internal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** What proves a session or an invitation: 256 bits of chance, of which only the SHA-256 is kept. */
final class Tokens {

    private static final SecureRandom RANDOM = new SecureRandom();

    private Tokens() {}

    static String fresh() {
        byte[] bytes = new byte[32];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    static byte[] salt(int length) {
        byte[] bytes = new byte[length];
        RANDOM.nextBytes(bytes);
        return bytes;
    }

    /** A positive number that no other account has, and that says nothing of how many there are. */
    static long number() {
        return (RANDOM.nextLong() >>> 12) + 2;
    }

    static String mark(String token) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
