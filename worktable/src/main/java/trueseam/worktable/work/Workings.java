package trueseam.worktable.work;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.drafting.garment.SmallPieces;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Need;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.plan.HeldFit;
import trueseam.fitting.sizing.NoSizeException;
import trueseam.fitting.sizing.SizeChoice;
import trueseam.fitting.standing.Standing;
import trueseam.fitting.standing.StandingWords;
import trueseam.fitting.standing.TakenUp;
import trueseam.fitting.trial.NextFit;
import trueseam.garment.body.MissingMeasureException;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.handbook.Handbooks;
import trueseam.garment.handbook.HipLine;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthTextException;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.size.SizeRow;
import trueseam.garment.size.SizeTable;
import trueseam.intake.body.EntryRules;
import trueseam.intake.patternfile.PatternFile;
import trueseam.intake.patternfile.PatternReading;
import trueseam.intake.report.FitReportFile;
import trueseam.intake.size.SizeTables;
import trueseam.intake.size.UnknownTableException;
import trueseam.worktable.project.DrawingPart;
import trueseam.worktable.project.PatternPart;
import trueseam.worktable.project.Project;

/**
 * What comes of a project, each thing worked out when it is first asked for: the body, the pattern as it is taken up, the chart, the
 * fit. Safe for use by several threads.
 */
public final class Workings {

    private final Project project;
    private final Function<String, byte[]> contents;
    private final EntryRules rules;
    private TypedBody body;
    private final LocalDate today;
    private TypedChoices choices;
    private Optional<Outcome<Standing>> standing;
    private Optional<TakenUp> takenUp = Optional.empty();
    private Outcome<Taken> taken;
    private List<Finding> said = List.of();
    private Outcome<BroughtDrawing> brought;
    private Outcome<List<Need>> needs;
    private Outcome<FitResult> fit;
    private Outcome<FitResult> firstFit;
    private Outcome<HeldFit> held;

    /**
     * The workings of a project.
     *
     * @param project the project
     * @param contents a file that was brought, by its shelf mark
     * @param rules what is plausible for a body
     * @param today the day, for the age of what was brought
     */
    public Workings(Project project, Function<String, byte[]> contents, EntryRules rules, LocalDate today) {
        this.today = today;
        this.project = project;
        this.contents = contents;
        this.rules = rules;
    }

    /**
     * What was typed.
     *
     * @return the project
     */
    public Project project() {
        return project;
    }

    /**
     * The body: of each measure what was read on the last day that has it.
     *
     * @return the body, with what cannot be read and what is doubtful
     */
    public synchronized TypedBody body() {
        if (body == null) {
            body = TypedBody.of(project.person(), rules);
        }
        return body;
    }

    /**
     * The choices.
     *
     * @return her choices, with what cannot be read
     */
    public synchronized TypedChoices choices() {
        if (choices == null) {
            TypedChoices typed = TypedChoices.of(project.person(), project.chart());
            takenUp = takeUpStanding(typed.choices());
            choices = takenUp.map(up -> new TypedChoices(up.choices(), typed.problems()))
                    .orElse(typed);
        }
        return choices;
    }

    /**
     * What earlier patterns propose.
     *
     * @return the proposals, or why there are none; nothing at all where no report was brought
     */
    public synchronized Optional<Outcome<Standing>> standing() {
        if (standing == null) {
            standing = project.standing().reports().isEmpty()
                    ? Optional.empty()
                    : Optional.of(Outcome.orSentence(() -> Outcome.of(Standing.of(
                            project.standing().reports().stream()
                                    .map(report -> FitReportFile.read(report.fileName(), text(report.file())))
                                    .toList(),
                            Optional.of(body().body())))));
        }
        return standing;
    }

    /**
     * What of them was taken into the choices.
     *
     * @return what was taken; nothing where nothing was brought or it is only looked at
     */
    public synchronized Optional<TakenUp> takenUp() {
        choices();
        return takenUp;
    }

