package trueseam.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import trueseam.app.input.FitInput;
import trueseam.app.input.InputException;
import trueseam.app.input.OutputFiles;
import trueseam.app.input.PaperOption;
import trueseam.app.input.PinnedOption;
import trueseam.cloth.lay.LayException;
import trueseam.cloth.need.ClothChange;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.alteration.CapChoice;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.profile.EaseProfile;
import trueseam.fitting.tissue.TissueException;
import trueseam.fitting.trial.NextFit;
import trueseam.fitting.trial.Pinned;
import trueseam.fitting.trial.Sitting;
import trueseam.garment.cloth.Repeat;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.intake.patternfile.PatternFile;
import trueseam.output.chart.ChartCsv;
import trueseam.output.chart.ChartSheet;
import trueseam.output.chart.FittingChart;
import trueseam.output.print.FullSizePrint;
import trueseam.output.print.PrintOptions;
import trueseam.output.profile.ProfileCsv;
import trueseam.output.profile.ProfileDrawing;
import trueseam.output.report.FitSummary;
import trueseam.output.report.Occasion;
import trueseam.output.report.ReportJson;
import trueseam.output.steps.StepSheet;
import trueseam.output.strips.TapeOnStrips;
import trueseam.output.words.ClothWords;

/** The main job: a body and a pattern become proven, printed, altered pieces. */
@Command(
        name = "fit",
        description = "Fit a pattern to a body: chart, altered pieces, proof, full-size print, strips and step sheet.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Examples:",
            "  trueseam fit --body anna.csv --pattern bodice.svg --out fitted",
            "  trueseam fit --body anna.csv --paper-only skirt --table misses --size 14 --out fitted",
            "  trueseam fit --body anna.csv --paper-only bodice --flat \"bust girth=39 in\" --out fitted",
            "  trueseam fit --body anna.csv --pattern blouse.svg --standing fitted/report.json --out blouse",
            "  trueseam fit --body anna.csv --pattern bodice.svg --pinned first-sitting.csv --out fitted-again",
            "",
            "Print page one first, measure both test squares, and cut a trial garment before the good cloth."
        })
