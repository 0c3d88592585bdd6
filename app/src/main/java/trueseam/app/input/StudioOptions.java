package trueseam.app.input;

import java.util.Optional;
import picocli.CommandLine.Option;
import trueseam.worktable.studio.Reach;

/** Who may reach the worktable: this machine alone, or the accounts of a studio. */
public final class StudioOptions {

    private static final String LOOPBACK = "127.0.0.1";

    @Option(
            names = "--studio",
            description = "For several: accounts with passwords, each with its own people; see docs/studio.md.")
    private boolean studio;

    @Option(
            names = "--behind-tls",
            paramLabel = "NAME",
            description = "In a studio: the name under which a reverse proxy with TLS stands before it.")
    private String behindTls;

    @Option(
            names = "--plain-in-own-network",
            paramLabel = "NAME:PORT",
            description =
                    "In a studio: the name that other machines of your own network use, without TLS: whoever listens in that"
                            + " network can read passwords and measures.")
    private String plain;

    @Option(
            names = "--host",
            paramLabel = "ADDRESS",
            description = "In a studio: the address to listen at, 0.0.0.0 for all. Default: 127.0.0.1.")
    private String host;

    @Option(
            names = "--owner-link",
            description = "In a studio: a new link for setting the owner's password, if it was lost.")
    private boolean ownerLink;

    /** For the command line. */
    public StudioOptions() {}

    /**
     * From where a studio is reached.
     *
     * @return empty where the program is used alone
     * @throws InputException if the options do not go together
     */
    public Optional<Reach> reach() {
        if (!studio) {
            if (behindTls != null || plain != null || host != null || ownerLink) {
                throw new InputException(
                        "--host, --behind-tls, --plain-in-own-network and --owner-link go with --studio only; without"
                                + " accounts nobody but this machine is let in.");
            }
            return Optional.empty();
        }
        if (behindTls != null && plain != null) {
            throw new InputException("--behind-tls and --plain-in-own-network do not go together; give one of them.");
        }
        Optional<String> name = Optional.ofNullable(behindTls).or(() -> Optional.ofNullable(plain));
        if (name.isPresent() && !name.get().matches("[A-Za-z0-9.-]+(:[0-9]{1,5})?")) {
            throw new InputException(
                    name.get() + " is no name of a machine; give it as studio.example.org, without https.");
        }
        String bind = host == null ? LOOPBACK : host;
        if (name.isEmpty() && !Reach.isLoopback(bind)) {
            throw new InputException(
                    "--host " + bind + " lets other machines in; say with --behind-tls NAME that TLS stands"
                            + " before it, or with --plain-in-own-network NAME:PORT that you do without.");
        }
        return Optional.of(new Reach(bind, name, behindTls != null));
    }

    /**
     * Who can reach it, for the first lines.
     *
     * @return a sentence
     */
    public String whoReachesIt() {
        if (behindTls == null && plain == null) {
            return "Only this machine can reach it.";
        }
        return behindTls == null
                ? "Other machines can reach it, without TLS: whoever listens in your network can read along."
                : "Other machines reach it through the proxy with TLS.";
    }

    /**
     * Whether a link for the owner's password is given out.
     *
     * @param hasOwner whether there is a password already
     * @return true at a studio's first start, and when it was asked for
     */
    public boolean givesOwnerLink(boolean hasOwner) {
        return studio && (ownerLink || !hasOwner);
    }
}
