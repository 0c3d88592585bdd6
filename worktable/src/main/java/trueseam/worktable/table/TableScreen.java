package trueseam.worktable.table;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.HttpStatus;
import java.util.function.Consumer;
import trueseam.fitting.handle.Drag;
import trueseam.fitting.handle.Dragged;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.HeldFit;
import trueseam.fitting.work.Chapter;
import trueseam.garment.flat.OutlinePlace;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Point;
import trueseam.output.words.MeasureWords;
import trueseam.worktable.page.Routes;
import trueseam.worktable.page.Screen;
import trueseam.worktable.page.Step;
import trueseam.worktable.page.Visit;
import trueseam.worktable.project.ChartPart;
import trueseam.worktable.work.Outcome;

/** The pieces as they change: drags, steps, tape, walks. */
public final class TableScreen implements Screen {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** For the server. */
    public TableScreen() {}

    @Override
    public void answer(Routes routes) {
        routes.look("table", visit -> visit.show(Step.TABLE, TableView.of(visit.workings())));
        routes.act("table/drag", orSentence(TableScreen::drag));
        routes.act("table/put", orSentence(TableScreen::put));
        routes.look("table/steps", orSentence(TableScreen::steps));
        routes.look("table/walk", orSentence(TableScreen::walk));
        routes.look("table/tape", orSentence(TableScreen::tape));
    }

    /** A script shows the sentence. */
    private static Consumer<Visit> orSentence(Consumer<Visit> answer) {
        return visit -> {
            try {
                answer.accept(visit);
            } catch (TableException e) {
                visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT).result(String.valueOf(e.getMessage()));
            }
        };
    }

    private static FitResult fit(Visit visit) {
        Outcome<FitResult> fit = visit.workings().fit();
        return fit.value().orElseThrow(() -> new TableException(fit.sentence()));
    }

    /** Nothing is kept: the page shows what would be. What it took is said in the answer's head. */
    private static void drag(Visit visit) {
        Outcome<HeldFit> held = visit.workings().held();
        HeldFit from = held.value().orElseThrow(() -> new TableException(held.sentence()));
        DragTiming timing = DragTiming.begun();
        Dragged dragged = Drag.of(from, Measure.named(visit.field("measure"))).to(number(visit.field("mm")));
        timing.fitted();
        String json = json(said(dragged, from.fit().choices().show()));
        visit.context().header("Server-Timing", timing.written());
        visit.tell(json);
    }

    private static DragAnswer said(Dragged dragged, LengthFormat show) {
        if (dragged instanceof Dragged.Refused refused) {
            String far = show.showSigned(refused.farthestMm());
            return DragAnswer.refused(refused.farthestMm(), far, refused.why() + " As far as it goes: " + far + ".");
        }
        return DragAnswer.of(dragged.amountMm(), ((Dragged.Moved) dragged).fit());
    }

    private static void put(Visit visit) {
        String term = visit.field("measure");
        double mm = number(visit.field("mm"));
        Measure measure = Measure.named(term);
        LengthFormat show = fit(visit).choices().show();
        double planned = mm - pinnedMm(visit, measure);
        visit.change(
                MeasureWords.label(measure) + " " + show.showSigned(mm),
                "",
                project -> project.with(
                        decided(project.chart(), measure, planned == 0 ? "leave" : show.showSigned(planned))));
        visit.show(Step.TABLE, TableView.of(visit.workings()));
    }

    /** What was pinned on a trial garment comes on top of the plan; the handle shows both, and only the plan is decided here. */
    private static double pinnedMm(Visit visit, Measure measure) {
        return visit.workings()
                .firstFit()
                .value()
                .map(first -> amountMm(fit(visit), measure) - amountMm(first, measure))
                .orElse(0.0);
    }

    private static double amountMm(FitResult fit, Measure measure) {
        return fit.needs().stream()
                .filter(need -> need.measure() == measure)
                .mapToDouble(need -> need.decision().amountMm())
                .sum();
    }

    /** The leg is one line: what she decided last about it counts. */
    private static ChartPart decided(ChartPart chart, Measure measure, String word) {
        ChartPart decided = chart.withDecision(measure.term(), word);
        return measure == Measure.TROUSER_LENGTH ? decided.withDecision(Measure.INSIDE_LEG_LENGTH.term(), "") : decided;
    }

    private static void steps(Visit visit) {
        FitResult fit = fit(visit);
        int at = (int) number(visit.asked("chapter"));
        if (!(0 <= at && at < fit.worked().chapters().size())) {
            throw new TableException("This alteration is not on the table any more; reload the page.");
        }
        Chapter chapter = fit.worked().chapters().get(at);
        visit.tell(json(StepsAnswer.of(chapter, fit.choices().show())));
    }

    private static void walk(Visit visit) {
        FitResult fit = fit(visit);
        Pattern pattern = visit.asked("which").equals("before")
                ? fit.worked().original()
                : fit.worked().altered();
        int at = (int) number(visit.asked("seam"));
        if (!(0 <= at && at < pattern.seams().size())) {
            throw new TableException("This seam is not on the table any more; reload the page.");
        }
        Seam seam = pattern.seams().get(at);
        visit.tell(json(WalkAnswer.of(pattern, seam, fit.choices().show())));
    }

    private static void tape(Visit visit) {
        FitResult fit = fit(visit);
        Piece piece = fit.worked().altered().piece(visit.asked("piece"));
        visit.tell(json(TapeAnswer.of(
                piece,
                place(visit, piece, "from"),
                place(visit, piece, "to"),
                fit.choices().show())));
    }

    /** An edge and how far along it, or a spot of the piece, y downwards, that is taken to the nearest edge. */
    private static OutlinePlace place(Visit visit, Piece piece, String end) {
        String edge = visit.asked(end + "Edge");
        if (edge.isEmpty()) {
            return OutlinePlace.nearest(
                    piece, new Point(number(visit.asked(end + "X")), -number(visit.asked(end + "Y"))));
        }
        double along = Math.min(piece.edge(edge).length(), Math.max(0, number(visit.asked(end + "Along"))));
        return new OutlinePlace(edge, along, piece.edge(edge).path().pointAt(along));
    }

    private static double number(String text) {
        try {
            double value = Double.parseDouble(text);
            if (Math.abs(value) <= Point.LIMIT_MM) {
                return value;
            }
        } catch (NumberFormatException e) {
            // Said below.
        }
        throw new TableException("The page sent \"" + text + "\" where a number was expected; reload the page.");
    }

    private static String json(Object answer) {
        try {
            return JSON.writeValueAsString(answer);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an answer of the table", e);
        }
    }
}
