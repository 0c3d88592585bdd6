package trueseam.worktable.pattern;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthTextException;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.PieceKind;
import trueseam.intake.bring.Brought;
import trueseam.intake.bring.BroughtPiece;
import trueseam.intake.bring.BroughtPiece.BroughtMark;
import trueseam.intake.bring.Correcting;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.namesfile.NamesFile;
import trueseam.intake.patternfile.PatternFile;
import trueseam.intake.said.Corrections;
import trueseam.intake.said.LineTaken;
import trueseam.intake.said.MarkSaid;
import trueseam.worktable.page.Routes;
import trueseam.worktable.page.Screen;
import trueseam.worktable.page.Step;
import trueseam.worktable.page.Visit;
import trueseam.worktable.project.DrawingPart;
import trueseam.worktable.project.Project;
import trueseam.worktable.work.BroughtDrawing;
import trueseam.worktable.work.Outcome;

/** Confirm what a drawing was taken for, or say what it is. */
public final class DrawingScreen implements Screen {

    private static final String LEFT_OUT = "left out";

    /** For the server. */
    public DrawingScreen() {}

    @Override
    public void answer(Routes routes) {
        routes.look("pattern/names.txt", DrawingScreen::names);
        routes.act(
                "pattern/drawing/read",
                visit -> keep(
                        visit,
                        "Drawing: how it is read",
                        p -> new DrawingPart(
                                p.file(),
                                p.fileName(),
                                p.names(),
                                visit.field("across").isBlank() ? visit.field("size") : visit.field("across"),
                                visit.field("cutting"),
                                visit.field("square"),
                                visit.field("page"),
                                visit.field("unit"),
                                false)));
        routes.act("pattern/drawing/kind", DrawingScreen::kind);
        routes.act(
                "pattern/drawing/name",
                visit -> correct(
                        visit, "Named " + visit.field("name"), c -> c.called(piece(visit), visit.field("name"))));
        routes.act(
                "pattern/drawing/cut",
                visit -> correct(
                        visit,
                        "Cut " + visit.field("cut"),
                        c -> c.piece(piece(visit), p -> p.cut(whole(visit.field("cut"))))));
        routes.act(
                "pattern/drawing/fold",
                visit -> correct(
                        visit,
                        "Fold: " + orNone(visit.field("fold")),
                        c -> c.piece(piece(visit), p -> p.onFold(visit.field("fold")))));
        routes.act("pattern/drawing/line", DrawingScreen::line);
        routes.act(
                "pattern/drawing/edge",
                visit -> correct(
                        visit,
                        "Edge: " + visit.field("to"),
                        c -> c.edge(piece(visit), edge(visit, c), visit.field("to"))));
        routes.act(
                "pattern/drawing/join",
                visit -> correct(visit, "Edges joined", c -> c.joined(piece(visit), edge(visit, c))));
        routes.act(
                "pattern/drawing/part",
                visit -> correct(
                        visit,
                        "Edge parted",
                        c -> c.parted(piece(visit), edge(visit, c), length(visit, visit.field("at")))));
        routes.act("pattern/drawing/mark", DrawingScreen::mark);
        routes.act("pattern/drawing/sewn", DrawingScreen::sewn);
        routes.act(
                "pattern/drawing/not-sewn",
                visit -> correct(visit, "Not sewn together", c -> c.notSewn(whole(visit.field("seam")))));
        routes.act("pattern/drawing/anew", visit -> keep(visit, "All proposed anew", p -> p.withNames("")));
        routes.act("pattern/drawing/right", DrawingScreen::right);
    }

    private static String orNone(String edge) {
        return edge.isEmpty() ? "none" : edge;
    }

    private static void show(Visit visit, String problem) {
        visit.show(Step.PATTERN, PatternView.of(visit.workings(), "", problem));
    }

    private static int piece(Visit visit) {
        return whole(visit.field("piece"));
    }

    private static int whole(String text) {
        if (!text.strip().matches("\\d{1,4}")) {
            throw new DrawingException("The drawing", "", "A whole number is expected, and \"" + text + "\" is none.");
        }
        return Integer.parseInt(text.strip());
    }

    private static double length(Visit visit, String text) {
        return Length.parse(text, visit.project().person().bareUnit()).mm();
    }

    /** The name of an edge that the form tells by its place. */
    private static String edge(Visit visit, Correcting c) {
        int at = whole(visit.field("edge"));
        BroughtPiece piece = c.brought().pieces().stream()
                .filter(p -> p.number() == piece(visit))
                .findFirst()
                .orElseThrow();
        return piece.edges().get(Math.min(at, piece.edges().size() - 1)).name().value();
    }

