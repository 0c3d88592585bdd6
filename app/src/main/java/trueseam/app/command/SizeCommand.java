package trueseam.app.command;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import trueseam.app.input.BodyOption;
import trueseam.app.input.InputException;
import trueseam.app.input.Json;
import trueseam.app.input.TableOption;
import trueseam.app.input.UnitsOption;
import trueseam.drafting.garment.Garment;
import trueseam.fitting.sizing.SizeChoice;
import trueseam.garment.finding.Finding;

/** Chooses the size of a pattern for a body, and says why. */
@Command(
        name = "size",
        description = "Choose the size to buy by the frame of the body, and say why.",
        mixinStandardHelpOptions = true,
        footer = {"", "Example:", "  trueseam size --body anna.csv --table misses --for bodice"})
public final class SizeCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private BodyOption body;

    @Mixin
    private TableOption table;

    @Mixin
    private UnitsOption units;

    @Option(
            names = "--for",
            paramLabel = "GARMENT",
            defaultValue = "bodice",
            description = "bodice, dress, skirt or trousers (default: ${DEFAULT-VALUE}).")
    private Garment garment;

    /** For the command line. */
    public SizeCommand() {}

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        var sizes = table.named()
                .orElseThrow(() -> new InputException("No size table was named; give --table misses, for example."));
        SizeChoice choice = SizeChoice.of(sizes, body.read(units.bareUnit()).body(), garment.kind(), units.format());
        if (units.json()) {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("table", choice.table());
            json.put("size", choice.row().size());
            json.put("by", choice.by().term());
            json.put("bodyMm", choice.bodyMm());
            json.put("column", choice.column().term());
            json.put("tableMm", choice.tableMm());
            json.put("reason", choice.reason());
            json.put(
                    "findings",
                    choice.findings().stream().map(Finding::sentence).toList());
            out.println(Json.write(json));
            return 0;
        }
        out.println("Size " + choice.row().size() + " of table \"" + choice.table() + "\".");
        out.println(choice.reason());
        choice.findings().forEach(f -> out.println("Mind: " + f.sentence()));
        return 0;
    }
}
