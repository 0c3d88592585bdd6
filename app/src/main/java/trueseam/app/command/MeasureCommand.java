package trueseam.app.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import trueseam.app.input.Columns;
import trueseam.app.input.Json;
import trueseam.app.input.PatternOption;
import trueseam.app.input.UnitsOption;
import trueseam.garment.flat.FlatMeasure;
import trueseam.garment.flat.FlatPart;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.length.LengthFormat;

/** Measures a flat pattern, with the working. */
@Command(
        name = "measure",
        description = "Measure the flat pattern: stitching lines, darts folded out, half pieces counted double.",
        mixinStandardHelpOptions = true,
        footer = {"", "Example:", "  trueseam measure --pattern bodice.svg --units cm"})
public final class MeasureCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private PatternOption pattern;

    @Mixin
    private UnitsOption units;

    /** For the command line. */
    public MeasureCommand() {}

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        List<FlatMeasure> measures =
                FlatPattern.all(pattern.read(spec.commandLine().getErr()));
        if (units.json()) {
            List<Object> json = new ArrayList<>();
            for (FlatMeasure m : measures) {
                Map<String, Object> one = new LinkedHashMap<>();
                one.put("measure", m.measure().term());
                one.put("mm", m.mm());
                one.put("parts", m.parts());
                json.add(one);
            }
            out.println(Json.write(json));
            return 0;
        }
        LengthFormat show = units.format();
        Columns table = new Columns("measure", "flat pattern", "working");
        for (FlatMeasure m : measures) {
            StringBuilder working = new StringBuilder();
            for (FlatPart part : m.parts()) {
                working.append(working.length() == 0 ? "" : " + ")
                        .append(part.times() == 1 ? "" : part.times() + " x ")
                        .append(show.show(part.mm()) + " " + part.piece() + ", " + part.what());
            }
            table.row(m.measure().term(), show.show(m.mm()), working.toString());
        }
        out.print(table.text());
        return 0;
    }
}
