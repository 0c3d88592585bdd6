package trueseam.app.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import trueseam.app.input.Json;
import trueseam.app.input.UnitsOption;
import trueseam.output.handbook.Disagreement;
import trueseam.output.handbook.DisagreementText;

/** Tells where handbooks disagree, and how to choose. */
@Command(
        name = "choices",
        description = "Tell where handbooks disagree, what may be chosen, why, and how.",
        mixinStandardHelpOptions = true,
        footer = {"", "Example:", "  trueseam choices"})
public final class ChoicesCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Option(names = "--markdown", description = "Print all of it as a document.")
    private boolean markdown;

    @Mixin
    private UnitsOption units;

    /** For the command line. */
    public ChoicesCommand() {}

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        List<Disagreement> all = Disagreement.all();
        if (units.json()) {
            out.println(Json.write(DisagreementText.figures(all)));
        } else if (markdown) {
            out.print(DisagreementText.markdown(all));
        } else {
            out.println(DisagreementText.list(all));
        }
        return 0;
    }
}
