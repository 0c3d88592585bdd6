package trueseam.worktable.pattern;

import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import trueseam.garment.finding.Severity;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.file.DrawingFiles;
import trueseam.intake.file.ReadChoices;
import trueseam.intake.namesfile.NamesFile;
import trueseam.intake.patternfile.PatternFile;
import trueseam.intake.patternfile.PatternFileException;
import trueseam.intake.sheet.SheetException;
import trueseam.worktable.page.Brought;
import trueseam.worktable.page.QuestionRow;
import trueseam.worktable.page.Routes;
import trueseam.worktable.page.Screen;
import trueseam.worktable.page.Step;
import trueseam.worktable.page.Visit;
import trueseam.worktable.project.DrawingPart;
import trueseam.worktable.project.PatternPart;
import trueseam.worktable.project.Project;
import trueseam.worktable.work.Taken;

/** Draft a shell, open a pattern file, or type what the tape reads on a paper pattern. */
public final class PatternScreen implements Screen {

    /** For the server. */
    public PatternScreen() {}

    @Override
    public void answer(Routes routes) {
        routes.look("pattern", PatternScreen::show);
        routes.look("pattern/pieces.svg", PatternScreen::pieces);
        routes.act("pattern/way", visit -> choose(visit, "Pattern: " + visit.field("way"), p -> with(p, visit)));
        routes.act("pattern/choose", visit -> choose(visit, label(visit), p -> with(p, visit)));
        routes.act("pattern/flat", PatternScreen::flat);
        routes.act("pattern/between", visit -> {
            QuestionRow.keep(visit);
            show(visit);
        });
        routes.act("pattern/bring", PatternScreen::bring);
    }

    private static void show(Visit visit) {
        visit.show(Step.PATTERN, PatternView.of(visit.workings(), ""));
    }

    private static void choose(Visit visit, String label, UnaryOperator<PatternPart> how) {
        visit.change(label, "", project -> project.with(how.apply(project.pattern())));
        show(visit);
    }

    private static String label(Visit visit) {
        return visit.field("size").isEmpty()
                ? "Pattern: " + visit.field("garment").replace('_', ' ')
                : "Size " + visit.field("size");
    }

    /** What the form says; what it does not have stays. A size of another table is not a size of this one. */
    private static PatternPart with(PatternPart part, Visit visit) {
        String way = orStays(visit, "way", part.way());
        String garment = orStays(visit, "garment", part.garment());
        String table = orStays(visit, "table", part.table());
        boolean sameTable = table.equals(part.table()) && way.equals(part.way());
        String size = sameTable ? orStays(visit, "size", part.size()) : "";
        boolean pieces = visit.context().formParamMap().containsKey("small");
        List<String> with = new ArrayList<>(pieces ? visit.context().formParams("with") : part.with());
        if (!garment.equals(part.garment())) {
            with.clear();
        }
        return new PatternPart(
                way, garment, with, table, size, part.file(), part.fileName(), part.flat(), part.drawing());
    }

    private static String orStays(Visit visit, String field, String now) {
        return visit.context().formParamMap().containsKey(field) ? visit.field(field) : now;
    }

    private static void flat(Visit visit) {
        String term = visit.field("measure");
        String text = visit.field("text").strip();
        visit.change("Flat " + term + " " + text, "flat/" + term, project -> {
            PatternPart part = project.pattern();
            Map<String, String> flat = new TreeMap<>(part.flat());
            flat.put(term, text);
            flat.values().removeIf(String::isEmpty);
            return project.with(new PatternPart(
                    part.way(),
                    part.garment(),
                    part.with(),
                    part.table(),
                    part.size(),
                    part.file(),
                    part.fileName(),
                    flat,
                    part.drawing()));
        });
        show(visit);
    }

    private static void bring(Visit visit) {
        UploadedFile file = visit.context().uploadedFile("file");
        if (file == null || file.size() == 0) {
            visit.show(Step.PATTERN, PatternView.of(visit.workings(), "Choose a file first, then bring it."));
            return;
        }
        if (visit.context().uploadedFiles().size() > 1) {
            visit.show(Step.PATTERN, PatternView.of(visit.workings(), "Bring one file at a time."));
            return;
        }
        String problem = kept(visit, file);
        visit.show(Step.PATTERN, PatternView.of(visit.workings(), problem));
    }

    /** Only a file that can be read becomes the project's pattern. */
    private static String kept(Visit visit, UploadedFile file) {
        String name = Brought.name(file);
        try {
            byte[] content = Brought.bytes(file);
            if (name.endsWith(NamesFile.ENDING)) {
                return keptNames(visit, name, Brought.text(file));
            }
            return PatternFile.isOne(content)
                    ? keptPattern(visit, name, Brought.text(file))
                    : keptDrawing(visit, name, content);
        } catch (PatternFileException | DrawingException | SheetException e) {
            return e.getMessage();
        } catch (IOException e) {
            return "The file cannot be read: it is not text in UTF-8. Bring a pattern file, an SVG as docs/pattern-file.md says.";
        }
    }

    private static String keptPattern(Visit visit, String name, String text) {
        var reading = PatternFile.read(name, text);
        var failure = reading.findings().stream()
                .filter(f -> f.severity() == Severity.FAILURE)
                .findFirst();
        if (failure.isPresent()) {
            return failure.get().place() + ": " + failure.get().sentence();
        }
        String mark = visit.desk().shelf().keepFile(text);
        visit.change("Pattern file " + name, "", project -> withFile(project, mark, name));
        return "";
    }

    /** A drawing is kept as it is; what it is taken for is shown to be confirmed. */
    private static String keptDrawing(Visit visit, String name, byte[] content) {
        DrawingFiles.read(name, content, ReadChoices.NONE);
        String mark = visit.desk().shelf().keepFile(content);
        DrawingPart drawing = DrawingPart.of(mark, name);
        Project with = visit.project()
                .with(new PatternPart(
                        "drawing",
                        "",
                        List.of(),
                        "",
                        "",
                        "",
                        name,
                        visit.project().pattern().flat(),
                        drawing));
        var brought = visit.desk().workings(with).brought();
        if (!brought.isThere()) {
            return brought.sentence();
        }
        visit.change("Drawing " + name, "", project -> with);
        return "";
    }

    /** What was said in an editor about the drawing that is there. */
    private static String keptNames(Visit visit, String name, String text) {
        DrawingPart drawing = visit.project().pattern().drawing();
        if (drawing.file().isEmpty()) {
            return name + ": It says what is in a drawing, and no drawing was brought yet; bring the drawing first.";
        }
        NamesFile.read(name, text);
        visit.change(
                "Names " + name,
                "",
                project -> project.with(
                        project.pattern().with(project.pattern().drawing().withNames(text))));
        return "";
    }

    private static Project withFile(Project project, String mark, String name) {
        PatternPart part = project.pattern();
        return project.with(new PatternPart("file", "", List.of(), "", "", mark, name, part.flat()));
    }

    private static void pieces(Visit visit) {
        visit.context()
                .contentType("image/svg+xml")
                .result(visit.workings()
                        .taken()
                        .value()
                        .map(Taken::pattern)
                        .map(PatternFile::write)
                        .orElse("<svg xmlns=\"http://www.w3.org/2000/svg\"/>"));
    }
}
