package trueseam.fitting.repertoire;

import java.util.List;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.alteration.LengthAtLine;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Vec;

/** Length of a skirt: at its line below the hip, at the hem, or half at either. */
final class SkirtLength {

    /** How much of a seam is carried down with the hem: its direction there is the direction it is lengthened in. */
    private static final double LOWER_END_MM = 40;

    /** How much of the hem beside a corner is drawn new. */
    private static final double CORNER_MM = 40;

    static final Entry ENTRY = Entry.named("skirt length", Family.SKIRT, Stage.LENGTH, Gore.SKIRTS)
            .solvedFor(Measure.SKIRT_LENGTH)
            .folds("the hem hangs too high or too low all round")
            .amount("lengthens", "shortens")
            .moves("all below the line, or the hem")
            .sharing("the full amount on every piece; of 4 or 5 in half at the line and half at the hem")
            .pin("line 6 in below the hip line; or the hem")
            .stays(Stay.all(EdgeRole.WAIST))
            .alsoStays("waist and hip; the flare where it is lengthened at the line")
            .trued("the sides are joined over the line; the hem at the side")
            .source("ND1921: gored skirts 6 in below the hip line, straight and circular ones at the hem")
            .amounts(50.8, 127)
            .variant("line", "gored and shaped skirts, so that the hem keeps its sweep [ND1921]", atLine())
            .variant("hem", "straight and circular skirts [ND1921]", atHem())
            .variant(
                    "half and half",
                    "for 4 or 5 in: half at the line and half at the hem [ND1921]",
                    Maker.inTurn(atLine().timesAmount(0.5), atHem().timesAmount(0.5)))
            .written();

    private SkirtLength() {}

    private static Maker atLine() {
        return (pattern, mm) -> new LengthAtLine("Skirt length", LevelName.SKIRT_LENGTH, Gore.SKIRTS, mm).work(pattern);
    }

    private static Maker atHem() {
        return Maker.each(Gore.SKIRTS, SkirtLength::lowerHem);
    }

    /** The hem slides down; each seam that meets it is lengthened in its own direction. */
    static void lowerHem(StepList list, Piece piece, double mm) {
        Edge hem = piece.only(EdgeRole.HEM);
        double reach = Math.min(CORNER_MM, hem.length() / 3);
        list.add(new Step.Slide(0, -mm));
        list.trace(hem.name(), reach, hem.length() - reach);
        list.join(hem.name(), 0, reach, JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
        list.join(
                hem.name(), hem.length() - reach, hem.length(), JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
        for (EdgeRole role : List.of(EdgeRole.SIDE, EdgeRole.CENTRE, EdgeRole.PANEL)) {
            for (Edge seam : piece.edgesOf(role)) {
                lengthen(list, new SeamLine(piece, seam), mm);
            }
        }
    }

    private static void lengthen(StepList list, SeamLine seam, double mm) {
        double end = Math.min(LOWER_END_MM, seam.edge.length() / 4);
        if (end - mm > seam.edge.length() / 2) {
            throw new AlterationException(
                    seam.piece.name(),
                    "hem",
                    mm,
                    "more than half of the skirt would go; cut it at a shorter hem line.");
        }
        Place above = seam.aboveBottom(end, seam.edge.name() + " above the hem");
        Place rest = seam.aboveBottom(end + Math.max(0, -mm), seam.edge.name() + " above the new hem");
        Vec slant = seam.edge.path().tangentAt(above.alongMm());
        list.add(new Step.LayBack());
        list.add(new Step.Slide(-mm * slant.x() / slant.y(), -mm));
        list.trace(seam.bottom(""), above);
        list.join(above, rest, JoinForm.STRAIGHT);
    }
}
