package trueseam.app.input;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Need;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.repertoire.Request;
import trueseam.fitting.sizing.NoSizeException;
import trueseam.fitting.sizing.SizeChoice;
import trueseam.fitting.standing.StandingWords;
import trueseam.fitting.standing.TakenUp;
import trueseam.garment.body.Body;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.finding.Finding;
import trueseam.garment.handbook.BetweenSizes;
import trueseam.garment.handbook.Handbooks;
import trueseam.garment.handbook.HipLine;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.size.SizeRow;
import trueseam.garment.size.SizeTable;
import trueseam.intake.body.BodyCsv;
import trueseam.intake.body.EntryRules;
import trueseam.intake.size.UnknownTableException;

/** What a fit is made of: a body, a pattern (or a paper pattern described by its flat measures or its size), and choices. */
public final class FitInput {

    @Mixin
    private BodyOption body;

    @Mixin
    private PatternOption pattern;

    @Option(
            names = "--paper-only",
            paramLabel = "GARMENT",
            description =
                    "There is no digital pattern, only paper: bodice, skirt, trousers or dress. Give --table and --size,"
                            + " or the flat measures with --flat; the steps are shown on schematic pieces.")
    private Garment paperOnly;

    @Option(
            names = "--flat",
            paramLabel = "MEASURE=LENGTH",
            description =
                    "With --paper-only: what the tape reads on the paper, such as \"bust girth=39 in\". May be given"
                            + " several times.")
    private List<String> flat = List.of();

    @Option(
            names = "--flat-file",
            paramLabel = "FILE",
            description = "With --paper-only: the flat measures in a CSV file (header measure,value).")
    private Path flatFile;

    @Mixin
    private TableOption table;

    @Option(
            names = "--size",
            paramLabel = "SIZE",
            description = "The size that the pattern was taken in. Default: the size that a pattern file states.")
    private String size;

    @Mixin
    private ChoiceOptions choices;

    @Mixin
    private HandbookOptions handbookOptions;

    @Mixin
    private EarlierOption earlier;

    @Mixin
    private UnitsOption units;

    /** For the command line. */
    public FitInput() {}

    /**
     * Everything that is needed to fit.
     *
     * @param pattern the pattern, or schematic pieces
     * @param body the body
     * @param size the row of the size table that the pattern was taken in, if known
     * @param typedMm what was typed of a paper pattern; absent where there is a digital one
     * @param choices the choices
     * @param choice the size that would be chosen for this body, if a table is known
     * @param requests the alterations by name that earlier patterns asked for
     * @param findings what is to be said of the pattern as taken up, of choices and of earlier patterns
     */
    public record Case(
            Pattern pattern,
            Body body,
            Optional<SizeRow> size,
            Optional<Map<Measure, Double>> typedMm,
            FitChoices choices,
            Optional<SizeChoice> choice,
            List<Request> requests,
            List<Finding> findings) {

        // Immutable.
        public Case {
            requests = List.copyOf(requests);
            findings = List.copyOf(findings);
        }

        private Case with(TakenUp taken) {
            List<Finding> all = new ArrayList<>(findings);
            all.addAll(taken.findings());
            return new Case(pattern, body, size, typedMm, taken.choices(), choice, taken.requests(), all);
        }

        private Case with(Handbooks handbooks) {
            HipLine.Placed placed = handbooks.takeUp(pattern, body, choices.show());
            List<Finding> all = new ArrayList<>(findings);
            all.addAll(placed.findings());
            all.addAll(handbooks.said(Fitting.kindOf(pattern), choices.show()));
            return new Case(placed.pattern(), body, size, typedMm, choices, choice, requests, all);
        }

        /**
         * The fitting chart alone, before anything is altered.
         *
         * @return a line a measure
         */
        public List<Need> chart() {
            return Fitting.chart(pattern, body, size, typedMm, choices);
        }
    }

    /**
     * How lengths are shown.
     *
     * @return the option
     */
    public UnitsOption units() {
        return units;
    }

