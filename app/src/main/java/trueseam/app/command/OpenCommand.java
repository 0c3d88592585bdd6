package trueseam.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import trueseam.app.input.InputException;
import trueseam.worktable.Worktable;
import trueseam.worktable.WorktableException;

/** Opens the worktable in the browser. */
@Command(
        name = "open",
        description = "Open the worktable in the browser: the whole job on screens, on this machine alone.",
        mixinStandardHelpOptions = true,
        footer = {"", "Example:", "  trueseam open", "", "End it with Ctrl+C; everything is kept as it happens."})
public final class OpenCommand implements Callable<Integer> {

    /** Any free one is as good; one that stays the same can be a bookmark. */
    private static final int USUAL_PORT = 7431;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--port",
            paramLabel = "N",
            description = "The port, 0 for any free one. Default: 7431, or any free one if that is taken.")
    private Integer port;

    @Option(names = "--no-browser", description = "Only say the address.")
    private boolean noBrowser;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "The folder that everything is kept in. Default: trueseam in your folder for programs' data.")
    private Path data;

    @Option(
            names = "--record-book",
            paramLabel = "PLACE",
            description =
                    "Where people, patterns and fittings are kept: a file, or jdbc:postgresql://HOST/DATABASE?user=NAME."
                            + " Default: what TRUESEAM_RECORD_BOOK says, or a file in the data folder. A password is taken from"
                            + " TRUESEAM_RECORD_BOOK_PASSWORD or the file .pgpass, so that it does not show.")
    private String recordBook;

    /** For the command line. */
    public OpenCommand() {}

    @Override
    public Integer call() throws InterruptedException {
        PrintWriter say = spec.commandLine().getOut();
        if (port != null && !(0 <= port && port <= 65_535)) {
            throw new InputException("--port " + port + " is no port; give 0 (any free one) to 65535.");
        }
        Worktable worktable = opened();
        CountDownLatch ended = new CountDownLatch(1);
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            worktable.close();
            ended.countDown();
        }));
        say.println("The worktable is open at " + worktable.address());
        say.println("Only this machine can reach it. End it with Ctrl+C; everything is kept as it happens.");
        say.flush();
        if (!noBrowser && !browse(worktable.address())) {
            say.println("No browser could be started; open the address yourself.");
        }
        ended.await();
        return 0;
    }

    private Worktable opened() {
        Path folder = data == null ? usualFolder() : data;
        if (port != null) {
            return opened(folder, port);
        }
        try {
            return opened(folder, USUAL_PORT);
        } catch (WorktableException e) {
            return opened(folder, 0);
        }
    }

    private Worktable opened(Path folder, int at) {
        Optional<String> place = Optional.ofNullable(recordBook).or(() -> setting("TRUESEAM_RECORD_BOOK"));
        return Worktable.open(folder, place, setting("TRUESEAM_RECORD_BOOK_PASSWORD"), at);
    }

    private static Optional<String> setting(String name) {
        return Optional.ofNullable(System.getenv(name)).filter(value -> !value.isBlank());
    }

    private static Path usualFolder() {
        Path home = Path.of(System.getProperty("user.home"));
        String named = Optional.ofNullable(System.getenv("XDG_DATA_HOME")).orElse("");
        if (!named.isBlank()) {
            return Path.of(named, "trueseam");
        }
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        if (system.contains("win")) {
            return home.resolve("AppData/Local/trueseam");
        }
        return system.contains("mac")
                ? home.resolve("Library/Application Support/trueseam")
                : home.resolve(".local/share/trueseam");
    }

    private static boolean browse(String address) {
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        List<String> command = system.contains("win")
                ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
                : List.of(system.contains("mac") ? "open" : "xdg-open", address);
        try {
            new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