public final class FitCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private FitInput input;

    @Mixin
    private PinnedOption pinned;

    @Mixin
    private PaperOption paper;

    @Option(
            names = "--label",
            paramLabel = "TEXT",
            description = "What is printed on the pieces for the person. Default: the body's label.")
    private String label;

    @Option(
            names = "--worn",
            description =
                    "Write down that a garment from these pieces was worn, or its trial garment tried on, and found right: its"
                            + " amounts then count more as standing alterations of the next pattern.")
    private boolean worn;

    @Option(
            names = "--plaid",
            paramLabel = "LENGTH",
            description = "The cloth is a plaid that repeats after this length: says how much more of it to buy.")
    private String plaid;

    @Option(
            names = "--stacked",
            paramLabel = "N",
            description =
                    "With --plaid: how many pieces lie one above another along the cloth. Default: every piece of the"
                            + " pattern, the most it can be.")
    private Integer stacked;

    @Option(
            names = "--cloth-width",
            paramLabel = "LENGTH",
            description =
                    "Says how much cloth of this width the altered pieces take, beside the original ones. See also lay.")
    private String clothWidth;

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            required = true,
            description =
                    "The folder for altered.svg, print.pdf, strips.pdf, steps.pdf, chart.pdf, chart.csv, ease.svg, ease.csv"
                            + " and report.json.")
    private Path out;

    /** For the command line. */
    public FitCommand() {}

    @Override
    public Integer call() {
        PrintWriter say = spec.commandLine().getOut();
        FitInput.Case asked = input.read(spec.commandLine().getErr());
        List<Sitting> sittings = pinned.sittings(asked.pattern(), input.units().bareUnit());
        FitResult worked = NextFit.after(fitted(asked, asked.choices()), sittings)
                .saying(asked.findings())
                .saying(cloth(asked));
        FitResult fit = worked.saying(clothTaken(worked));
        PrintOptions print = PrintOptions.usual(
                paper.fullSize(input.units().bareUnit()),
                input.units().format(),
                label == null ? asked.body().label() : label);
        var sheets = paper.sheets(input.units().bareUnit());
        // Each file is made from the fit alone, so that they can be made side by side.
        Together together = new Together();
        var printed = together.make(() -> FullSizePrint.of(fit, print).pdf());
        var strips = together.make(() -> TapeOnStrips.pdf(fit, print));
        var steps = together.make(() -> StepSheet.pdf(fit, sheets));
        List<EaseProfile> profiles = EaseProfile.of(fit);
        var easePicture = together.make(
                () -> ProfileDrawing.document(profiles, input.units().format()));
        FittingChart chart = FittingChart.of(
                fit,
                asked.choice(),
                otherCap(asked, fit, sittings, spec.commandLine().getErr()));
        String json =
                ReportJson.text(chart, new Occasion(Optional.of(input.earlier().today()), worn, asked.requests()));
        OutputFiles files = new OutputFiles()
                .add(
                        out.resolve("altered.svg"),
                        PatternFile.write(
                                fit.worked().altered(), Optional.of(fit.worked().original())))
                .add(out.resolve("chart.pdf"), ChartSheet.pdf(chart, sheets))
                .add(out.resolve("chart.csv"), ChartCsv.text(chart))
                .add(out.resolve("report.json"), json)
                .add(out.resolve("print.pdf"), printed.get())
                .add(out.resolve("strips.pdf"), strips.get())
                .add(out.resolve("steps.pdf"), steps.get());
        if (!profiles.isEmpty()) {
            files.add(out.resolve("ease.svg"), easePicture.get())
                    .add(
                            out.resolve("ease.csv"),
                            ProfileCsv.text(profiles, input.units().format().unit()));
        }
        files.write();
        say.println(input.units().json() ? json : FitSummary.text(chart));
        if (!input.units().json()) {
            said(sittings, say);
        }
        if (!input.units().json()) {
            say.println("Written to " + out + ": altered.svg, print.pdf, strips.pdf, steps.pdf, chart.pdf, chart.csv,"
                    + (profiles.isEmpty() ? "" : " ease.svg, ease.csv,") + " report.json.");
            say.println("Measure both test squares of print.pdf before cutting, and cut a trial garment first.");
        }
        return 0;
    }

    private List<Finding> clothTaken(FitResult fit) {
        if (clothWidth == null) {
            return List.of();
        }
        LengthFormat show = input.units().format();
        try {
            ClothChange change = ClothChange.of(
                    fit.worked().original(),
                    fit.worked().altered(),
                    Length.parse(clothWidth, input.units().bareUnit()).mm());
            return List.of(Finding.note("cloth", ClothWords.change(change, show)));
        } catch (LayException e) {
            return List.of(Finding.warning("cloth", e.place() + ": " + e.getMessage()));
        } catch (IllegalArgumentException e) {
            throw new InputException("--cloth-width: " + e.getMessage());
        }
    }

    private List<Finding> cloth(FitInput.Case asked) {
        if (plaid == null) {
            return List.of();
        }
        int pieces = stacked == null ? asked.pattern().pieces().size() : stacked;
        LengthFormat show = input.units().format();
        try {
            Repeat repeat =
                    new Repeat(Length.parse(plaid, input.units().bareUnit()).mm());
            return List.of(
                    Finding.note(
                            "plaid",
                            "It repeats after " + show.show(repeat.mm()) + ", and " + pieces
                                    + (pieces == 1 ? " piece lies" : " pieces lie one above another")
                                    + " along the cloth: buy "
                                    + show.show(repeat.surchargeMm(pieces))
                                    + " more than a plain cloth would take, cut it single, and match it at the stitching lines."));
        } catch (IllegalArgumentException e) {
            throw new InputException("--plaid and --stacked: " + e.getMessage() + ".");
        }
    }

    private void said(List<Sitting> sittings, PrintWriter say) {
        for (Sitting sitting : sittings) {
            say.println("Pinned, " + sitting.name() + ":");
            for (Pinned one : sitting.findings()) {
                say.println("  " + one.reckoning(input.units().format()));
            }
        }
    }

    private static FitResult fitted(FitInput.Case asked, FitChoices choices) {
        return asked.typedMm()
                .map(typed -> Fitting.onPaper(asked.pattern(), asked.body(), asked.size(), typed, choices))
                .orElseGet(() -> Fitting.fit(asked.pattern(), asked.body(), asked.size(), choices));
    }

    /** The same fit with the other cap, where a sleeve girth changes, so that the chart can show what each way costs. */
    private static List<FitResult> otherCap(
            FitInput.Case asked, FitResult fit, List<Sitting> sittings, PrintWriter err) {
        if (!fit.amounts().has(Measure.UPPER_ARM_GIRTH)) {
            return List.of();
        }
        FitChoices choices = asked.choices();
        CapChoice other =
                choices.cap() == CapChoice.KEEP_CAP_SEAM ? CapChoice.KEEP_CAP_HEIGHT : CapChoice.KEEP_CAP_SEAM;
        try {
            return List.of(NextFit.after(fitted(asked, choices.withSleeve(other, choices.reach())), sittings));
        } catch (TissueException | AlterationException e) {
            err.println("The other choice for the cap cannot be shown: " + e.getMessage());
            return List.of();
        }
    }
}
