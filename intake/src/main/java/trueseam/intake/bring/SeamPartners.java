package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;

/** Which edges are sewn together: those of one role, in front and back; a cap into its armhole. */
final class SeamPartners {

    /** Edges that differ by more are told; a shoulder is often eased 1/2 in, a cap more (common practice). */
    private static final double TOLD_MM = 13;

    private final List<Piece> pieces;
    private final List<Finding> findings;
    private final List<Seam> seams = new ArrayList<>();

    private SeamPartners(List<Piece> pieces, List<Finding> findings) {
        this.pieces = pieces;
        this.findings = findings;
    }

    static List<Seam> of(List<Piece> pieces, List<Finding> findings) {
        SeamPartners partners = new SeamPartners(pieces, findings);
        partners.both("shoulder", EdgeRole.SHOULDER);
        partners.both("side", EdgeRole.SIDE);
        partners.both("inseam", EdgeRole.INSEAM);
        partners.sleeves();
        return partners.seams;
    }

    private void both(String name, EdgeRole role) {
        Optional<EdgeRef> front = only(role, true);
        Optional<EdgeRef> back = only(role, false);
        if (front.isPresent() && back.isPresent()) {
            add(name, List.of(front.get()), List.of(back.get()), TOLD_MM);
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
            add("underarm", List.of(ref(sleeve, under.get(0))), List.of(ref(sleeve, under.get(1))), TOLD_MM);
        }
        List<Edge> caps =
                sleeve.edges().stream().filter(e -> e.role() == EdgeRole.CAP).toList();
        Optional<EdgeRef> front = only(EdgeRole.ARMHOLE, true);
        Optional<EdgeRef> back = only(EdgeRole.ARMHOLE, false);
        if (caps.size() == 2 && front.isPresent() && back.isPresent()) {
            Edge ofFront = caps.get(0).name().contains("front") ? caps.get(0) : caps.get(1);
            Edge ofBack = ofFront.equals(caps.get(0)) ? caps.get(1) : caps.get(0);
            add("armhole", List.of(back.get(), front.get()), List.of(ref(sleeve, ofBack), ref(sleeve, ofFront)), 60);
        }
    }

    private static EdgeRef ref(Piece piece, Edge edge) {
        return new EdgeRef(piece.name(), edge.name());
    }

    private void add(String name, List<EdgeRef> first, List<EdgeRef> second, double toldMm) {
        double ease = length(second) - length(first);
        seams.add(new Seam(name, first, second, ease));
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

    private double length(List<EdgeRef> side) {
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
