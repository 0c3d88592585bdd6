package trueseam.app.input;

import java.util.Locale;
import picocli.CommandLine.Option;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;
import trueseam.output.print.Paper;
import trueseam.output.sheet.SheetPaper;

/** {@code --paper}: what is printed on. */
public final class PaperOption {

    private static final String ROLL = "roll:";

    @Option(
            names = "--paper",
            paramLabel = "a4|letter|a3|a0|roll:WIDTH",
            description =
                    "What the full-size pattern is printed on: a4, letter, a3, a0, or one sheet of a width such as"
                            + " roll:36in (default: letter with inches, a4 otherwise).")
    private String paper;

    /** For the command line. */
    public PaperOption() {}

    /**
     * The paper of the full-size print.
     *
     * @param unit the user's unit
     * @return the paper
     * @throws InputException if there is no such paper
     */
    public Paper fullSize(LengthUnit unit) {
        String said = word(unit);
        if (said.startsWith(ROLL)) {
            return roll(Length.parse(said.substring(ROLL.length()), unit).mm());
        }
        return switch (said) {
            case "a4" -> Paper.A4;
            case "letter" -> Paper.LETTER;
            case "a3" -> Paper.A3;
            case "a0" -> Paper.A0;
            default ->
                throw new InputException("There is no paper \"" + paper
                        + "\"; choose a4, letter, a3, a0 or roll:WIDTH such as roll:36in.");
        };
    }

    private Paper roll(double mm) {
        if (!(Paper.Roll.NARROWEST_MM <= mm && mm <= Paper.Roll.WIDEST_MM)) {
            LengthFormat show = LengthFormat.millimetres();
            throw new InputException("There is no paper \"" + paper + "\"; a roll is "
                    + show.show(Paper.Roll.NARROWEST_MM) + " to " + show.show(Paper.Roll.WIDEST_MM) + " wide.");
        }
        return new Paper.Roll(mm);
    }

    /**
     * The paper of step sheets and charts.
     *
     * @param unit the user's unit
     * @return Letter where that was named or inches are used without a paper, else A4
     */
    public SheetPaper sheets(LengthUnit unit) {
        return word(unit).equals("letter") ? SheetPaper.LETTER : SheetPaper.A4;
    }

    private String word(LengthUnit unit) {
        if (paper == null) {
            return unit == LengthUnit.INCH ? "letter" : "a4";
        }
        return paper.strip().toLowerCase(Locale.ROOT);
    }
}
