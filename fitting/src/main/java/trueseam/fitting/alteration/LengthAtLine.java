package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/**
 * Length of every piece that crosses a line: bodice and dress below the bust, skirt and dress below the hip, trousers above and
 * below the knee and across the hip for the crotch depth, sleeve above and below the elbow. The full amount on each piece
 * (common practice).
 *
 * <p>Moves all below the line. Must stay: all above, and the shape of all that slides. Trued: the edges that cross the line.
 *
 * @param what what is lengthened, for the title
 * @param line the line
 * @param on the kinds of pieces that take it
 * @param longerMm longer by so much, mm; minus for shorter
 */
public record LengthAtLine(String what, LevelName line, Set<PieceKind> on, double longerMm) implements Alteration {

    private static final Set<EdgeRole> SEWN_FRONT_TO_BACK =
            Set.of(EdgeRole.SIDE, EdgeRole.INSEAM, EdgeRole.UNDERARM, EdgeRole.PANEL);

    /**
     * So much of a difference between front and back is left to the walking of the seams, which lets the shorter one down at its lower
     * end: a curve drawn fuller to hold it would wave for nothing. With what levels are left within (0.02 mm) still less than ends may be apart (0.5 mm).
     */
    private static final double WALKED_MM = 0.38;

    /** The same for seams inside the leg and under the arm, whose ends are not levels: 3 mm, what a seam is usually trued within [THR200]. */
    private static final double WALKED_INSIDE_MM = 3;

    // Immutable.
    public LengthAtLine {
        on = Set.copyOf(on);
    }

    @Override
    public String title() {
        return what + (longerMm > 0 ? ": lengthen" : ": shorten") + " at the " + lineWord();
    }

    private String lineWord() {
        return switch (line) {
            case BODICE_LENGTH -> "bodice line";
            case SKIRT_LENGTH -> "skirt line";
            case CROTCH_DEPTH -> "crotch depth line";
            case ABOVE_KNEE -> "line above the knee";
            case BELOW_KNEE -> "line below the knee";
            case ABOVE_ELBOW -> "line above the elbow";
            case BELOW_ELBOW -> "line below the elbow";
            case ACROSS, BUST, WAIST, HIP, CROTCH, KNEE, BICEP, ELBOW -> line.word() + " line";
        };
    }

    @Override
    public List<PieceWork> work(Pattern pattern) {
        List<PieceWork> work = new ArrayList<>();
        if (longerMm == 0) {
            return work;
        }
        List<SlideAtLine> slides = new ArrayList<>();
        Map<EdgeRole, Double> growth = new EnumMap<>(EdgeRole.class);
        for (Piece piece : pattern.pieces()) {
            if (on.contains(piece.kind())) {
                SlideAtLine slide = new SlideAtLine(piece, line, longerMm);
                slides.add(slide);
                for (SlideAtLine.Crossing crossing : slide.crossings()) {
                    // Front and back are sewn together here: all take the growth of the one that needs most, or nearly.
                    if (SEWN_FRONT_TO_BACK.contains(crossing.edge().role())) {
                        growth.merge(crossing.edge().role(), crossing.growthMm(), Math::max);
                    }
                }
            }
        }
        growth.replaceAll((role, most) -> most - (role == EdgeRole.SIDE ? WALKED_MM : WALKED_INSIDE_MM));
        for (SlideAtLine slide : slides) {
            work.add(new PieceWork(slide.pieceName(), slide.steps(growth)));
        }
        return work;
    }
}
