package trueseam.app.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import trueseam.app.input.Columns;
import trueseam.app.input.Json;
import trueseam.app.input.PatternOption;
import trueseam.app.input.UnitsOption;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Seam;

/** Walks every seam of a pattern. */
@Command(
        name = "walk",
        description = "Walk every seam: both sides as sewn, darts left out, the ease intended, and what is left over.",
        mixinStandardHelpOptions = true,
        footer = {"", "Example:", "  trueseam walk --pattern bodice.svg"})
public final class WalkCommand implements Callable<Integer> {

    /** Less than this left over is no difference at the table: 1/32 in (an industry pattern maker's 0.03 in). */
    private static final double WALKS_MM = 0.76;

    @Spec
    private CommandSpec spec;

    @Mixin
    private PatternOption pattern;

    @Mixin
    private UnitsOption units;

    /** For the command line. */
    public WalkCommand() {}

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Pattern read = pattern.read(spec.commandLine().getErr());
        if (units.json()) {
            List<Object> json = new ArrayList<>();
            for (Seam seam : read.seams()) {
                Map<String, Object> one = new LinkedHashMap<>();
                one.put("seam", seam.name());
                one.put("first", names(seam.first()));
                one.put("firstMm", read.sewnLength(seam.first()));
                one.put("second", names(seam.second()));
                one.put("secondMm", read.sewnLength(seam.second()));
                one.put("easeMm", seam.easeMm());
                one.put("leftOverMm", read.mismatchMm(seam));
                json.add(one);
            }
            out.println(Json.write(json));
            return 0;
        }
        if (read.seams().isEmpty()) {
            out.println("The pattern names no seams; mark them with data-seam (docs/pattern-file.md).");
            return 0;
        }
        LengthFormat show = units.format();
        Columns table = new Columns("seam", "one side", "other side", "ease meant", "left over", "edges");
        for (Seam seam : read.seams()) {
            double left = read.mismatchMm(seam);
            table.row(
                    seam.name(),
                    show.show(read.sewnLength(seam.first())),
                    show.show(read.sewnLength(seam.second())),
                    show.showSigned(seam.easeMm()),
                    Math.abs(left) < WALKS_MM ? "walks" : show.showSigned(left),
                    names(seam.first()) + " to " + names(seam.second()));
        }
        out.print(table.text());
        return 0;
    }

    private static String names(List<EdgeRef> side) {
        return side.stream().map(EdgeRef::toString).collect(Collectors.joining(" and "));
    }
}
