package trueseam.app.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import trueseam.app.input.Json;
import trueseam.app.input.OutputFiles;
import trueseam.app.input.PaperOption;
import trueseam.app.input.PatternOption;
import trueseam.app.input.TrouserHemOption;
import trueseam.app.input.UnitsOption;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.pattern.Pattern;
import trueseam.output.print.FullSizePrint;
import trueseam.output.print.PrintOptions;

/** Prints a pattern at full size as it is. */
@Command(
        name = "print",
        description = "Print a pattern at full size, as it is.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Example:",
            "  trueseam print --pattern bodice.svg --paper a4 --out bodice.pdf",
            "",
            "Print page one first at 100 %% and measure both test squares before cutting."
        })
public final class PrintCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private PatternOption pattern;

    @Mixin
    private PaperOption paper;

    @Mixin
    private TrouserHemOption hem;

    @Option(names = "--label", paramLabel = "TEXT", defaultValue = "", description = "What is printed on the pieces.")
    private String label;

    @Option(names = "--out", paramLabel = "FILE", required = true, description = "The PDF to write.")
    private Path out;

    @Mixin
    private UnitsOption units;

    /** For the command line. */
    public PrintCommand() {}

    @Override
    public Integer call() {
        Pattern read = hem.hem().on(pattern.read(spec.commandLine().getErr()));
        PrintOptions options = PrintOptions.usual(paper.fullSize(units.bareUnit()), units.format(), label);
        byte[] pdf =
                FullSizePrint.of(WorkedPattern.of(read), options, List.of()).pdf();
        new OutputFiles().add(out, pdf).write();
        if (units.json()) {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("file", out.toString());
            json.put("bytes", pdf.length);
            spec.commandLine().getOut().println(Json.write(json));
        } else {
            spec.commandLine()
                    .getOut()
                    .println("Written to " + out
                            + "; print page one at 100 % and measure both test squares before cutting.");
        }
        return 0;
    }
}
