package trueseam.fitting.follow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trueseam.fitting.alteration.CapEnd;
import trueseam.fitting.alteration.CapLength;
import trueseam.fitting.alteration.PartedCapLength;
import trueseam.fitting.alteration.PieceWork;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;

/** Writes down what follows the edges that were altered on purpose. */
public final class Following {

    /** Less than this need not be followed: a hundredth of what the proof of the cap allows. */
    private static final double NOTHING_MM = 0.005;

    private Following() {}

    /**
     * The sleeves of armholes that were made longer or shorter: each half of the cap takes what its own armhole took. The underarm
     * points go down with the armhole and the sleeve keeps its length; of a sleeve of two pieces the under sleeve goes down whole.
     *
     * @param altered the pattern after all alterations
     * @param meant what was meant to change
     * @return the work on the pieces that follow; none where nothing was meant to change
     */
    public static List<PieceWork> work(Pattern altered, Meant meant) {
        List<PieceWork> work = new ArrayList<>();
        for (Seam seam : altered.seams()) {
            if (isArmhole(altered, seam)) {
                Map<Boolean, Double> longer = new HashMap<>();
                for (EdgeRef armhole : seam.first()) {
                    boolean back = altered.piece(armhole.piece()).kind().isBack();
                    longer.merge(back, meant.of(armhole), Double::sum);
                }
                double front = longer.getOrDefault(false, 0.0);
                double back = longer.getOrDefault(true, 0.0);
                if (Math.abs(front) > NOTHING_MM || Math.abs(back) > NOTHING_MM) {
                    Set<String> sleeve = new HashSet<>();
                    seam.second().forEach(ref -> sleeve.add(ref.piece()));
                    for (PieceWork one : cap(altered, sleeve, front, back)) {
                        if (sleeve.contains(one.piece())) {
                            work.add(one);
                        }
                    }
                }
            }
        }
        return work;
    }

    /**
     * The bands of what became longer or shorter, whether that was meant or came with something else: each takes the whole amount
     * at one end, a waistband and a collar at the centre back [ND1921].
     *
     * @param original the pattern before
     * @param trued the altered and trued pattern
     * @param easeMm by how much a band was asked to be longer than what it is sewn to, by seam, mm
     * @return the work on the bands; none where every band still fits
     */
    public static List<PieceWork> bands(Pattern original, Pattern trued, Map<String, Double> easeMm) {
        List<PieceWork> work = new ArrayList<>();
        for (Seam seam : original.seams()) {
            EdgeRef second = seam.second().get(0);
            Piece band = trued.piece(second.piece());
            double longer = original.mismatchMm(seam) + easeMm.getOrDefault(seam.name(), 0.0) - trued.mismatchMm(seam);
            if (isBand(original, seam) && Math.abs(longer) > NOTHING_MM) {
                work.add(longerBand(band, second.edge(), longer));
            }
        }
        return work;
    }

    /**
     * What is marked inside pieces and bands and goes by something else than the paper under it: buttonholes, pockets, the end of a
     * placket, belt carriers, the notch of a band where the shoulder or side seam meets it.
     *
     * @param original the pattern before
     * @param altered the pattern after, trued, its bands as long as their seams
     * @return the work on the marks; none where all are where they belong
     */
    public static List<PieceWork> marks(Pattern original, Pattern altered) {
        List<PieceWork> work = new ArrayList<>(SmallMarks.work(original, altered));
        work.addAll(BandMarks.work(original, altered));
        return work;
    }

    /**
     * One band longer or shorter at its end: of a waistband or a collar the centre back [ND1921].
     *
     * @param band the band
     * @param sewnEdge its edge that is sewn to something
     * @param mm longer by so much, mm; minus for shorter
     * @return the work on it
     */
    public static PieceWork longerBand(Piece band, String sewnEdge, double mm) {
        return new BandLength(band, sewnEdge).longer(mm);
    }

    /**
     * By how much bands were asked to be longer than what they are sewn to, so that they are eased or stretched on.
     *
     * @param original the pattern before
     * @param meant what was meant to change
     * @return mm by the name of the seam; none where every band shall fit as before
     */
    public static Map<String, Double> bandEase(Pattern original, Meant meant) {
        Map<String, Double> ease = new HashMap<>();
        for (Seam seam : original.seams()) {
            double mm = isBand(original, seam) ? meant.of(seam.second().get(0)) : 0;
            if (mm != 0) {
                ease.put(seam.name(), mm);
            }
        }
        return ease;
    }

    private static boolean isBand(Pattern pattern, Seam seam) {
        return seam.second().size() == 1
                && pattern.piece(seam.second().get(0).piece()).kind().isBand();
    }

    private static List<PieceWork> cap(Pattern pattern, Set<String> sleeve, double frontMm, double backMm) {
        boolean inParts =
                sleeve.stream().anyMatch(name -> pattern.piece(name).kind().isPart());
        return inParts
                ? new PartedCapLength(frontMm, backMm).work(pattern)
                : new CapLength(frontMm, backMm, CapEnd.UNDERARM).work(pattern);
    }

    private static boolean isArmhole(Pattern pattern, Seam seam) {
        EdgeRef first = seam.first().get(0);
        EdgeRef second = seam.second().get(0);
        return pattern.piece(first.piece()).edge(first.edge()).role() == EdgeRole.ARMHOLE
                && pattern.piece(second.piece()).edge(second.edge()).role() == EdgeRole.CAP;
    }
}
