package trueseam.worktable.cloth;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import trueseam.cloth.goods.Stuff;
import trueseam.cloth.lay.LaidPiece;
import trueseam.cloth.lay.Lay;
import trueseam.cloth.lay.Spot;
import trueseam.worktable.page.Download;
import trueseam.worktable.page.Frame;
import trueseam.worktable.page.Routes;
import trueseam.worktable.page.Screen;
import trueseam.worktable.page.Step;
import trueseam.worktable.page.Visit;
import trueseam.worktable.project.ClothPart;
import trueseam.worktable.project.ClothPart.OneCloth;
import trueseam.worktable.work.Outcome;

/** Choose the cloth, lay the pieces by hand, let the rest be laid, take the layout away. */
public final class ClothScreen implements Screen {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Searches searches;

    /**
     * For the server.
     *
     * @param searches those that run at present
     */
    public ClothScreen(Searches searches) {
        this.searches = searches;
    }

    @Override
    public void answer(Routes routes) {
        routes.look("cloth", this::show);
        routes.look("cloth/news", this::news);
        routes.look("cloth/laid", this::laid);
        routes.look("cloth/file/{file}", this::file);
        routes.act("cloth/stuff", orSentence(this::stuff));
        routes.act("cloth/choose", orSentence(this::choose));
        routes.act("cloth/try", orSentence(this::tryOut));
        routes.act("cloth/put", orSentence(this::put));
        routes.act("cloth/hold", orSentence(this::hold));
        routes.act("cloth/free", orSentence(this::free));
        routes.act("cloth/search", orSentence(this::begin));
        routes.act("cloth/stop", orSentence(this::stop));
    }

    /** A script shows the sentence. */
    private static Consumer<Visit> orSentence(Consumer<Visit> answer) {
        return visit -> {
            try {
                answer.accept(visit);
            } catch (ClothException e) {
                Download.refuse(visit, HttpStatus.UNPROCESSABLE_CONTENT.getCode(), e.getMessage());
            }
        };
    }

    private void show(Visit visit) {
        visit.show(Step.CLOTH, view(visit));
    }

    private ClothView view(Visit visit) {
        return ClothView.of(visit, plan(visit), search(visit));
    }

    private static String id(Visit visit) {
        return visit.frame(Step.CLOTH).id();
    }

    private Optional<Search> search(Visit visit) {
        return searches.of(id(visit));
    }

    private static Outcome<Plan> plan(Visit visit) {
        return Plan.of(visit.workings(), ClothChoices.of(visit.project()));
    }

    /** Only how far it is; a page that asks is a page that is looked at. */
    private void news(Visit visit) {
        search(visit).ifPresent(Search::touch);
        visit.show(Step.CLOTH, "cloth/progress.jte", ProgressView.of(visit, search(visit)));
    }

    private void laid(Visit visit) {
        ClothView view = view(visit);
        if (view.laid().isThere()) {
            visit.show(Step.CLOTH, "cloth/laid.jte", view);
        } else {
            Download.refuse(visit, 409, view.laid().sentence());
        }
    }

    private void stuff(Visit visit) {
        Stuff stuff = Stuff.ofWord(visit.field("stuff"))
                .orElseThrow(() -> new ClothException("Say which: fashion cloth, lining or interfacing."));
        searches.stop(id(visit));
        visit.change("Look at " + stuff.word(), "", p -> p.with(p.cloth().showing(stuff.word())));
        show(visit);
    }

    private void choose(Visit visit) {
        searches.drop(id(visit));
        ClothChoices before = ClothChoices.of(visit.project());
        OneCloth one = ClothForm.read(visit, before);
        change(visit, ClothForm.said(visit, before), "", was -> one);
        show(visit);
    }

    private static void change(Visit visit, String label, String field, UnaryOperator<OneCloth> how) {
        String stuff = ClothChoices.of(visit.project()).stuff().word();
        visit.change(
                label,
                field,
                p -> p.with(p.cloth().with(stuff, how.apply(p.cloth().of(stuff)))));
    }

    /** Nothing is kept: what would be wrong, and how long it would be, while a piece is in the hand. */
    private void tryOut(Visit visit) {
        Moved moved = moved(visit);
        visit.tell(json(TryAnswer.of(moved.after(), visit.project().person().format())));
    }

    /** A piece in the hand, and the layout with it laid down. */
    private record Moved(LaidPiece piece, Plan after) {}