    /**
     * Reads everything.
     *
     * @param err where notes about the files go
     * @return the case
     * @throws InputException if something is missing or contradicts itself
     */
    public Case read(PrintWriter err) {
        var bodyFile = body.read(units.bareUnit());
        bodyFile.findings().forEach(f -> err.println(f.place() + ": " + f.sentence()));
        Handbooks handbooks = handbookOptions.handbooks();
        FitChoices chosen = choices.choices(units).withWearing(handbooks.least().table());
        Case open = (paperOnly == null
                        ? digital(bodyFile.body(), chosen, handbooks.between(), err)
                        : onPaper(bodyFile.body(), chosen, handbooks.between()))
                .with(handbooks);
        return earlier.standing(Optional.of(open.body()))
                .map(standing -> TakenUp.of(
                        standing,
                        open.chart(),
                        open.pattern(),
                        chosen,
                        new StandingWords(units.format(), earlier.today())))
                .map(open::with)
                .orElse(open);
    }

    /**
     * The day and the earlier reports.
     *
     * @return the option
     */
    public EarlierOption earlier() {
        return earlier;
    }

    private Case digital(Body person, FitChoices chosen, BetweenSizes between, PrintWriter err) {
        if (!flat.isEmpty() || flatFile != null) {
            throw new InputException("--flat goes with --paper-only; a pattern file is measured by the program.");
        }
        Pattern read = pattern.read(err);
        Optional<SizeTable> sizes = table.named().or(() -> statedTable(read, err));
        String label = size != null ? size : read.size();
        Optional<SizeRow> row =
                sizes.isPresent() && !label.isBlank() ? Optional.of(sizes.get().row(label)) : Optional.empty();
        return new Case(
                read,
                person,
                row,
                Optional.empty(),
                chosen,
                choice(sizes, person, Fitting.kindOf(read), between, chosen, row),
                List.of(),
                List.of());
    }

    private static Optional<SizeTable> statedTable(Pattern pattern, PrintWriter err) {
        if (pattern.sizeTable().isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(TableOption.read(pattern.sizeTable()));
        } catch (UnknownTableException e) {
            err.println("The pattern's size table \"" + pattern.sizeTable()
                    + "\" is not one of ours; the flat pattern is compared instead. Name a CSV file with --table.");
            return Optional.empty();
        }
    }

    private Case onPaper(Body person, FitChoices chosen, BetweenSizes between) {
        if (pattern.isGiven()) {
            throw new InputException("Give either --pattern or --paper-only, not both.");
        }
        Optional<SizeTable> sizes = table.named();
        Map<Measure, Double> typed = typed();
        if (size == null && typed.isEmpty()) {
            throw new InputException("On paper only, give --table and --size of the pattern, or its flat measures with"
                    + " --flat \"bust girth=39 in\" (or --flat-file).");
        }
        if (size != null && sizes.isEmpty()) {
            throw new InputException("Size " + size + " of which table? Give --table misses, for example.");
        }
        Optional<SizeRow> row =
                size == null ? Optional.empty() : Optional.of(sizes.get().row(size));
        DraftFigure figure = row.isPresent() ? DraftFigure.of(sizes.get(), size) : DraftFigure.of(person);
        return new Case(
                paperOnly.draft(figure, Allowances.inches()),
                person,
                row,
                Optional.of(typed),
                chosen,
                choice(sizes, person, paperOnly.kind(), between, chosen, row),
                List.of(),
                List.of());
    }

    private Map<Measure, Double> typed() {
        Map<Measure, Double> typed = new EnumMap<>(Measure.class);
        if (flatFile != null) {
            var file = BodyCsv.read(
                    flatFile.getFileName().toString(),
                    Texts.read(flatFile),
                    EntryRules.usual().withBareUnit(units.bareUnit()));
            for (Measure measure : file.body().measures()) {
                typed.put(measure, file.body().mm(measure));
            }
        }
        typed.putAll(ChoiceOptions.lengths("--flat", flat, units.bareUnit()));
        typed.forEach((measure, mm) -> {
            if (mm <= 0) {
                throw new InputException("The flat pattern's " + measure.term() + " is given as "
                        + units.format().show(mm) + "; give what the tape reads on the paper, a length above zero.");
            }
        });
        return typed;
    }

    private static Optional<SizeChoice> choice(
            Optional<SizeTable> sizes,
            Body person,
            GarmentKind kind,
            BetweenSizes between,
            FitChoices chosen,
            Optional<SizeRow> row) {
        if (sizes.isEmpty()) {
            return Optional.empty();
        }
        try {
            SizeChoice choice = SizeChoice.of(sizes.get(), person, kind, between, chosen.show());
            return Optional.of(row.map(choice::besidePatternIn).orElse(choice));
        } catch (NoSizeException e) {
            return Optional.empty(); // the fit does not need the choice; size says why there is none
        }
    }
}
