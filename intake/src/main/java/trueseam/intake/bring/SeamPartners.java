package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;

/**
 * Which edges are sewn together: those of one role, in front and back; a cap into its armhole; and of the seams between panels, gores,
 * yokes and pieces that are not known, those that walk to one length and to no other.
 */
final class SeamPartners {

    /** Edges that differ by more are told; a shoulder is often eased 1/2 in, a cap more (common practice). */
    private static final double TOLD_MM = 13;

    /** The usual ease of a cap, 1 to 2 in (common practice). */
    private static final double CAP_TOLD_MM = 60;

    /** Edges that walk to one length were drawn to be sewn together: copied lines differ by less. */
    private static final double WALK_MM = 1.5;

    /** A third edge this near in length makes it a guess which two are meant. */
    private static final double OTHER_MM = 4;

    /** Shorter edges are alike by chance. */
    private static final double SHORTEST_MM = 60;

    /** Seams between the parts of a garment, and edges of which nothing is known. */
    private static final Set<EdgeRole> BY_LENGTH = EnumSet.of(EdgeRole.PANEL, EdgeRole.YOKE, EdgeRole.OTHER);

    private final List<Piece> pieces;
    private final List<Finding> findings;
    private final List<BroughtSeam> seams = new ArrayList<>();

    private SeamPartners(List<Piece> pieces, List<Finding> findings) {
        this.pieces = pieces;
        this.findings = findings;
    }

    static List<BroughtSeam> of(List<Piece> pieces, List<Finding> findings) {
        SeamPartners partners = new SeamPartners(pieces, findings);
        partners.both("shoulder", EdgeRole.SHOULDER);
        partners.both("side", EdgeRole.SIDE);
        partners.both("inseam", EdgeRole.INSEAM);
        partners.both("overarm", EdgeRole.OVERARM);
        partners.both("underarm", EdgeRole.UNDERARM);
        partners.sleeves();
        partners.byLength();
        return partners.seams;
    }

    private void both(String name, EdgeRole role) {
        Optional<EdgeRef> front = only(role, true);
        Optional<EdgeRef> back = only(role, false);
        if (front.isPresent() && back.isPresent()) {
            add(name, List.of(front.get()), List.of(back.get()), TOLD_MM, "the " + role.word() + " of front and back");
        }
    }

