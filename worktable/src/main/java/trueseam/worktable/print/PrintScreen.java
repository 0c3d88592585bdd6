package trueseam.worktable.print;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.TreeMap;
import trueseam.output.drawing.PdfPages;
import trueseam.worktable.page.Download;
import trueseam.worktable.page.QuestionRow;
import trueseam.worktable.page.Routes;
import trueseam.worktable.page.Screen;
import trueseam.worktable.page.Step;
import trueseam.worktable.page.Visit;
import trueseam.worktable.project.PrintPart;
import trueseam.worktable.work.Outcome;

/** Choose paper and lines, see the pages, take the files away. */
public final class PrintScreen implements Screen {

    /** A page on the screen is looked at, not measured: so many pixels on its long side can be read on a sharp screen. */
    private static final int PIXELS = 1500;

    /** For the server. */
    public PrintScreen() {}

    @Override
    public void answer(Routes routes) {
        routes.look("print", PrintScreen::show);
        routes.look("print/page.png", PrintScreen::page);
        routes.look("print/file/{file}", PrintScreen::file);
        routes.act("print/choose", PrintScreen::choose);
        routes.act("print/worn", PrintScreen::worn);
        routes.act("print/hem", visit -> {
            QuestionRow.keep(visit);
            show(visit);
        });
    }

    private static void show(Visit visit) {
        visit.show(Step.PRINT, PrintView.of(visit));
    }

    private static void choose(Visit visit) {
        Map<String, String> choices = new TreeMap<>(visit.project().print().choices());
        PrintChoices before = PrintChoices.of(visit.project());
        keep(choices, PrintChoices.PAPER, visit.field("paper"));
        keep(choices, PrintChoices.ROLL, visit.field("roll"));
        choices.put(PrintChoices.LABEL, visit.field("label").strip());
        if (!visit.field("lines").isEmpty()) {
            choices.put(PrintChoices.LINES, String.join(",", visit.context().formParams("line")));
        }
        choices.remove(PrintChoices.STRIPS);
        if (visit.field("what").equals("strips")) {
            choices.put(PrintChoices.STRIPS, "yes");
        }
        visit.change(said(visit, before), "", project -> project.with(new PrintPart(choices)));
        show(visit);
    }

    private static void worn(Visit visit) {
        Map<String, String> choices = new TreeMap<>(visit.project().print().choices());
        boolean worn = !visit.field("worn").isEmpty();
        if (worn) {
            choices.put(PrintChoices.WORN, "yes");
        } else {
            choices.remove(PrintChoices.WORN);
        }
        visit.change(
                worn ? "Worn and found right" : "Not worn yet", "", project -> project.with(new PrintPart(choices)));
        show(visit);
    }

    /** What a form does not have stays. */
    private static void keep(Map<String, String> choices, String name, String text) {
        if (!text.isBlank()) {
            choices.put(name, text.strip());
        }
    }

    private static String said(Visit visit, PrintChoices before) {
        if (!visit.field("paper").isEmpty() && !visit.field("paper").equals(before.paper())) {
            return "Print on " + visit.field("paper");
        }
        if (visit.field("what").equals("strips") != before.strips()) {
            return before.strips() ? "Print whole pieces" : "Print strips";
        }
        return visit.field("label").strip().equals(before.label()) ? "Lines to print" : "Label on the print";
    }

    private static void page(Visit visit) {
        Printing printing = new Printing(visit.workings());
        Leaf leaf = printing.choices().strips() ? Leaf.STRIPS : Leaf.PRINT;
        Outcome<byte[]> pdf = printing.file(leaf, today());
        if (!pdf.isThere()) {
            Download.refuse(visit, 409, pdf.sentence());
            return;
        }
        try {
            visit.context()
                    .contentType("image/png")
                    .result(PdfPages.png(pdf.get(), Integer.parseInt(visit.asked("page")), PIXELS));
        } catch (NumberFormatException e) {
            Download.refuse(visit, 404, "Say which page, as a number from 1.");
        } catch (IllegalArgumentException e) {
            Download.refuse(visit, 404, e.getMessage());
        }
    }

    private static void file(Visit visit) {
        Printing printing = new Printing(visit.workings());
        var leaf = Leaf.named(visit.context().pathParam("file"));
        if (leaf.isEmpty()) {
            Download.refuse(visit, 404, "There is no such file; the Print screen lists those there are.");
            return;
        }
        Outcome<byte[]> made = printing.file(leaf.get(), today());
        if (!made.isThere()) {
            Download.refuse(visit, 409, made.sentence());
            return;
        }
        Recorded.keep(visit, printing, leaf.get(), today());
        String name =
                leaf.get().fileName(visit.project().name(), printing.choices().paper());
        Download.give(visit, name, leaf.get().type(), made.get());
    }

    private static LocalDate today() {
        return LocalDate.now(ZoneId.systemDefault());
    }
}
