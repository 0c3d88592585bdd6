package trueseam.app;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import trueseam.app.command.AlterationsCommand;
import trueseam.app.command.BookCommand;
import trueseam.app.command.BringInCommand;
import trueseam.app.command.ChoicesCommand;
import trueseam.app.command.CompareCommand;
import trueseam.app.command.DraftCommand;
import trueseam.app.command.FitCommand;
import trueseam.app.command.GiveCommand;
import trueseam.app.command.HandoutCommand;
import trueseam.app.command.LayCommand;
import trueseam.app.command.MeasureCommand;
import trueseam.app.command.OpenCommand;
import trueseam.app.command.PrintCommand;
import trueseam.app.command.SizeCommand;
import trueseam.app.command.StandingCommand;
import trueseam.app.command.TrialCommand;
import trueseam.app.command.WalkCommand;

/**
 * The command line. Every failure that the user can mend is one sentence on standard error and exit code 2; nothing else is ever
 * printed of it.
 */
@Command(
        name = "trueseam",
        description = "Fits a sewing pattern to one person, before cloth is cut.",
        mixinStandardHelpOptions = true,
        version = "trueseam 0.1.0",
        footer = {
            "",
            "Example, from nothing to a fitted bodice:",
            "  trueseam draft bodice --table misses --size 14 --out bodice.svg",
            "  trueseam fit --body anna.csv --pattern bodice.svg --out fitted"
        })
public final class Main implements Runnable {

    /** Every command, in the order in which the help tells them. */
    private static final List<Class<?>> COMMANDS = List.of(
            SizeCommand.class,
            DraftCommand.class,
            MeasureCommand.class,
            WalkCommand.class,
            CompareCommand.class,
            FitCommand.class,
            PrintCommand.class,
            HandoutCommand.class,
            LayCommand.class,
            AlterationsCommand.class,
            ChoicesCommand.class,
            StandingCommand.class,
            TrialCommand.class,
            OpenCommand.class,
            BookCommand.class,
            BringInCommand.class,
            GiveCommand.class);

    /** The user has to mend something. */
    static final int MEND = 2;

    /** The program has to be mended. */
    static final int BROKEN = 1;

    @Spec
    private CommandSpec spec;

    /** For the command line. */
    public Main() {}

    /**
     * Runs a command and leaves with its exit code.
     *
     * @param args the command and its options
     */
    public static void main(String[] args) {
        // UTF-8 whatever the machine says: fractions and names come out as they were written.
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(args, out, err));
    }

    /**
     * Runs a command.
     *
     * @param args the command and its options
     * @param out where results go
     * @param err where sentences about failures go
     * @return the exit code: 0 done, 2 something to mend, 1 the program failed
     */
    public static int run(String[] args, PrintWriter out, PrintWriter err) {
        CommandLine line = new CommandLine(new Main());
        commands(args).forEach(line::addSubcommand);
        line.setOut(out);
        line.setErr(err);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpWidth(100);
        line.setExecutionExceptionHandler((e, command, parsed) -> failed(e, command.getErr()));
        line.setParameterExceptionHandler(Main::misused);
        int code = line.execute(args);
        out.flush();
        err.flush();
        return code;
    }

    /**
     * The command that is named, or all where none of them is. Taking up the options of all of them is a tenth of a whole fit on a cold
     * Java.
     */
    static List<Class<?>> commands(String[] args) {
        return COMMANDS.stream()
                .filter(command -> args.length > 0 && name(command).equals(args[0]))
                .findFirst()
                .<List<Class<?>>>map(List::of)
                .orElse(COMMANDS);
    }

    /** BringInCommand is {@code bring-in}. */
    static String name(Class<?> command) {
        return command.getSimpleName()
                .replaceFirst("Command$", "")
                .replaceAll("(?<=.)([A-Z])", "-$1")
                .toLowerCase(Locale.ROOT);
    }

    private static int misused(ParameterException e, String[] args) {
        CommandLine command = e.getCommandLine();
        command.getErr()
                .println("trueseam: " + sentence(e.getMessage()) + " See "
                        + command.getCommandSpec().qualifiedName() + " --help.");
        return MEND;
    }

    private static int failed(Exception e, PrintWriter err) {
        // Every exception type of our rooms carries a sentence for the user; anything else is a fault of the program.
        boolean ours = e.getClass().getName().startsWith("trueseam.");
        if (ours) {
            err.println("trueseam: " + sentence(e.getMessage()));
            return MEND;
        }
        StackTraceElement[] trace = e.getStackTrace();
        String where = trace.length > 0 ? trace[0].toString() : "an unknown place";
        err.println("trueseam: The program failed (" + e.getClass().getSimpleName() + ": " + e.getMessage() + ", at "
                + where + "); this is a fault of the program, please report it with the command you gave.");
        return BROKEN;
    }

    private static String sentence(String message) {
        String said = String.join(" ", List.of(String.valueOf(message).strip().split("\\s*\\R\\s*")));
        return said.endsWith(".") ? said : said + ".";
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