    /**
     * How the evidence of earlier patterns is told.
     *
     * @return in the person's units, as of today
     */
    public StandingWords standingWords() {
        return new StandingWords(project.person().format(), today);
    }

    private Optional<TakenUp> takeUpStanding(FitChoices typed) {
        Optional<Standing> proposals =
                project.standing().off() ? Optional.empty() : standing().flatMap(Outcome::value);
        return proposals.flatMap(found -> ready(t -> TakenUp.of(
                        found,
                        Fitting.chart(t.pattern(), body().body(), t.row(), t.typedMm(), typed),
                        t.pattern(),
                        typed,
                        standingWords()))
                .value());
    }

    /**
     * The pattern as it is taken up.
     *
     * @return the pattern, or why there is none
     */
    public synchronized Outcome<Taken> taken() {
        if (taken == null) {
            taken = Outcome.orSentence(() -> {
                Outcome<Taken> drawn = takeUp();
                return drawn.value().map(this::byHandbooks).map(Outcome::of).orElse(drawn);
            });
        }
        return taken;
    }

    /**
     * The fitting chart: what would be decided, whether or not the pieces can take it.
     *
     * @return the needs, or why there are none
     */
    public synchronized Outcome<List<Need>> needs() {
        if (needs == null) {
            needs = ready(t -> Fitting.chart(
                    t.pattern(), body().body(), t.row(), t.typedMm(), choices().choices()));
        }
        return needs;
    }

    /**
     * The whole fit.
     *
     * @return the fit, or why there is none
     */
    public synchronized Outcome<FitResult> fit() {
        if (fit == null) {
            fit = ready(this::fitted);
        }
        return fit;
    }

    /**
     * The same fit held in the hand, so that it can be worked again and again.
     *
     * @return the held fit, or why there is none; there is none of a paper pattern, whose pieces only show the steps
     */
    public synchronized Outcome<HeldFit> held() {
        if (held == null) {
            Outcome<FitResult> from = fit();
            held = from.value()
                    .map(f -> f.schematic()
                            ? Outcome.<HeldFit>refused(
                                    "These pieces only show the steps of a paper pattern; decide on the chart.")
                            : ready(t -> HeldFit.of(f.worked().original(), f.body(), f.size(), f.choices())))
                    .orElseGet(from::reason);
        }
        return held;
    }

    /**
     * The same project with other decisions, without keeping them: for showing what a drag would do.
     *
     * @param other the choices
     * @return the fit, or why there is none
     */
    public Outcome<FitResult> fitWith(FitChoices other) {
        return ready(t -> fitted(t, other));
    }

    private FitResult fitted(Taken t) {
        return fitted(t, choices().choices());
    }

    private FitResult fitted(Taken t, FitChoices chosen) {
        return NextFit.after(worked(t, chosen), trial(t).sittings())
                .saying(said)
                .saying(takenUp().map(TakenUp::findings).orElse(List.of()));
    }

    /**
     * The fit that the first trial garment is cut from: without what was pinned.
     *
     * @return the fit, or why there is none
     */
    public synchronized Outcome<FitResult> firstFit() {
        if (firstFit == null) {
            firstFit = project.trial().sittings().isEmpty()
                    ? fit()
                    : ready(t -> worked(t, choices().choices()));
        }
        return firstFit;
    }

    /**
     * What was typed of the trial garment.
     *
     * @return the sittings with what can be read, or why there is nothing to read them for
     */
    public Outcome<TypedTrial> trial() {
        Outcome<Taken> pattern = taken();
        return pattern.isThere() ? Outcome.of(trial(pattern.get())) : pattern.reason();
    }

    private TypedTrial trial(Taken t) {
        return TypedTrial.of(project.trial(), t.pattern(), project.person().bareUnit());
    }

    private FitResult worked(Taken t, FitChoices chosen) {
        return t.typedMm()
                .map(typed -> Fitting.onPaper(t.pattern(), body().body(), t.row(), typed, chosen))
                .orElseGet(() -> Fitting.fit(t.pattern(), body().body(), t.row(), chosen));
    }

