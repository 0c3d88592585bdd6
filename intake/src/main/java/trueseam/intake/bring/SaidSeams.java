package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.intake.said.Corrections;
import trueseam.intake.said.SeamSaid;

/** The seams that are proposed, with those that somebody said in their place. */
final class SaidSeams {

    private SaidSeams() {}

    /** Of an edge that somebody sewed to another one, what was proposed falls away. */
    static List<BroughtSeam> of(
            List<BroughtSeam> proposed, Corrections said, List<Piece> pieces, List<Finding> findings) {
        List<BroughtSeam> seams = new ArrayList<>(proposed);
        for (SeamSaid one : said.seams()) {
            List<EdgeRef> lost =
                    refs(one).stream().filter(r -> !isThere(r, pieces)).toList();
            if (!lost.isEmpty()) {
                findings.add(Finding.warning(
                        one.name().isEmpty() ? "a seam" : one.name() + " seam",
                        "What is said about it does not fit the drawing any more: there is no edge " + lost.get(0)
                                + "; it is not used."));
                continue;
            }
            Set<EdgeRef> refs = refs(one);
            seams.removeIf(s -> one.sewn()
                    ? refs(s.asSaid()).stream().anyMatch(refs::contains)
                    : s.asSaid().isSameEdges(one));
            if (one.sewn()) {
                seams.add(sewn(one, pieces, findings));
            }
        }
        return seams;
    }

    private static BroughtSeam sewn(SeamSaid one, List<Piece> pieces, List<Finding> findings) {
        Seam seam = new Seam(one.name(), one.first(), one.second(), one.easeMm().orElse(0));
        double first = SeamPartners.length(one.first(), pieces);
        double second = SeamPartners.length(one.second(), pieces);
        double off = second - first - seam.easeMm();
        if (Math.abs(off) > 0.1) {
            findings.add(Finding.warning(
                    seam.name() + " seam",
                    String.format(
                            Locale.ROOT,
                            "Its sides are %.1f and %.1f mm long and are said to be sewn with %.1f mm of ease: they do not"
                                    + " walk by %.1f mm.",
                            first,
                            second,
                            seam.easeMm(),
                            Math.abs(off))));
        }
        return new BroughtSeam(Sure.said(seam), first, second, "said");
    }

    private static Set<EdgeRef> refs(SeamSaid seam) {
        Set<EdgeRef> all = new HashSet<>(seam.first());
        all.addAll(seam.second());
        return all;
    }

    private static boolean isThere(EdgeRef ref, List<Piece> pieces) {
        return pieces.stream().filter(p -> p.name().equals(ref.piece())).anyMatch(p -> p.edges().stream()
                .anyMatch(e -> e.name().equals(ref.edge())));
    }
}
