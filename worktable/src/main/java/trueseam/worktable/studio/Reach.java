package trueseam.worktable.studio;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * From where a worktable can be reached.
 *
 * @param bind the address that it listens at
 * @param name the name that other machines know it by, with the port if that is not the usual one; empty: this machine alone
 * @param tls whether a reverse proxy with TLS stands before it under that name
 */
public record Reach(String bind, Optional<String> name, boolean tls) {

    private static final List<String> LOOPBACK = List.of("127.0.0.1", "localhost", "::1");

    /** Nobody else's machine is let in by accident. */
    public Reach {
        if (name.isEmpty() && (tls || !LOOPBACK.contains(bind))) {
            throw new IllegalArgumentException("reach " + bind + " without a name");
        }
    }

    /**
     * This machine alone.
     *
     * @return loopback
     */
    public static Reach thisMachine() {
        return new Reach("127.0.0.1", Optional.empty(), false);
    }

    /**
     * Whether an address is one of this very machine.
     *
     * @param bind the address
     * @return whether no other machine reaches it
     */
    public static boolean isLoopback(String bind) {
        return LOOPBACK.contains(bind);
    }

    /**
     * The origin of our own pages as a browser sends it.
     *
     * @param host the host that was asked
     * @param port the port that is listened at
     * @return the origin; empty if the host is not one of ours
     */
    public Optional<String> origin(String host, int port) {
        String asked = host.toLowerCase(Locale.ROOT);
        if (name.isPresent() && asked.equals(name.get().toLowerCase(Locale.ROOT))) {
            return Optional.of((tls ? "https://" : "http://") + host);
        }
        return List.of("localhost:" + port, "127.0.0.1:" + port, "[::1]:" + port)
                        .contains(host)
                ? Optional.of("http://" + host)
                : Optional.empty();
    }

    /**
     * The address that is given to people.
     *
     * @param port the port that is listened at
     * @return with a slash at the end
     */
    public String address(int port) {
        return name.map(n -> (tls ? "https://" : "http://") + n + "/").orElse("http://localhost:" + port + "/");
    }
}
