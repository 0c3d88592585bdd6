package trueseam.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import trueseam.app.input.InputException;
import trueseam.app.input.RecordBookOption;
import trueseam.app.input.StudioOptions;
import trueseam.worktable.Worktable;
import trueseam.worktable.WorktableException;

/** Opens the worktable in the browser. */
@Command(
        name = "open",
        description = "Open the worktable in the browser: the whole job on screens, on this machine alone.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Examples:",
            "  trueseam open",
            "  trueseam open --studio --behind-tls studio.example.org",
            "",
            "End it with Ctrl+C; everything is kept as it happens."
        })
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

    @Mixin
    private RecordBookOption kept;

    @Mixin
    private StudioOptions studio;

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
        say.println(studio.whoReachesIt() + " End it with Ctrl+C; everything is kept as it happens.");
        if (studio.givesOwnerLink(worktable.hasOwner())) {
            say.println(
                    "Open this link to set name and password of the studio's owner; it is good once, for seven days:");
            say.println("  " + worktable.ownerLink());
        }
        say.flush();
        if (!noBrowser && !browse(worktable.address())) {
            say.println("No browser could be started; open the address yourself.");
        }
        ended.await();
        return 0;
    }

    private Worktable opened() {
        if (port != null) {
            return opened(port);
        }
        try {
            return opened(USUAL_PORT);
        } catch (WorktableException e) {
            return opened(0);
        }
    }

    private Worktable opened(int at) {
        return studio.reach()
                .map(reach -> Worktable.studio(kept.folder(), kept.named(), kept.password(), reach, at))
                .orElseGet(() -> Worktable.open(kept.folder(), kept.named(), kept.password(), at));
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
