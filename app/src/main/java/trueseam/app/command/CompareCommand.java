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
import trueseam.app.input.FitInput;
import trueseam.app.input.Json;
import trueseam.fitting.compare.Need;
import trueseam.fitting.sizing.SizeChoice;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthFormat;

/** Compares a body with a pattern and decides, without altering anything. */
@Command(
        name = "compare",
        description = "Compare a body with a pattern, measure by measure, and say which differences matter.",
        mixinStandardHelpOptions = true,
        footer = {"", "Example:", "  trueseam compare --body anna.csv --pattern bodice.svg"})
public final class CompareCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private FitInput input;

    /** For the command line. */
    public CompareCommand() {}

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        FitInput.Case fit = input.read(spec.commandLine().getErr());
        List<Need> needs = fit.chart();
        if (input.units().json()) {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("size", fit.choice().map(CompareCommand::json).orElse(null));
            json.put("needs", json(needs));
            json.put(
                    "standing",
                    fit.findings().stream()
                            .map(f -> f.place() + ": " + f.sentence())
                            .toList());
            out.println(Json.write(json));
            return 0;
        }
        LengthFormat show = input.units().format();
        fit.choice().ifPresent(choice -> {
            out.println(choice.reason());
            choice.findings().forEach(f -> out.println("Mind: " + f.sentence()));
        });
        Columns table = new Columns("measure", "body", "size table", "flat pattern", "ease", "need", "decision");
        for (Need need : needs) {
            table.row(
                    need.measure().term(),
                    show.show(need.body().mm()),
                    need.tableMm().isPresent() ? show.show(need.tableMm().getAsDouble()) : "-",
                    need.flatMm().isPresent() ? show.show(need.flatMm().getAsDouble()) : "-",
                    show.show(need.easeMm()),
                    show.showSigned(need.needMm()),
                    need.decision().verdict().word() + ": " + need.decision().reason());
        }
        out.print(table.text());
        fit.findings().forEach(f -> out.println(f.place() + ": " + f.sentence()));
        return 0;
    }

    private static Map<String, Object> json(SizeChoice choice) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("table", choice.table());
        json.put("chosen", choice.row().size());
        json.put("reason", choice.reason());
        json.put("findings", choice.findings().stream().map(Finding::sentence).toList());
        return json;
    }

    private static List<Object> json(List<Need> needs) {
        List<Object> all = new ArrayList<>();
        for (Need need : needs) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("measure", need.measure().term());
            one.put("bodyMm", need.body().mm());
            one.put("origin", need.body().origin().toString());
            one.put("tableMm", need.tableMm().isPresent() ? need.tableMm().getAsDouble() : null);
            one.put("flatMm", need.flatMm().isPresent() ? need.flatMm().getAsDouble() : null);
            one.put("easeMm", need.easeMm());
            one.put("needMm", need.needMm());
            one.put("verdict", need.decision().verdict().word());
            one.put("amountMm", need.decision().amountMm());
            one.put("reason", need.decision().reason());
            all.add(one);
        }
        return all;
    }
}