    private <T> Outcome<T> ready(Function<Taken, T> work) {
        Outcome<Taken> pattern = taken();
        if (!pattern.isThere()) {
            return pattern.reason();
        }
        if (body().body().readings().isEmpty()) {
            return Outcome.missing("Nothing was measured yet; type at least one measure of the person.");
        }
        return Outcome.orSentence(() -> Outcome.of(work.apply(pattern.get())));
    }

    private Handbooks handbooks() {
        return TypedChoices.handbooks(project.chart());
    }

    /** The pattern with its hip line and its hem where she wants them. */
    private Taken byHandbooks(Taken t) {
        HipLine.Placed placed =
                handbooks().takeUp(t.pattern(), body().body(), project.person().format());
        List<Finding> all = new ArrayList<>(placed.findings());
        all.addAll(handbooks().said(t.kind(), project.person().format()));
        said = List.copyOf(all);
        return new Taken(placed.pattern(), t.kind(), t.table(), t.row(), t.choice(), t.typedMm(), t.notes());
    }

    private Outcome<Taken> takeUp() {
        PatternPart part = project.pattern();
        return switch (part.way()) {
            case "draft" -> drafted(part);
            case "file" -> fromFile(part);
            case "drawing" -> fromDrawing(part);
            case "paper" -> onPaper(part);
            default -> Outcome.missing("There is no pattern yet; choose one on the Pattern screen.");
        };
    }

