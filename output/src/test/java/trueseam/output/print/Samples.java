package trueseam.output.print;

import java.util.List;
import java.util.Set;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Shells;
import trueseam.fitting.alteration.HemChoice;
import trueseam.fitting.alteration.LengthAtLine;
import trueseam.fitting.alteration.SideGirth;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.PieceKind;
import trueseam.intake.size.SizeTables;

/** Patterns to print: drafted in misses' 14, altered for an invented person. */
public final class Samples {

    private static final DraftFigure FIGURE = DraftFigure.of(SizeTables.named("misses"), "14");

    private Samples() {}

    /** A bodice 50 mm wider at the bust, 30 mm at the waist, and 20 mm longer; its sleeve stays. */
    public static WorkedPattern bodice() {
        return WorkedPattern.altered(
                Shells.bodice(FIGURE, DraftEase.fitted()),
                List.of(
                        new SideGirth(50, 30, 0, HemChoice.CARRIED),
                        new LengthAtLine(
                                "bodice",
                                LevelName.BODICE_LENGTH,
                                Set.of(PieceKind.BODICE_FRONT, PieceKind.BODICE_BACK),
                                20)));
    }

    /** A skirt 30 mm wider at the waist, 40 mm at the hip, and 30 mm shorter. */
    public static WorkedPattern skirt() {
        return WorkedPattern.altered(
                Shells.skirt(FIGURE, DraftEase.fitted()),
                List.of(
                        new SideGirth(0, 30, 40, HemChoice.CARRIED),
                        new LengthAtLine(
                                "skirt",
                                LevelName.SKIRT_LENGTH,
                                Set.of(PieceKind.SKIRT_FRONT, PieceKind.SKIRT_BACK),
                                -30)));
    }

    /** A dress that nothing was done to. */
    public static WorkedPattern dress() {
        return WorkedPattern.of(Shells.dress(FIGURE, DraftEase.fitted()));
    }
}
