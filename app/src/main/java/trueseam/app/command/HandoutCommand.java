package trueseam.app.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import trueseam.app.input.AccountOption;
import trueseam.app.input.FitInput;
import trueseam.app.input.InputException;
import trueseam.app.input.OutputFiles;
import trueseam.app.input.PaperOption;
import trueseam.app.input.RecordBookOption;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.output.chart.FittingChart;
import trueseam.output.handout.ClassHandout;
import trueseam.records.RecordBook;
import trueseam.records.project.KeptProject;
import trueseam.records.project.Sought;
import trueseam.worktable.page.Desk;
import trueseam.worktable.project.Shelf;
import trueseam.worktable.work.Outcome;
import trueseam.worktable.work.Taken;
import trueseam.worktable.work.Workings;

/** The handout for a class. */
@Command(
        name = "handout",
        description =
                "Print a class handout: a worked example for the teacher, and practice sheets in quarter scale for every student.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Examples:",
            "  trueseam handout --body anna.csv --pattern skirt.svg --students 12 --out handout.pdf",
            "  trueseam handout --project \"Summer skirt\" --students 12 --out handout.pdf"
        })
public final class HandoutCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private FitInput input;

    @Mixin
    private RecordBookOption kept;

    @Mixin
    private AccountOption account;

    @Mixin
    private PaperOption paper;

    @Option(
            names = "--project",
            paramLabel = "NAME",
            description = "A project of the record book, in place of --body and --pattern.")
    private String project;

    @Option(names = "--students", paramLabel = "N", required = true, description = "How many students.")
    private int students;

    @Option(names = "--out", paramLabel = "FILE", required = true, description = "The PDF to write.")
    private Path out;

    /** For the command line. */
    public HandoutCommand() {}

    @Override
    public Integer call() {
        if (!(1 <= students && students <= ClassHandout.MOST_STUDENTS)) {
            throw new InputException(
                    "--students " + students + " is no class; give 1 to " + ClassHandout.MOST_STUDENTS + ".");
        }
        FittingChart chart = project == null ? ofFiles() : ofProject();
        byte[] pdf = ClassHandout.pdf(chart, paper.sheets(input.units().bareUnit()), students);
        new OutputFiles().add(out, pdf).write();
        spec.commandLine()
                .getOut()
                .println("Written to " + out
                        + ": chart, step sheet and worked practice sheets for the teacher, and practice sheets"
                        + " for " + students + (students == 1 ? " student." : " students.")
                        + " Print at 100 % and measure the test squares.");
        return 0;
    }

    private FittingChart ofFiles() {
        FitInput.Case asked = input.read(spec.commandLine().getErr());
        FitResult fit = asked.typedMm()
                .map(typed -> Fitting.onPaper(asked.pattern(), asked.body(), asked.size(), typed, asked.choices()))
                .orElseGet(() -> Fitting.fit(asked.pattern(), asked.body(), asked.size(), asked.choices()));
        return FittingChart.of(fit.saying(asked.findings()), asked.choice(), List.of());
    }

    private FittingChart ofProject() {
        try (RecordBook book = kept.open()) {
            Shelf shelf = new Shelf(account.drawer(book));
            List<KeptProject> called = shelf.drawer().projects().list(Sought.all()).stream()
                    .filter(one -> one.id().equals(project) || one.head().name().equalsIgnoreCase(project.strip()))
                    .toList();
            if (called.size() != 1) {
                throw new InputException(
                        called.isEmpty()
                                ? "No project of the record book is called " + project + "."
                                : called.size() + " projects are called " + project
                                        + "; give one of them another name.");
            }
            Desk desk = new Desk(() -> shelf);
            Workings workings = desk.workings(shelf.kept(called.get(0).id()).project());
            Outcome<FitResult> fit = workings.fit();
            if (!fit.isThere()) {
                throw new InputException("There is no fitting of " + project + " yet: " + fit.sentence());
            }
            return FittingChart.of(fit.get(), workings.taken().value().flatMap(Taken::choice), List.of());
        }
    }
}
