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
import trueseam.app.input.BetweenSizesOption;
import trueseam.app.input.BodyOption;
import trueseam.app.input.InputException;
import trueseam.app.input.Json;
import trueseam.app.input.TableOption;
import trueseam.app.input.UnitsOption;
import trueseam.drafting.garment.Garment;
import trueseam.fitting.sizing.ShirtSize;
import trueseam.fitting.sizing.SizeChoice;
import trueseam.garment.body.Body;
import trueseam.garment.body.IdealFigure;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;

/** Chooses the size of a pattern for a body, and says why. */
@Command(
        name = "size",
        description = "Choose the size to buy by the frame of the body, and say why.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Examples:",
            "  trueseam size --body anna.csv --table misses --for bodice",
            "  trueseam size --body anna.csv --table misses --for skirt --between-sizes small-boned",
            "  trueseam size --body otto.csv --shirt"
        })
public final class SizeCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private BodyOption body;

    @Mixin
    private TableOption table;

    @Mixin
    private BetweenSizesOption between;

    @Mixin
    private UnitsOption units;

    @Option(
            names = "--for",
            paramLabel = "GARMENT",
            defaultValue = "bodice",
            description = "bodice, dress, skirt or trousers (default: ${DEFAULT-VALUE}).")
    private Garment garment;

    @Option(
            names = "--shirt",
            description = "The size of a man's shirt instead, by the bare neck and 1/2 in; no table is needed.")
    private boolean shirt;

    /** For the command line. */
    public SizeCommand() {}

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (shirt) {
            shirt(out);
            return 0;
        }
        var sizes = table.named()
                .orElseThrow(() -> new InputException("No size table was named; give --table misses, for example."));
        Body person = body.read(units.bareUnit()).body();
        SizeChoice choice = SizeChoice.of(sizes, person, garment.kind(), between.between(), units.format());
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
        person.value(Measure.STATURE).ifPresent(stature -> out.println(proportions(stature.mm())));
        return 0;
    }

    private String proportions(double statureMm) {
        IdealFigure ideal = new IdealFigure(statureMm);
        LengthFormat show = units.format();
        return "Figures of this height are drawn with a head of " + show.show(ideal.headMm())
                + " (7 1/2 heads to the height), armpits " + show.show(ideal.armpitMm()) + ", hip line "
                + show.show(ideal.hipMm()) + " and knees " + show.show(ideal.kneeMm())
                + " above the floor; to look at, not to have.";
    }

    private void shirt(PrintWriter out) {
        ShirtSize size = ShirtSize.of(body.read(units.bareUnit()).body(), between.between(), units.format());
        if (units.json()) {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("size", size.label());
            json.put("neckMm", size.neckMm());
            json.put("sizeMm", size.sizeMm());
            json.put("reason", size.reason());
            out.println(Json.write(json));
        } else {
            out.println("Shirt size " + size.label() + ".");
            out.println(size.reason());
        }
    }
}
