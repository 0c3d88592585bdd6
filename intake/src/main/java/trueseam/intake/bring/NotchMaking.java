package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Notch;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.intake.said.MarkSaid;

/** Notches of cuts that are drawn or told at an edge: up to three side by side are one notch. One piece, one thread. */
final class NotchMaking {

    /** A notch is drawn as a short line on the stitching or the cutting line. */
    private static final double LONGEST_NOTCH_MM = 16;

    /** Notches side by side within this are one double or triple notch: they are cut 1/4 in apart (common practice). */
    private static final double ONE_NOTCH_MM = 12;

    /** Among more short lines than this none is a notch: it is hatching, or letters drawn as lines. */
    private static final int MOST_LINES = 2000;

    private static final int MOST_CUTS = 3;

    /** How sure a short line that touches the edge is a notch, and by how much less one that hardly does (our own scale). */
    private static final double SURE = 0.97;

    private static final double DOUBT = 0.4;

    /** What lies at a corner is no notch but the end of a line. */
    private static final double CORNER_MM = 1;

    private final List<Edge> edges;
    private final List<Cut> cuts = new ArrayList<>();

    private record Cut(Edge edge, double alongMm) {}

    NotchMaking(List<Edge> edges) {
        this.edges = edges;
    }

    /** Takes short open lines at an edge, so near as its reach says, out of the lines. */
    void drawn(InnerLines lines, ToDoubleFunction<Edge> reachMm, SaidMarks said) {
        List<Path> all = lines.all();
        long small =
                all.stream().filter(line -> line.length() <= LONGEST_NOTCH_MM).count();
        for (int i = 0; i < all.size() && small <= MOST_LINES; i++) {
            Path line = all.get(i);
            if (lines.isLeft(i) && line.length() <= LONGEST_NOTCH_MM && !line.isClosed()) {
                List<Point> places = List.of(line.start(), line.end(), line.pointAt(line.length() / 2));
                Optional<Near> near = near(places);
                if (near.filter(n -> n.apartMm <= reachMm.applyAsDouble(n.cut.edge)
                                && n.cut.alongMm > CORNER_MM
                                && n.cut.alongMm < n.cut.edge.length() - CORNER_MM
                                && said.takes(
                                        MarkSaid.What.NOTCH,
                                        n.cut.edge,
                                        places.get(2),
                                        SURE - DOUBT * n.apartMm / reachMm.applyAsDouble(n.cut.edge)))
                        .isPresent()) {
                    cuts.add(near.get().cut);
                    lines.use(i);
                }
            }
        }
    }

    /** A cut that the file tells, at the place of an edge that is nearest to it. */
    void told(Point at) {
        near(List.of(at)).ifPresent(near -> cuts.add(near.cut));
    }

    private record Near(Cut cut, double apartMm) {}

    private Optional<Near> near(List<Point> places) {
        Near best = null;
        for (Edge edge : edges) {
            for (Point p : places) {
                PathPlace place = edge.path().nearest(p);
                double apart = place.point().distanceTo(p);
                if (best == null || apart < best.apartMm) {
                    best = new Near(new Cut(edge, place.alongMm()), apart);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    List<Notch> notches() {
        cuts.sort(Comparator.comparing((Cut c) -> c.edge().name()).thenComparingDouble(Cut::alongMm));
        List<Notch> notches = new ArrayList<>();
        int i = 0;
        while (i < cuts.size()) {
            int j = i + 1;
            while (j < cuts.size()
                    && j - i < MOST_CUTS
                    && cuts.get(j).edge().equals(cuts.get(i).edge())
                    && cuts.get(j).alongMm() - cuts.get(i).alongMm() <= ONE_NOTCH_MM) {
                j++;
            }
            double middle = (cuts.get(i).alongMm() + cuts.get(j - 1).alongMm()) / 2;
            notches.add(new Notch(cuts.get(i).edge().name(), middle, kind(j - i)));
            i = j;
        }
        return notches;
    }

    private static Notch.Kind kind(int cuts) {
        return switch (cuts) {
            case 1 -> Notch.Kind.SINGLE;
            case 2 -> Notch.Kind.DOUBLE;
            default -> Notch.Kind.TRIPLE;
        };
    }
}
