package trueseam.worktable.chart;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import trueseam.fitting.compare.Method;
import trueseam.fitting.compare.Need;
import trueseam.garment.body.Origin;
import trueseam.garment.length.LengthFormat;
import trueseam.output.chart.ChartLine;
import trueseam.output.words.MeasureWords;
import trueseam.output.words.RulerLength;
import trueseam.worktable.work.Problem;
import trueseam.worktable.work.Workings;

/**
 * One need, as the chart shows it.
 *
 * @param term the measure's standard term; names its fields
 * @param label what it is called in the workroom
 * @param body what the body has
 * @param bodyNote where the body's value comes from if it was not taped, and its sides; else empty
 * @param ease the ease that the garment is to have; empty where the table is compared, whose ease is in the paper already
 * @param easeTyped her own ease as typed
 * @param easeNote where the ease comes from
 * @param paper what the paper has, and by which way of comparing
 * @param need how much larger the garment must get
 * @param decided {@code leave}, {@code alter}, {@code amount} if she decided herself, else empty
 * @param amountTyped her own amount as typed
 * @param verdict what is done where she did not decide herself, and by what
 * @param reason why
 * @param perEdge the amount at each cut edge
 * @param sharedOver the edges
 * @param after what the altered pattern measures
 * @param altered whether the pattern changes here
 * @param problem what is wrong with what was typed, else empty
 */
public record ChartRow(
        String term,
        String label,
        String body,
        String bodyNote,
        String ease,
        String easeTyped,
        String easeNote,
        String paper,
        String need,
        String decided,
        String amountTyped,
        String verdict,
        String reason,
        String perEdge,
        String sharedOver,
        String after,
        boolean altered,
        String problem) {

    static ChartRow of(ChartLine line, Workings workings) {
        Need need = line.need();
        LengthFormat show = workings.project().person().format();
        String term = need.measure().term();
        Map<String, String> own = workings.project().chart().decisions();
        String decision = own.getOrDefault(term, "");
        boolean word = decision.equals("leave") || decision.equals("alter");
        boolean flat = need.method() == Method.FLAT;
        return new ChartRow(
                term,
                line.label(),
                show.show(need.body().mm()),
                note(line, show),
                flat ? show.show(need.easeMm()) : "",
                workings.project().chart().ease().getOrDefault(term, ""),
                flat ? need.easeSource() : "in the paper already",
                flat ? "flat " + shown(need.flatMm(), show) : "table " + shown(need.tableMm(), show),
                show.showSigned(need.needMm()),
                decision.isEmpty() ? "" : word ? decision : "amount",
                word ? "" : decision,
                need.decision().verdict().word()
                        + (workings.choices().choices().isStanding(need.measure()) ? " (standing)" : " (rule)"),
                need.decision().reason(),
                line.change()
                        .map(change -> new RulerLength(show).showSigned(change.perEdgeMm())
                                + (change.edges() > 1 ? " × " + change.edges() : ""))
                        .orElse(""),
                line.change().map(change -> change.sharedOver()).orElse(""),
                line.afterMm().isPresent() ? show.show(line.afterMm().getAsDouble()) : "",
                need.decision().isAltered(),
                workings.choices().problems().stream()
                        .filter(p -> p.field().equals("decision/" + term)
                                || p.field().equals("ease/" + term))
                        .map(Problem::sentence)
                        .collect(Collectors.joining(" ")));
    }

    private static String note(ChartLine line, LengthFormat show) {
        Origin origin = line.need().body().origin();
        String from = origin == Origin.TAPED ? "" : MeasureWords.origin(origin);
        String sides = line.sides()
                .map(s -> "left " + show.show(s.leftMm()) + ", right " + show.show(s.rightMm()))
                .orElse("");
        return from.isEmpty() || sides.isEmpty() ? from + sides : from + "; " + sides;
    }

    private static String shown(OptionalDouble mm, LengthFormat show) {
        return mm.isPresent() ? show.show(mm.getAsDouble()) : "";
    }
}
