package trueseam.records.internal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.concurrent.Semaphore;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * Passwords as Argon2id, written as the reference implementation writes them: {@code $argon2id$v=19$m=65536,t=3,p=4$SALT$HASH}.
 * Parameters: RFC 9106 (2021), section 4, the second recommended option: 3 passes, 4 lanes, 64 MiB, a salt of 128 and a tag of 256
 * bits. Safe for use by several threads.
 */
final class Passwords {

    private static final int PASSES = 3;
    private static final int LANES = 4;
    private static final int KIBIBYTES = 65_536;
    private static final int SALT_BYTES = 16;
    private static final int TAG_BYTES = 32;

    private static final Pattern WRITTEN = Pattern.compile(
            "\\$argon2id\\$v=19\\$m=(\\d{1,7}),t=(\\d{1,3}),p=(\\d{1,3})\\$([A-Za-z0-9+/]+)\\$([A-Za-z0-9+/]+)");

    /** Each one needs 64 MiB while it is worked out; whoever comes third waits for a second. */
    private static final Semaphore AT_ONCE = new Semaphore(2, true);

    private Passwords() {}

    /** What is kept of a password. */
    static String kept(String password) {
        byte[] salt = Tokens.salt(SALT_BYTES);
        Base64.Encoder base64 = Base64.getEncoder().withoutPadding();
        return "$argon2id$v=19$m=" + KIBIBYTES + ",t=" + PASSES + ",p=" + LANES + "$" + base64.encodeToString(salt)
                + "$" + base64.encodeToString(worked(password, KIBIBYTES, PASSES, LANES, salt, TAG_BYTES));
    }

    /** Whether it is the password; what is kept may have been made with other parameters. */
    static boolean fits(String password, String kept) {
        Matcher written = WRITTEN.matcher(kept);
        if (!written.matches()) {
            throw new IllegalArgumentException("what is kept of a password is not Argon2id");
        }
        byte[] salt = Base64.getDecoder().decode(written.group(4));
        byte[] wanted = Base64.getDecoder().decode(written.group(5));
        byte[] got = worked(
                password,
                Integer.parseInt(written.group(1)),
                Integer.parseInt(written.group(2)),
                Integer.parseInt(written.group(3)),
                salt,
                wanted.length);
        return MessageDigest.isEqual(wanted, got);
    }

    /** Takes the time that a password takes, so that an unknown name is not told from a wrong password. */
    static void fitsNobody(String password) {
        worked(password, KIBIBYTES, PASSES, LANES, new byte[SALT_BYTES], TAG_BYTES);
    }

    private static byte[] worked(String password, int kibibytes, int passes, int lanes, byte[] salt, int bytes) {
        Argon2BytesGenerator generator = new Argon2BytesGenerator();
        generator.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                .withMemoryAsKB(kibibytes)
                .withIterations(passes)
                .withParallelism(lanes)
                .withSalt(salt)
                .build());
        byte[] tag = new byte[bytes];
        AT_ONCE.acquireUninterruptibly();
        try {
            generator.generateBytes(password.getBytes(StandardCharsets.UTF_8), tag);
        } finally {
            AT_ONCE.release();
        }
        return tag;
    }
}
