package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/**
 * Length of the cap seam of a sleeve of two pieces, front and back by their own amounts: what {@link CapLength} does at the underarm of
 * a sleeve of one piece.
 *
 * <p>All above the upper arm level goes down with the armhole, on both pieces alike, but for the crown: so the under sleeve keeps its
 * whole cap and is only set lower, and the upper sleeve takes the length where the ease lies, between its notches and the crown. Must
 * stay: the girth of the sleeve, its length from the crown, the ends of the two seams, which are slid alike on both pieces. Drawn new:
 * the seams below the upper arm level; the upper cap between notches and crown.
 *
 * @param frontMm the front of the cap longer by so much, mm; minus for shorter
 * @param backMm the back of the cap longer by so much, mm; minus for shorter
 */
public record PartedCapLength(double frontMm, double backMm) implements Alteration {

    /** How much of a seam below the upper arm level is drawn new, at the least. */
    private static final double SEAM_BLEND_MM = 60;

    private static final double SAME_PLACE_MM = 1e-6;

    @Override
    public String title() {
        return "Cap of a sleeve of two pieces: " + (frontMm + backMm < 0 ? "shorter" : "longer");
    }

    /**
     * The work on every sleeve of two pieces.
     *
     * @param pattern the pattern
     * @return upper sleeve and under sleeve
     * @throws AlterationException if the cap cannot follow so far
     */
    @Override
    public List<PieceWork> work(Pattern pattern) {
        List<PieceWork> work = new ArrayList<>();
        for (Piece upper : pattern.pieces()) {
            if (upper.kind() == PieceKind.UPPER_SLEEVE && (frontMm != 0 || backMm != 0)) {
                List<SleeveHalf> halves = halves(upper);
                double right = halves.get(0).isBack() ? backMm : frontMm;
                double left = halves.get(0).isBack() ? frontMm : backMm;
                CapReach reach = CapReach.of(halves, right, left);
                work.add(upper(upper, halves, reach, right, left));
                for (Piece under : pattern.pieces()) {
                    if (under.kind() == PieceKind.UNDER_SLEEVE
                            && suffix(under, "under").equals(suffix(upper, "upper"))) {
                        work.add(under(under, reach.deeperMm()));
                    }
                }
            }
        }
        return work;
    }

    /** What stands in a piece's name beside its word, such as the side that it is for. */
    private static String suffix(Piece piece, String word) {
        return piece.name().replace(word, "");
    }

    private static PieceWork upper(
            Piece piece, List<SleeveHalf> halves, CapReach reach, double rightMm, double leftMm) {
        StepList list = new StepList(piece);
        list.add(new Step.Slide(0, -reach.deeperMm()));
        for (SleeveHalf half : halves) {
            double seam = half.capFromUnderarm(0);
            double notch = half.capFromUnderarm(half.lowerCapMm());
            list.trace(half.cap().name(), Math.min(seam, notch), Math.max(seam, notch));
            lower(list, half, reach.deeperMm());
        }
        remark(list, piece, reach.deeperMm());
        list.add(new Step.LayBack());
        CapLength.slideCrown(list, halves, reach.acrossMm(), 0);
        CapReach.draw(list, halves.get(0), rightMm);
        CapReach.draw(list, halves.get(1), leftMm);
        return new PieceWork(piece.name(), list.finished());
    }

    private static PieceWork under(Piece piece, double downMm) {
        StepList list = new StepList(piece);
        list.add(new Step.Slide(0, -downMm));
        Edge cap = piece.only(EdgeRole.CAP);
        list.trace(cap.name(), 0, cap.length());
        for (SleeveHalf half : halves(piece)) {
            lower(list, half, downMm);
        }
        remark(list, piece, downMm);
        return new PieceWork(piece.name(), list.finished());
    }

    /** The seam above the upper arm level goes down as it is drawn; below it is drawn smooth into where it was. */
    private static void lower(StepList list, SleeveHalf half, double downMm) {
        double top = half.seamBelowUnderarm(0);
        double arm = half.seamAt(LevelName.BICEP).orElse(top);
        double gap = Math.max(SEAM_BLEND_MM, 3 * Math.abs(downMm));
        double below = half.right() ? arm - gap : arm + gap;
        if (below < 0 || below > half.seam().length()) {
            throw new AlterationException(
                    half.piece().name(),
                    half.seam().name(),
                    downMm,
                    "the seam is too short to give so much to the cap; take the size whose armhole is nearer.");
        }
        if (Math.abs(top - arm) > SAME_PLACE_MM) {
            list.trace(half.seam().name(), Math.min(arm, top), Math.max(arm, top));
        }
        list.join(
                half.seam().name(),
                Math.min(below, arm),
                Math.max(below, arm),
                JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
    }

    private static void remark(StepList list, Piece piece, double downMm) {
        if (piece.level(LevelName.BICEP).isPresent()) {
            list.add(new Step.Remark(Step.Inside.LEVEL, LevelName.BICEP.word(), 0, -downMm));
        }
    }

    /** Right and left end of the cap with the seam there; the under sleeve has one cap edge for both. */
    private static List<SleeveHalf> halves(Piece piece) {
        List<SleeveHalf> right = new ArrayList<>();
        List<SleeveHalf> left = new ArrayList<>();
        for (Edge cap : piece.edgesOf(EdgeRole.CAP)) {
            for (Edge seam : piece.edgesOf(EdgeRole.PANEL)) {
                if (seam.path().end().isNear(cap.path().start(), SAME_PLACE_MM)) {
                    right.add(new SleeveHalf(piece, true, cap, seam));
                } else if (cap.path().end().isNear(seam.path().start(), SAME_PLACE_MM)) {
                    left.add(new SleeveHalf(piece, false, cap, seam));
                }
            }
        }
        if (right.size() != 1 || left.size() != 1) {
            throw new AlterationException(
                    piece.name(),
                    "cap",
                    0,
                    "a piece of a two-piece sleeve has a front seam and a back seam that end at its cap; name its edges so.");
        }
        return List.of(right.get(0), left.get(0));
    }
}