    private Moved moved(Visit visit) {
        Plan base = base(visit);
        int at = piece(visit, base);
        LaidPiece piece = base.lay().pieces().get(at);
        Spot spot = HandMove.of(base, piece, visit);
        Plan after = base.with(at, spot)
                .orElseThrow(() -> new ClothException("The layout has changed; look again, then move the piece."));
        return new Moved(piece, after);
    }

    private static int piece(Visit visit, Plan base) {
        int at = (int) HandMove.number(visit, "piece");
        if (!(0 <= at && at < base.lay().pieces().size())) {
            throw new ClothException("There is no such piece on the cloth; look again.");
        }
        return at;
    }

    /** The layout that the page shows: the project's own, or one that the search has found since. */
    private Plan base(Visit visit) {
        Outcome<Plan> plan = plan(visit);
        if (!plan.isThere()) {
            throw new ClothException(plan.sentence());
        }
        int on = (int) HandMove.number(visit, "on");
        if (on == 0) {
            return plan.get();
        }
        Optional<Lay> found = search(visit)
                .filter(s -> s.order().task().equals(plan.get().laying().mark()))
                .flatMap(s -> s.layout(on));
        return plan.get()
                .on(found.orElseThrow(
                        () -> new ClothException("The layout has changed; look again, then move the piece.")));
    }

    private void put(Visit visit) {
        Moved moved = moved(visit);
        searches.drop(id(visit));
        String name = moved.piece().part().piece().name();
        String field = visit.field("by").equals("keys") ? "move " + name + " " + visit.field("piece") : "";
        keep(visit, visit.field("how").isEmpty() ? "Move " + name : "Turn " + name, field, moved.after());
        show(visit);
    }

    private static void keep(Visit visit, String label, String field, Plan plan) {
        change(
                visit,
                label,
                field,
                one -> one.laid(Plan.places(plan.spots()), plan.laying().mark(), 0));
    }

    /** Holds a piece where it lies, or lets it go. */
    private void hold(Visit visit) {
        Plan base = base(visit);
        int at = piece(visit, base);
        LaidPiece piece = base.lay().pieces().get(at);
        boolean held = !base.lay().byHand(piece);
        searches.drop(id(visit));
        Spot spot = base.spots().get(at).held(held);
        Plan after = base.with(at, spot)
                .orElseThrow(() -> new ClothException("The layout has changed; look again, then hold the piece."));
        keep(visit, (held ? "Hold " : "Let go ") + piece.part().piece().name(), "", after);
        show(visit);
    }

    /** Lets all pieces go; they stay where they are until the search lays them. */
    private void free(Visit visit) {
        searches.drop(id(visit));
        change(
                visit,
                "Let all pieces go",
                "",
                one -> one.laid(
                        one.laid().stream()
                                .map(p -> new ClothPart.Place(
                                        p.piece(), p.turn(), p.faceDown(), p.along(), p.across(), false))
                                .toList(),
                        one.task(),
                        one.rounds()));
        show(visit);
    }

    private void begin(Visit visit) {
        Outcome<Plan> outcome = plan(visit);
        if (!outcome.isThere()) {
            throw new ClothException(outcome.sentence());
        }
        Plan plan = outcome.get();
        String task = plan.laying().mark();
        Frame frame = visit.frame(Step.CLOTH);
        searches.begin(new Search.Order(
                frame.id(),
                task,
                plan,
                plan.choices().one().lengths().task().equals(task),
                new Keeper(visit.desk(), frame.id(), visit.field("tab"), plan)));
        show(visit);
    }

    private void stop(Visit visit) {
        searches.stop(id(visit));
        show(visit);
    }

    private void file(Visit visit) {
        Optional<ClothFile> file = ClothFile.named(visit.context().pathParam("file"));
        Outcome<Plan> plan = plan(visit);
        if (file.isEmpty()) {
            Download.refuse(visit, 404, "There is no such file; the Cloth screen lists those there are.");
        } else if (!plan.isThere()) {
            Download.refuse(visit, 409, plan.sentence());
        } else if (!plan.get().faults().isEmpty()) {
            Download.refuse(visit, 409, ClothView.UNPROVED);
        } else {
            ClothFile wanted = file.get();
            Download.give(
                    visit,
                    ClothView.fileName(visit, plan.get(), wanted),
                    wanted.type(),
                    wanted.of(plan.get(), visit.project().person().format()));
        }
    }

    static String json(Object answer) {
        try {
            return JSON.writeValueAsString(answer);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an answer is plain text", e);
        }
    }
}