    private Outcome<Taken> drafted(PatternPart part) {
        if (part.garment().isEmpty()) {
            return Outcome.missing("Choose which garment is drafted.");
        }
        Garment garment = garment(part.garment());
        List<String> notes = new ArrayList<>();
        if (part.table().equals("own")) {
            Pattern own =
                    withSmallPieces(garment.draft(DraftFigure.of(body().body()), Allowances.inches()), part.with());
            return Outcome.of(new Taken(
                    own,
                    garment.kind(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    notes));
        }
        SizeTable table = SizeTables.named(part.table().isEmpty() ? "misses" : part.table());
        Optional<SizeChoice> choice = choice(table, garment.kind(), notes);
        String size = part.size().isEmpty() ? choice.map(c -> c.row().size()).orElse("") : part.size();
        if (size.isEmpty()) {
            return Outcome.missing(
                    "The size cannot be chosen yet; measure the person's frame, or choose a size by hand. "
                            + String.join(" ", notes));
        }
        SizeRow row = table.row(size);
        Pattern pattern = withSmallPieces(garment.draft(DraftFigure.of(table, size), Allowances.inches()), part.with());
        return Outcome.of(new Taken(
                pattern,
                garment.kind(),
                Optional.of(table),
                Optional.of(row),
                choice.map(c -> c.besidePatternIn(row)),
                Optional.empty(),
                notes));
    }

    private static Pattern withSmallPieces(Pattern shell, List<String> words) {
        Pattern pattern = shell;
        for (String word : words) {
            try {
                pattern = SmallPieces.valueOf(word).addedTo(pattern);
            } catch (IllegalArgumentException e) {
                throw new WorkException("No " + word + " can be added to this garment: " + e.getMessage(), e);
            }
        }
        return pattern;
    }

    private Outcome<Taken> fromDrawing(PatternPart part) {
        return part.file().isEmpty()
                ? Outcome.missing(
                        "The drawing is not confirmed yet; look on the Pattern screen what it was taken for, correct it, and"
                                + " press \"This is right\".")
                : fromFile(part);
    }

    /**
     * The drawing as it is brought in with what she says about it.
     *
     * @return what came of it, or why nothing did
     */
    public synchronized Outcome<BroughtDrawing> brought() {
        if (brought == null) {
            DrawingPart part = project.pattern().drawing();
            brought = part.file().isEmpty()
                    ? Outcome.missing("No drawing was brought yet.")
                    : Outcome.orSentence(() -> BroughtDrawing.of(
                            part, contents.apply(part.file()), project.person().bareUnit()));
        }
        return brought;
    }

    private String text(String mark) {
        return new String(contents.apply(mark), StandardCharsets.UTF_8);
    }

    private Outcome<Taken> fromFile(PatternPart part) {
        if (part.file().isEmpty()) {
            return Outcome.missing("No pattern file was brought yet.");
        }
        PatternReading reading = PatternFile.read(part.fileName(), text(part.file()));
        List<String> notes = new ArrayList<>();
        for (Finding finding : reading.findings()) {
            String said = finding.place() + ": " + finding.sentence();
            if (finding.severity() == Severity.FAILURE) {
                return Outcome.refused(said);
            }
            notes.add(said);
        }
        Pattern pattern = reading.pattern();
        GarmentKind kind = Fitting.kindOf(pattern);
        String tableName = part.table().isEmpty() ? pattern.sizeTable() : part.table();
        Optional<SizeTable> table = Optional.empty();
        try {
            table = tableName.isBlank() ? Optional.empty() : Optional.of(SizeTables.named(tableName));
        } catch (UnknownTableException e) {
            notes.add("The pattern's size table \"" + tableName
                    + "\" is not one of ours; the flat pattern is compared instead.");
        }
        String size = part.size().isEmpty() ? pattern.size() : part.size();
        Optional<SizeRow> row =
                table.isPresent() && !size.isBlank() ? Optional.of(table.get().row(size)) : Optional.empty();
        Optional<SizeChoice> choice = table.flatMap(t -> choice(t, kind, notes));
        return Outcome.of(new Taken(
                pattern,
                kind,
                table,
                row,
                row.isPresent() ? choice.map(c -> c.besidePatternIn(row.get())) : choice,
                Optional.empty(),
                notes));
    }

    private Outcome<Taken> onPaper(PatternPart part) {
        if (part.garment().isEmpty()) {
            return Outcome.missing("Choose what garment the paper pattern is.");
        }
        Garment garment = garment(part.garment());
        List<String> notes = new ArrayList<>();
        Optional<SizeTable> table =
                part.table().isEmpty() ? Optional.empty() : Optional.of(SizeTables.named(part.table()));
        Optional<SizeRow> row = table.isPresent() && !part.size().isEmpty()
                ? Optional.of(table.get().row(part.size()))
                : Optional.empty();
        Map<Measure, Double> typed = flat(part);
        if (row.isEmpty() && typed.isEmpty()) {
            return Outcome.missing(
                    "Say the paper pattern's size table and size, or type what the tape reads on the paper.");
        }
        DraftFigure figure = row.isPresent() ? DraftFigure.of(table.get(), part.size()) : DraftFigure.of(body().body());
        Optional<SizeChoice> choice = table.flatMap(t -> choice(t, garment.kind(), notes));
        return Outcome.of(new Taken(
                garment.draft(figure, Allowances.inches()),
                garment.kind(),
                table,
                row,
                row.isPresent() ? choice.map(c -> c.besidePatternIn(row.get())) : choice,
                Optional.of(typed),
                notes));
    }

    /** What can be read of the typed flat measures; the Pattern screen says what cannot. */
    private Map<Measure, Double> flat(PatternPart part) {
        Map<Measure, Double> typed = new EnumMap<>(Measure.class);
        part.flat().forEach((term, text) -> {
            try {
                double mm = Length.parse(text, project.person().bareUnit()).mm();
                if (mm > 0) {
                    typed.put(Measure.named(term), mm);
                }
            } catch (LengthTextException e) {
                // Said beside its field.
            }
        });
        return typed;
    }

    private Optional<SizeChoice> choice(SizeTable table, GarmentKind kind, List<String> notes) {
        try {
            return Optional.of(SizeChoice.of(
                    table,
                    body().body(),
                    kind,
                    handbooks().between(),
                    project.person().format()));
        } catch (NoSizeException | MissingMeasureException e) {
            notes.add(e.getMessage());
            return Optional.empty();
        }
    }

    private static Garment garment(String word) {
        return Garment.valueOf(word.toLowerCase(Locale.ROOT).replace('-', '_'));
    }
}
