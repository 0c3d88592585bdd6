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
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trueseam.app.input.InputException;
import trueseam.app.input.Json;
import trueseam.app.input.UnitsOption;
import trueseam.fitting.follow.Follower;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Family;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.output.repertoire.RepertoireText;

/** Lists the repertoire, or tells one alteration whole. */
@Command(
        name = "alterations",
        description =
                "List every alteration, or tell all about one: what calls for it, how it is shared, what must stay.",
        mixinStandardHelpOptions = true,
        footer = {"", "Examples:", "  trueseam alterations --of skirt", "  trueseam alterations \"full bust\""})
public final class AlterationsCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "The alteration to tell all about.")
    private String name;

    @Option(names = "--of", paramLabel = "FAMILY", description = "Only those of bodice, sleeve, skirt or trousers.")
    private Family family;

    @Option(names = "--markdown", description = "Print all of it as a document.")
    private boolean markdown;

    @Mixin
    private UnitsOption units;

    /** For the command line. */
    public AlterationsCommand() {}

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        List<Entry> entries = chosen();
        if (units.json()) {
            List<Map<String, Object>> all = new ArrayList<>();
            for (Entry entry : entries) {
                Map<String, Object> one = new LinkedHashMap<>();
                one.put("name", entry.name());
                one.put("family", entry.family().word());
                one.put("usualMm", entry.usualMm());
                one.put("mostMm", entry.mostMm());
                one.putAll(RepertoireText.facts(entry, units.format()));
                all.add(one);
            }
            out.println(Json.write(all));
        } else if (markdown) {
            out.print(RepertoireText.markdown(entries, units.format()));
        } else if (name != null) {
            out.println(RepertoireText.whole(entries.get(0), units.format()));
        } else {
            out.println(RepertoireText.list(entries));
            out.println();
            out.println("By themselves follow: "
                    + Follower.all().stream().map(Follower::name).collect(Collectors.joining(", ")) + ".");
            out.println("trueseam alterations \"NAME\" tells all about one; fit --alter \"NAME=AMOUNT\" does it.");
        }
        return 0;
    }

    private List<Entry> chosen() {
        if (name != null) {
            return List.of(Repertoire.named(name)
                    .orElseThrow(() -> new InputException(
                            "There is no alteration \"" + name + "\"; trueseam alterations lists their names.")));
        }
        return Repertoire.all().stream()
                .filter(entry -> family == null || entry.family() == family)
                .toList();
    }
}
