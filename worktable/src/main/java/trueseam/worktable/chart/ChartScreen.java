package trueseam.worktable.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import trueseam.garment.measure.Measure;
import trueseam.output.words.MeasureWords;
import trueseam.worktable.page.Routes;
import trueseam.worktable.page.Screen;
import trueseam.worktable.page.Step;
import trueseam.worktable.page.Visit;
import trueseam.worktable.project.ChartPart;

/** Decisions in place: ease, what is done, how much, and alterations by their names. */
public final class ChartScreen implements Screen {

    /** For the server. */
    public ChartScreen() {}

    @Override
    public void answer(Routes routes) {
        routes.look("chart", visit -> show(visit, ""));
        routes.act("chart/decide", ChartScreen::decide);
        routes.act("chart/amount", ChartScreen::amount);
        routes.act("chart/ease", ChartScreen::ease);
        routes.act("chart/choose", ChartScreen::choose);
        routes.act("chart/ask", ChartScreen::ask);
        routes.act("chart/asked", ChartScreen::asked);
        routes.act("chart/drop", ChartScreen::drop);
    }

    private static void show(Visit visit, String problem) {
        visit.show(Step.CHART, ChartView.of(visit.workings(), problem));
    }

    private static void change(Visit visit, String label, String field, UnaryOperator<ChartPart> how) {
        visit.change(label, field, project -> project.with(how.apply(project.chart())));
        show(visit, "");
    }

    private static String label(Visit visit) {
        return MeasureWords.label(Measure.named(visit.field("measure")));
    }

    private static void decide(Visit visit) {
        String word = visit.field("decision");
        change(
                visit,
                label(visit) + ": " + (word.isEmpty() ? "by the rule" : word),
                "",
                part -> part.withDecision(visit.field("measure"), word));
    }

    private static void amount(Visit visit) {
        String term = visit.field("measure");
        String amount = visit.field("amount");
        change(
                visit,
                label(visit) + ": " + (amount.isBlank() ? "by the rule" : amount),
                "decision/" + term,
                part -> part.withDecision(term, amount));
    }

    private static void ease(Visit visit) {
        String term = visit.field("measure");
        String amount = visit.field("ease");
        change(
                visit,
                "Ease at " + label(visit) + ": " + (amount.isBlank() ? "the usual" : amount),
                "ease/" + term,
                part -> part.withEase(term, amount));
    }

    private static void choose(Visit visit) {
        change(
                visit,
                "Choice: " + visit.field("choice"),
                "",
                part -> part.withChoice(visit.field("choice"), visit.field("word")));
    }

    private static void ask(Visit visit) {
        String entry = visit.field("entry");
        String amount = visit.field("amount");
        if (entry.isBlank()) {
            show(visit, "Choose an alteration first, then add it.");
            return;
        }
        change(visit, "Alter: " + entry, "", part -> {
            List<ChartPart.Asked> all = new ArrayList<>(part.asked());
            all.add(new ChartPart.Asked(entry, "", amount, visit.field("side")));
            return part.withAsked(all);
        });
    }

    private static void asked(Visit visit) {
        int at = at(visit);
        change(visit, "Alter: " + visit.field("entry"), "asked/" + at, part -> {
            List<ChartPart.Asked> all = new ArrayList<>(part.asked());
            if (at < all.size()) {
                all.set(
                        at,
                        new ChartPart.Asked(
                                all.get(at).entry(), visit.field("way"), visit.field("amount"), visit.field("side")));
            }
            return part.withAsked(all);
        });
    }

    private static void drop(Visit visit) {
        int at = at(visit);
        change(visit, "Taken off: " + visit.field("entry"), "", part -> {
            List<ChartPart.Asked> all = new ArrayList<>(part.asked());
            if (at < all.size()) {
                all.remove(at);
            }
            return part.withAsked(all);
        });
    }

    private static int at(Visit visit) {
        String at = visit.field("at");
        return at.matches("\\d{1,3}") ? Integer.parseInt(at) : Integer.MAX_VALUE;
    }
}