    /** The edge of the role on the front, or on the back, if just one piece has it. */
    private Optional<EdgeRef> only(EdgeRole role, boolean front) {
        List<EdgeRef> found = new ArrayList<>();
        for (Piece piece : pieces) {
            boolean side = front ? piece.kind().isFront() : piece.kind().isBack();
            for (Edge edge : piece.edges()) {
                if (side && edge.role() == role) {
                    found.add(new EdgeRef(piece.name(), edge.name()));
                }
            }
        }
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private void sleeves() {
        List<Piece> sleeves = pieces.stream().filter(p -> p.kind().isSleeve()).toList();
        if (sleeves.size() != 1) {
            return;
        }
        Piece sleeve = sleeves.get(0);
        List<Edge> under = sleeve.edges().stream()
                .filter(e -> e.role() == EdgeRole.UNDERARM)
                .toList();
        if (under.size() == 2) {
            add(
                    "underarm",
                    List.of(ref(sleeve, under.get(0))),
                    List.of(ref(sleeve, under.get(1))),
                    TOLD_MM,
                    "the two edges under the arm");
        }
        raglan(sleeve, true);
        raglan(sleeve, false);
        List<Edge> caps =
                sleeve.edges().stream().filter(e -> e.role() == EdgeRole.CAP).toList();
        Optional<EdgeRef> front = only(EdgeRole.ARMHOLE, true);
        Optional<EdgeRef> back = only(EdgeRole.ARMHOLE, false);
        if (caps.size() == 2 && front.isPresent() && back.isPresent()) {
            Edge ofFront = caps.get(0).name().contains("front") ? caps.get(0) : caps.get(1);
            Edge ofBack = ofFront.equals(caps.get(0)) ? caps.get(1) : caps.get(0);
            add(
                    "armhole",
                    List.of(back.get(), front.get()),
                    List.of(ref(sleeve, ofBack), ref(sleeve, ofFront)),
                    CAP_TOLD_MM,
                    "the cap and the armhole that it is sewn into");
        }
    }

    private void raglan(Piece sleeve, boolean front) {
        String side = front ? "front" : "back";
        Optional<EdgeRef> piece = only(EdgeRole.RAGLAN, front);
        for (Edge edge : sleeve.edgesOf(EdgeRole.RAGLAN)) {
            if (piece.isPresent() && edge.name().contains(side)) {
                add(
                        "raglan " + side,
                        List.of(piece.get()),
                        List.of(ref(sleeve, edge)),
                        TOLD_MM,
                        "the raglan seams of " + side + " and sleeve");
            }
        }
    }

    private static EdgeRef ref(Piece piece, Edge edge) {
        return new EdgeRef(piece.name(), edge.name());
    }

    private record Open(Piece piece, Edge edge, double mm) {

        EdgeRef ref() {
            return SeamPartners.ref(piece, edge);
        }

        double off(Open other) {
            return Math.abs(mm - other.mm);
        }
    }

    /** Two edges of one role on two pieces that walk to one length, and nothing else does. */
    private void byLength() {
        Set<EdgeRef> taken = new HashSet<>();
        seams.forEach(s -> {
            taken.addAll(s.seam().value().first());
            taken.addAll(s.seam().value().second());
        });
        List<Open> open = new ArrayList<>();
        for (Piece piece : pieces) {
            for (Edge edge : piece.edges()) {
                double mm = piece.sewnLength(edge.name());
                boolean free = !taken.contains(ref(piece, edge))
                        && !piece.fold().equals(Optional.of(edge.name()))
                        && !piece.kind().isFollower();
                if (free && BY_LENGTH.contains(edge.role()) && mm >= SHORTEST_MM) {
                    open.add(new Open(piece, edge, mm));
                }
            }
        }
        for (int i = 0; i < open.size(); i++) {
            Open one = open.get(i);
            Optional<Open> other = partner(one, open);
            if (other.isPresent()
                    && open.indexOf(other.get()) > i
                    && partner(other.get(), open).equals(Optional.of(one))) {
                boolean known = one.edge().role() != EdgeRole.OTHER;
                Seam seam = new Seam(
                        free(known ? one.edge().name() : "seam"),
                        List.of(one.ref()),
                        List.of(other.get().ref()),
                        other.get().mm() - one.mm());
                seams.add(new BroughtSeam(
                        Sure.proposed(seam, known ? 0.8 : 0.4),
                        one.mm(),
                        other.get().mm(),
                        "both walk to one length, and nothing else does"));
            }
        }
    }

    private String free(String name) {
        long like = seams.stream()
                .filter(s -> s.seam().value().name().matches(java.util.regex.Pattern.quote(name) + "( \\d+)?"))
                .count();
        return like == 0 ? name : name + " " + (like + 1);
    }

    private static Optional<Open> partner(Open one, List<Open> open) {
        List<Open> near = open.stream()
                .filter(o -> !o.piece().equals(one.piece())
                        && o.edge().role() == one.edge().role()
                        && o.off(one) < OTHER_MM)
                .sorted(Comparator.comparingDouble(o -> o.off(one)))
                .toList();
        return near.size() == 1 && near.get(0).off(one) <= WALK_MM ? Optional.of(near.get(0)) : Optional.empty();
    }

    /** How sure: sides that differ by what is told at the most are half as sure as sides that walk (our own scale). */
    private void add(String name, List<EdgeRef> first, List<EdgeRef> second, double toldMm, String reason) {
        double one = length(first, pieces);
        double other = length(second, pieces);
        double ease = other - one;
        double sure = 0.97 * Math.pow(0.5, Math.max(0, Math.abs(ease) / toldMm - (toldMm > TOLD_MM ? 1 : 0)));
        seams.add(new BroughtSeam(Sure.proposed(new Seam(name, first, second, ease), sure), one, other, reason));
        if (Math.abs(ease) > toldMm) {
            findings.add(Finding.warning(
                    name + " seam",
                    String.format(
                            Locale.ROOT,
                            "%s and %s are sewn together and differ by %.1f mm; see whether they are partners.",
                            first,
                            second,
                            Math.abs(ease))));
        }
    }

    /** The sewn length of a chain of edges, mm. */
    static double length(List<EdgeRef> side, List<Piece> pieces) {
        double mm = 0;
        for (EdgeRef ref : side) {
            for (Piece piece : pieces) {
                if (piece.name().equals(ref.piece())) {
                    mm += piece.sewnLength(ref.edge());
                }
            }
        }
        return mm;
    }
}
