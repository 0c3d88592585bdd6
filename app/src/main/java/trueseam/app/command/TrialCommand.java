package trueseam.app.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import trueseam.app.input.InputException;
import trueseam.app.input.Json;
import trueseam.app.input.PatternOption;
import trueseam.app.input.UnitsOption;
import trueseam.fitting.trial.AnswerException;
import trueseam.fitting.trial.GuidedReading;
import trueseam.fitting.trial.Question;
import trueseam.output.trial.TrialDocument;
import trueseam.output.trial.TrialText;

/** The guided reading of a trial garment's folds. */
@Command(
        name = "trial",
        description =
                "Read the folds of a trial garment: answer where they are, which way they lie, what pinning does, and get ranked"
                        + " causes, the question that tells them apart, and the change.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Examples:",
            "  trueseam trial",
            "  trueseam trial --answer part=skirt --answer place=skirt-band-back",
            "  trueseam trial --answer seen=11 --answer pull-down=stay",
            "  trueseam trial --pattern skirt.svg --ask",
            "",
            "Write what you pinned into a file and give it to fit --pinned; docs/trial-garment.md tells how."
        })
public final class TrialCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private PatternOption pattern;

    @Option(
            names = "--answer",
            paramLabel = "QUESTION=ANSWER",
            description =
                    "An answer, as the questions show them; \"unsure\" leaves it open. May be given several times.")
    private List<String> answers = List.of();

    @Option(names = "--ask", description = "Ask the questions one after the other, and read the answers.")
    private boolean ask;

    @Option(names = "--list", description = "List everything that is seen, with its number and its causes.")
    private boolean list;

    @Option(names = "--markdown", description = "Print the whole catalogue as a document.")
    private boolean markdown;

    @Mixin
    private UnitsOption units;

    /** For the command line. */
    public TrialCommand() {}

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (markdown) {
            out.print(TrialDocument.markdown());
            return 0;
        }
        GuidedReading reading = pattern.isGiven()
                ? GuidedReading.of(pattern.read(spec.commandLine().getErr()))
                : GuidedReading.ofAnyGarment();
        for (String answer : answers) {
            int at = answer.indexOf('=');
            if (at < 1 || at == answer.length() - 1) {
                throw new InputException("--answer \"" + answer
                        + "\" cannot be read; write a question, = and an answer, such as part=skirt.");
            }
            reading = reading.answered(
                    answer.substring(0, at).strip(), answer.substring(at + 1).strip());
        }
        if (ask) {
            reading = asked(reading, out);
        }
        if (units.json()) {
            out.println(Json.write(TrialText.figures(reading)));
        } else {
            out.println(list ? TrialText.list(reading.symptoms()) : TrialText.text(reading));
        }
        return 0;
    }

    /** Asks until nothing more is worth asking, or the answers end. */
    private static GuidedReading asked(GuidedReading first, PrintWriter out) {
        GuidedReading reading = first;
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        Optional<Question> next = reading.next();
        while (next.isPresent()) {
            Question question = next.get();
            out.println(question.asks());
            List<Question.Answer> possible = question.answers();
            for (int i = 0; i < possible.size(); i++) {
                out.println("  " + (i + 1) + "  " + possible.get(i).words());
            }
            out.println("  0  I am not sure");
            Optional<String> said = line(in, out);
            if (said.isEmpty()) {
                return reading;
            }
            try {
                reading = reading.answered(question.key(), answer(said.get(), possible));
                next = reading.next();
            } catch (AnswerException e) {
                out.println(e.getMessage());
            }
            out.println();
        }
        return reading;
    }

    private static Optional<String> line(BufferedReader in, PrintWriter out) {
        out.print("> ");
        out.flush();
        try {
            return Optional.ofNullable(in.readLine()).map(String::strip);
        } catch (IOException e) {
            throw new UncheckedIOException("the answers cannot be read", e);
        }
    }

    /** A number as it is shown, or the answer's own word. */
    private static String answer(String said, List<Question.Answer> possible) {
        for (int i = 0; i < possible.size(); i++) {
            if (said.equals(Integer.toString(i + 1))) {
                return possible.get(i).key();
            }
        }
        return said.equals("0") ? GuidedReading.UNSURE : said;
    }
}