    private static void kind(Visit visit) {
        String word = visit.field("kind");
        correct(visit, "Piece " + visit.field("piece") + ": " + word, c -> {
            if (word.equals(LEFT_OUT)) {
                return c.piece(piece(visit), p -> p.leftOut(true));
            }
            if (word.isEmpty()) {
                return c.piece(piece(visit), p -> p.leftOut(false));
            }
            return c.kind(
                    piece(visit),
                    PieceKind.ofWord(word)
                            .orElseThrow(
                                    () -> new DrawingException("The drawing", "", "No piece is a \"" + word + "\".")));
        });
    }

    private static void line(Visit visit) {
        LineTaken taken = LineTaken.ofWord(visit.field("line")).orElse(LineTaken.STITCHING);
        String text = visit.field("allowance").strip();
        correct(visit, "Line: " + taken.word(), c -> {
            OptionalDouble mm = text.isEmpty() || taken == LineTaken.INNER
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(length(visit, text));
            return c.piece(piece(visit), p -> p.drawnAs(taken, mm));
        });
    }

    private static void mark(Visit visit) {
        correct(visit, "Darts and notches", c -> {
            BroughtMark mark = c.brought().pieces().stream()
                    .filter(p -> p.number() == piece(visit))
                    .findFirst()
                    .orElseThrow()
                    .marks()
                    .get(whole(visit.field("mark")));
            boolean is = !mark.is().value();
            return c.piece(piece(visit), p -> p.with(new MarkSaid(mark.what(), mark.at(), is)));
        });
    }

    private static void sewn(Visit visit) {
        String ease = visit.field("ease").strip();
        correct(
                visit,
                "Seam: " + visit.field("name"),
                c -> c.sewn(
                        visit.field("name"),
                        ref(visit, c, "first"),
                        ref(visit, c, "second"),
                        ease.isEmpty() ? 0 : length(visit, ease)));
    }

    /** The edge that a form tells by its place among all. */
    private static EdgeRef ref(Visit visit, Correcting c, String field) {
        int at = whole(visit.field(field));
        for (var piece : c.brought().pattern().pieces()) {
            if (at < piece.edges().size()) {
                return new EdgeRef(piece.name(), piece.edges().get(at).name());
            }
            at -= piece.edges().size();
        }
        throw new DrawingException("The drawing", "", "Choose two edges.");
    }

    /** What is said is kept if something comes of it; else it is told why not, and all stays as it was. */
    private static void correct(Visit visit, String label, Function<Correcting, Corrections> how) {
        Outcome<BroughtDrawing> now = visit.workings().brought();
        Optional<Correcting> correcting = now.value().flatMap(BroughtDrawing::correcting);
        if (correcting.isEmpty()) {
            show(visit, now.sentence());
            return;
        }
        try {
            String names = NamesFile.write(how.apply(correcting.get()));
            keep(visit, label, part -> part.withNames(names));
        } catch (DrawingException | LengthTextException e) {
            show(visit, e.getMessage());
        }
    }

    private static void keep(Visit visit, String label, UnaryOperator<DrawingPart> how) {
        UnaryOperator<Project> change = project ->
                project.with(project.pattern().with(how.apply(project.pattern().drawing())));
        Outcome<BroughtDrawing> then =
                visit.desk().workings(change.apply(visit.project())).brought();
        if (!then.isThere()) {
            show(visit, then.sentence());
            return;
        }
        visit.change(label, "", change);
        show(visit, "");
    }

    private static void right(Visit visit) {
        Optional<Brought> brought = visit.workings().brought().value().flatMap(BroughtDrawing::brought);
        if (brought.isEmpty()) {
            show(visit, "There is nothing to confirm yet.");
            return;
        }
        String mark =
                visit.desk().shelf().keepFile(PatternFile.write(brought.get().pattern()));
        visit.change(
                "Drawing found right",
                "",
                project -> project.with(project.pattern().confirmed(mark)));
        show(visit, "");
    }

    private static void names(Visit visit) {
        DrawingPart part = visit.project().pattern().drawing();
        String text = visit.workings()
                .brought()
                .value()
                .flatMap(BroughtDrawing::brought)
                .map(b -> NamesFile.write(part.fileName(), b))
                .orElse("");
        visit.context()
                .contentType("text/plain; charset=utf-8")
                .header(
                        "Content-Disposition",
                        "attachment; filename=\""
                                + NamesFile.beside(part.fileName()).replaceAll("[^\\w. -]", "_") + "\"")
                .result(text);
    }
}
