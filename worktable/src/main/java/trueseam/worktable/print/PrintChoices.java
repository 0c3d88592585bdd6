package trueseam.worktable.print;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthTextException;
import trueseam.garment.length.LengthUnit;
import trueseam.output.print.Paper;
import trueseam.output.print.PrintOptions;
import trueseam.output.print.PrintedLine;
import trueseam.output.sheet.SheetPaper;
import trueseam.worktable.project.PrintPart;
import trueseam.worktable.project.Project;

/**
 * What was chosen about printing, readable or not.
 *
 * @param strips whether only the strips to tape on are printed rather than whole pieces
 * @param paper the word of the paper: a4, letter, a3, a0 or roll
 * @param roll the width of the roll as it was typed
 * @param lines the lines that are printed
 * @param label what is printed for the person
 * @param worn whether the garment was worn, or its trial garment tried on, and found right; for the report
 * @param options how it is printed; empty where the choices do not go together
 * @param paperWrong whether it is the paper that cannot be read
 * @param problem why they do not; else empty
 */
record PrintChoices(
        boolean strips,
        String paper,
        String roll,
        Set<PrintedLine> lines,
        String label,
        boolean worn,
        Optional<PrintOptions> options,
        boolean paperWrong,
        String problem) {

    static final String STRIPS = "strips";
    static final String PAPER = "paper";
    static final String ROLL = "roll";
    static final String LINES = "lines";
    static final String LABEL = "label";
    static final String WORN = "worn";

    /** A usual width of plotter paper (common practice), in the user's own unit. */
    private static final String USUAL_ROLL_INCHES = "36 in";

    private static final String USUAL_ROLL_METRIC = "90 cm";

    static PrintChoices of(Project project) {
        PrintPart part = project.print();
        LengthFormat show = project.person().format();
        boolean inches = show.unit() == LengthUnit.INCH;
        String paper = part.choices().getOrDefault(PAPER, inches ? "letter" : "a4");
        String roll = part.choices().getOrDefault(ROLL, inches ? USUAL_ROLL_INCHES : USUAL_ROLL_METRIC);
        Set<PrintedLine> lines = lines(part.choices().get(LINES));
        String label = part.choices().getOrDefault(LABEL, project.person().label());
        boolean strips = part.choices().containsKey(STRIPS);
        boolean worn = part.choices().containsKey(WORN);
        PrintChoices asked = new PrintChoices(strips, paper, roll, lines, label, worn, Optional.empty(), false, "");
        Paper chosen;
        try {
            chosen = paper(paper, roll, project.person().bareUnit());
        } catch (IllegalArgumentException | LengthTextException e) {
            return asked.refused(true, e.getMessage());
        }
        try {
            PrintOptions options = new PrintOptions(chosen, PrintOptions.USUAL_OVERLAP_MM, lines, show, label);
            return new PrintChoices(strips, paper, roll, lines, label, worn, Optional.of(options), false, "");
        } catch (IllegalArgumentException e) {
            // The room's own sentence about lines that nobody could cut along.
            return asked.refused(false, e.getMessage());
        }
    }

    private static Paper paper(String word, String roll, LengthUnit bareUnit) {
        if (word.equals("roll")) {
            return new Paper.Roll(Length.parse(roll, bareUnit).mm());
        }
        return Paper.ofWord(word)
                .orElseThrow(() -> new IllegalArgumentException("There is no paper \"" + word + "\" here."));
    }

    private PrintChoices refused(boolean byPaper, String sentence) {
        return new PrintChoices(strips, paper, roll, lines, label, worn, Optional.empty(), byPaper, sentence);
    }

    private static Set<PrintedLine> lines(String kept) {
        Set<PrintedLine> lines = EnumSet.noneOf(PrintedLine.class);
        if (kept == null) {
            return EnumSet.allOf(PrintedLine.class);
        }
        for (String word : List.of(kept.split(","))) {
            for (PrintedLine line : PrintedLine.values()) {
                if (line.name().toLowerCase(Locale.ROOT).equals(word)) {
                    lines.add(line);
                }
            }
        }
        return lines;
    }

    /** The paper of step sheets, charts and strips. */
    SheetPaper sheets() {
        return paper.equals("letter") ? SheetPaper.LETTER : SheetPaper.A4;
    }
}
