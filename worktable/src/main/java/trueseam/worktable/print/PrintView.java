package trueseam.worktable.print;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import trueseam.garment.ease.GarmentKind;
import trueseam.output.print.FullSizePrint;
import trueseam.output.print.PrintedLine;
import trueseam.worktable.page.QuestionRow;
import trueseam.worktable.page.Visit;
import trueseam.worktable.work.Outcome;

/**
 * What the Print screen shows.
 *
 * @param papers what can be printed on
 * @param strips whether strips are chosen
 * @param roll the width of the roll as it was typed
 * @param lines the lines that can be printed
 * @param label what is printed for the person
 * @param problem what is wrong with the choices; else empty
 * @param rollWrong whether it is the roll's width
 * @param sheet the pages, or why there are none
 * @param cautions what speaks against cutting
 * @param files what can be taken away
 * @param worn whether the garment was worn, or its trial garment tried on, and found right
 * @param hem how deep the hem is; empty where nothing has a trouser hem
 */
public record PrintView(
        List<Choice> papers,
        boolean strips,
        String roll,
        List<Choice> lines,
        String label,
        String problem,
        boolean rollWrong,
        Outcome<PagesView> sheet,
        List<String> cautions,
        List<File> files,
        boolean worn,
        Optional<QuestionRow> hem) {

    /**
     * Something to choose.
     *
     * @param word its word in the form
     * @param label what it is called
     * @param about more of it
     * @param chosen whether it is chosen
     */
    public record Choice(String word, String label, String about, boolean chosen) {}

    /**
     * A file to take away.
     *
     * @param word its word in the address
     * @param name what the file is called
     * @param label what it is
     * @param about more of it
     * @param problem why it cannot be made; else empty
     */
    public record File(String word, String name, String label, String about, String problem) {}

    static PrintView of(Visit visit) {
        Printing printing = new Printing(visit.workings());
        PrintChoices choices = printing.choices();
        Outcome<FullSizePrint> print = printing.pieces();
        Outcome<PagesView> sheet = choices.strips()
                ? PagesView.ofStrips(printing, visit.asked("page"))
                : PagesView.ofPieces(print, choices, visit.asked("page"));
        return new PrintView(
                papers(choices),
                choices.strips(),
                choices.roll(),
                lines(choices.lines()),
                choices.label(),
                choices.problem(),
                choices.paperWrong(),
                sheet,
                cautions(printing),
                files(printing, print, visit),
                choices.worn(),
                visit.workings()
                        .taken()
                        .value()
                        .filter(taken -> taken.kind() == GarmentKind.TROUSERS)
                        .map(taken -> QuestionRow.trouserHem(visit.project())));
    }

    private static List<Choice> papers(PrintChoices choices) {
        List<Choice> all = new ArrayList<>();
        all.add(paper("a4", "A4", "210 × 297 mm", choices));
        all.add(paper("letter", "US Letter", "8 1/2 × 11 in", choices));
        all.add(paper("a3", "A3", "297 × 420 mm", choices));
        all.add(paper("a0", "A0", "841 × 1189 mm, from a copy shop", choices));
        all.add(paper("roll", "Off a roll", "one long sheet, from a plotter", choices));
        return all;
    }

    private static Choice paper(String word, String label, String about, PrintChoices choices) {
        return new Choice(word, label, about, word.equals(choices.paper()));
    }

    private static List<Choice> lines(Set<PrintedLine> chosen) {
        return Arrays.stream(PrintedLine.values())
                .map(line -> new Choice(
                        line.name().toLowerCase(Locale.ROOT), label(line), about(line), chosen.contains(line)))
                .toList();
    }

    private static String label(PrintedLine line) {
        return switch (line) {
            case STITCHING -> "Stitching lines";
            case CUTTING -> "Cutting lines";
            case ORIGINAL -> "The pattern as it was";
            case ALTERED -> "The pattern as altered";
        };
    }

    private static String about(PrintedLine line) {
        return switch (line) {
            case STITCHING -> "broken: where it is sewn";
            case CUTTING -> "solid: with the seam allowances";
            case ORIGINAL -> "fine and grey, where it differs";
            case ALTERED -> "what you cut";
        };
    }

    private static List<String> cautions(Printing printing) {
        List<String> all = new ArrayList<>();
        printing.fit().value().ifPresent(fit -> {
            if (fit.schematic()) {
                all.add(
                        "You have a paper pattern: the pieces here only show the steps, do not cut them. Print the step sheet"
                                + " and the chart, and alter your own tissue by them.");
            }
            if (!fit.report().holds()) {
                all.add("Not every proof holds: page one of the print says which. Do not cut yet; see the Chart.");
            }
        });
        return all;
    }

    private static List<File> files(Printing printing, Outcome<FullSizePrint> print, Visit visit) {
        return Arrays.stream(Leaf.values())
                .map(leaf -> new File(
                        leaf.word(),
                        leaf.fileName(visit.project().name(), printing.choices().paper()),
                        leaf.label(),
                        leaf.about(),
                        problem(leaf, printing, print)))
                .toList();
    }

    private static String problem(Leaf leaf, Printing printing, Outcome<FullSizePrint> print) {
        if (leaf == Leaf.PRINT) {
            return print.isThere() ? "" : print.sentence();
        }
        if (!printing.fit().isThere()) {
            return printing.fit().sentence();
        }
        return leaf == Leaf.STRIPS ? printing.choices().problem() : "";
    }

    /**
     * Whether it is printed off a roll.
     *
     * @return true if its width matters
     */
    public boolean isRoll() {
        return papers.stream().anyMatch(paper -> paper.chosen() && paper.word().equals("roll"));
    }

    /**
     * Whether no file can be made.
     *
     * @return true before there is a pattern, and where the pieces cannot take the plan
     */
    public boolean isNothingToTake() {
        return files.stream().noneMatch(file -> file.problem().isEmpty());
    }

    /**
     * Whether there is a report that could say that the garment was worn.
     *
     * @return true if there is a fit
     */
    public boolean isFitted() {
        return files.stream()
                .anyMatch(file ->
                        file.word().equals(Leaf.REPORT.word()) && file.problem().isEmpty());
    }
}
