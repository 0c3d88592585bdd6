package trueseam.app.command;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import trueseam.app.input.InputException;
import trueseam.app.input.Json;
import trueseam.app.input.OutputFiles;
import trueseam.app.input.PatternOption;
import trueseam.output.dxf.ApparelDxf;

/** Gives a pattern away in the trade's file form. */
@Command(
        name = "give",
        description = "Write a pattern as a DXF file after ASTM D6673, for a plotter, a cutter or a factory.",
        mixinStandardHelpOptions = true,
        footer = {"", "Example:", "  trueseam give --pattern fitted/altered.svg --out altered.dxf"})
public final class GiveCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private PatternOption pattern;

    @Option(names = "--out", paramLabel = "FILE.dxf", required = true, description = "The DXF file to write.")
    private Path out;

    @Option(names = "--json", description = "Print the result as JSON.")
    private boolean json;

    /** For the command line. */
    public GiveCommand() {}

    @Override
    public Integer call() {
        if (!out.toString().toLowerCase(Locale.ROOT).endsWith(".dxf")) {
            throw new InputException(
                    out + " is no DXF file; let its name end in .dxf. For PDF use print; a pattern file is an SVG"
                            + " already.");
        }
        new OutputFiles()
                .add(out, ApparelDxf.write(pattern.read(spec.commandLine().getErr())))
                .write();
        if (json) {
            spec.commandLine().getOut().println(Json.write(Map.of("file", out.toString())));
            return 0;
        }
        spec.commandLine()
                .getOut()
                .println("Written to " + out + ". Have a test square cut or plotted first, and measure it.");
        return 0;
    }
}
