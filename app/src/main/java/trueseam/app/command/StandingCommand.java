package trueseam.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trueseam.app.input.BodyOption;
import trueseam.app.input.Columns;
import trueseam.app.input.EarlierOption;
import trueseam.app.input.InputException;
import trueseam.app.input.Json;
import trueseam.app.input.TableOption;
import trueseam.app.input.UnitsOption;
import trueseam.drafting.garment.Garment;
import trueseam.fitting.standing.Evidence;
import trueseam.fitting.standing.Proposal;
import trueseam.fitting.standing.Standing;
import trueseam.fitting.standing.StandingWords;
import trueseam.fitting.standing.Subject;
import trueseam.garment.body.Body;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.size.SizeRow;

/** What one person needed on earlier patterns, proposed for the next. */
@Command(
        name = "standing",
        description =
                "Show what one person needed on earlier patterns, and what it proposes for a new one, with the evidence.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Example:",
            "  trueseam standing blouse/report.json dress/report.json --for bodice --table misses --size 12",
            "",
            "fit --standing takes what two or more patterns agree on into the next fit."
        })
public final class StandingCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "REPORT.json",
            arity = "1..*",
            description = "The report.json files of earlier fits of one person.")
    private List<Path> reports = List.of();

    @Option(
            names = "--for",
            paramLabel = "GARMENT",
            description =
                    "Only what this garment can use: bodice, skirt, trousers, dress, or one of the garments in parts.")
    private Garment garment;

    @Mixin
    private TableOption table;

    @Option(
            names = "--size",
            paramLabel = "SIZE",
            description = "The size of the new pattern: the amounts are then those for that size.")
    private String size;

    @Mixin
    private BodyOption body;

    @Option(names = "--today", paramLabel = "DATE", description = "The day that ages are counted to. Default: today.")
    private String today;

    @Mixin
    private UnitsOption units;

    /** For the command line. */
    public StandingCommand() {}

    @Override
    public Integer call() {
        Optional<Body> now =
                body.isGiven() ? Optional.of(body.read(units.bareUnit()).body()) : Optional.empty();
        Standing all = Standing.of(EarlierOption.read(reports), now);
        Standing standing = garment == null ? all : all.forGarment(garment.kind());
        Optional<SizeRow> row = row();
        LocalDate day = today == null ? LocalDate.now(ZoneId.systemDefault()) : EarlierOption.day("--today", today);
        StandingWords words = new StandingWords(units.format(), day);
        PrintWriter out = spec.commandLine().getOut();
        if (units.json()) {
            out.println(Json.write(json(standing, row, words)));
        } else {
            print(out, standing, row, words);
        }
        return 0;
    }

    private Optional<SizeRow> row() {
        if (size == null) {
            return Optional.empty();
        }
        return Optional.of(table.named()
                .orElseThrow(
                        () -> new InputException("Size " + size + " of which table? Give --table misses, for example."))
                .row(size));
    }

    private void print(PrintWriter out, Standing standing, Optional<SizeRow> row, StandingWords words) {
        LengthFormat show = words.show();
        out.println("Standing alterations of " + standing.person()
                + (garment == null ? "" : ", for a new pattern (" + garment + ")")
                + row.map(wanted -> ", in size " + wanted.size()).orElse(""));
        Columns columns = new Columns(
                "what", "made for", row.isPresent() ? "amount here" : "amount", "tape may err", "age", "evidence");
        for (Proposal proposal : standing.proposals()) {
            boolean measure = proposal.subject() instanceof Subject.OfMeasure;
            OptionalDouble amount = amount(proposal, row);
            columns.row(
                    proposal.subject().label(),
                    measure && proposal.mm().isPresent()
                            ? show.show(proposal.mm().getAsDouble())
                            : "-",
                    amount.isPresent() ? show.showSigned(amount.getAsDouble()) : "-",
                    show.show(proposal.subject().errorMm()),
                    words.age(proposal),
                    words.said(proposal));
        }
        out.print(columns.text());
        out.println();
        out.println(
                "\"made for\" is the body measure that the earlier patterns were made for in the end, without ease; the amount is"
                        + " what " + (row.isPresent() ? "this size" : "the size of the latest of them")
                        + " lacks of it.");
        if (row.isPresent()) {
            out.println(
                    "Where this table does not give the measure (-), the amount follows from the new pattern's own flat measure:"
                            + " see fit --standing.");
        }
        out.println("One pattern alone is only told; fit --standing takes what two or more agree on.");
    }

    /** In the size of the new pattern; else in the size of the latest evidence that agrees. */
    private static OptionalDouble amount(Proposal proposal, Optional<SizeRow> row) {
        return row.map(proposal::amountOn).orElseGet(proposal::amountOnTheLatest);
    }

    private static Map<String, Object> json(Standing standing, Optional<SizeRow> row, StandingWords words) {
        List<Object> proposals = new ArrayList<>();
        for (Proposal proposal : standing.proposals()) {
            OptionalDouble amount = amount(proposal, row);
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("what", proposal.subject().label());
            one.put("kind", proposal.subject() instanceof Subject.OfMeasure ? "measure" : "alteration");
            one.put("weight", word(proposal.weight()));
            one.put("mm", proposal.mm().isPresent() ? proposal.mm().getAsDouble() : null);
            one.put("amountMm", amount.isPresent() ? amount.getAsDouble() : null);
            one.put("spreadMm", proposal.spreadMm());
            one.put("measuringErrorMm", proposal.subject().errorMm());
            one.put("reason", words.said(proposal));
            one.put(
                    "evidence",
                    proposal.evidence().stream()
                            .map(evidence -> json(evidence, words.today()))
                            .toList());
            proposals.add(one);
        }
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("person", standing.person());
        json.put("proposals", proposals);
        return json;
    }

    private static Map<String, Object> json(Evidence evidence, LocalDate today) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("pattern", evidence.fit().pattern());
        one.put("size", evidence.fit().sizeLabel());
        one.put("made", evidence.fit().made().map(LocalDate::toString).orElse(null));
        one.put(
                "ageMonths",
                evidence.ageMonths(today).isPresent()
                        ? evidence.ageMonths(today).getAsLong()
                        : null);
        one.put("worn", evidence.fit().worn());
        one.put("counts", word(evidence.counts()));
        one.put("changedMm", evidence.changedMm());
        one.put("mm", evidence.mm());
        one.put("bodyChangedSinceMm", evidence.movedMm());
        return one;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
