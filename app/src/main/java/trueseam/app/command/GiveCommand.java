package trueseam.app.command;

import java.nio.file.Path;
import java.util.List;
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
import trueseam.app.input.PaperOption;
import trueseam.app.input.PatternOption;
import trueseam.app.input.UnitsOption;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.pattern.Pattern;
import trueseam.intake.patternfile.PatternFile;
import trueseam.output.dxf.ApparelDxf;
import trueseam.output.print.FullSizePrint;
import trueseam.output.print.PrintOptions;

/** Gives a pattern away in a file form that others read. */
@Command(
        name = "give",
        description =
                "Write a pattern for others: as DXF after ASTM D6673 for a plotter, a cutter or a factory, as SVG, or as PDF at"
                        + " full size.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Examples:",
            "  trueseam give --pattern fitted/altered.svg --out altered.dxf",
            "  trueseam give --pattern fitted/altered.svg --out altered.pdf --paper a0"
        })
public final class GiveCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private PatternOption pattern;

    @Mixin
    private PaperOption paper;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            required = true,
            description = "The file to write; its name ends in .dxf, .svg or .pdf and so says which.")
    private Path out;

    @Mixin
    private UnitsOption units;

    /** For the command line. */
    public GiveCommand() {}

    @Override
    public Integer call() {
        String name = out.toString().toLowerCase(Locale.ROOT);
        String form = name.substring(name.lastIndexOf('.') + 1);
        if (!List.of("dxf", "svg", "pdf").contains(form)) {
            throw new InputException(out + " does not say what it is to be; let its name end in .dxf, .svg or .pdf.");
        }
        Pattern read = pattern.read(spec.commandLine().getErr());
        OutputFiles files = new OutputFiles();
        switch (form) {
            case "dxf" -> files.add(out, ApparelDxf.write(read));
            case "svg" -> files.add(out, PatternFile.write(read));
            default -> files.add(out, print(read));
        }
        files.write();
        if (units.json()) {
            spec.commandLine().getOut().println(Json.write(Map.of("file", out.toString())));
            return 0;
        }
        spec.commandLine()
                .getOut()
                .println("Written to " + out + ". Have a test square cut, plotted or printed first, and measure it.");
        return 0;
    }

    private byte[] print(Pattern read) {
        PrintOptions options = PrintOptions.usual(paper.fullSize(units.bareUnit()), units.format(), "");
        return FullSizePrint.of(WorkedPattern.of(read), options, List.of()).pdf();
    }
}
