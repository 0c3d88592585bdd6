package trueseam.garment.blend;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Notch;
import trueseam.geometry.Path;

/**
 * An edge drawn across the nest.
 *
 * @param edge the edge
 * @param darts its darts
 * @param notches its notches
 */
record DrawnAcross(Edge edge, List<Dart.EdgeDart> darts, List<Notch> notches) {

    /** A dart or a notch at the end of a stretch belongs to it within this. */
    private static final double AT_END_MM = 1e-3;

    /** No stretch is shorter. */
    private static final double SLIVER_MM = 1e-7;

    static DrawnAcross of(Along along) {
        Drawing drawing = new Drawing(along);
        for (int i = 0; i < along.stops().size(); i++) {
            Along.Stop stop = along.stops().get(i);
            Along.Span own = stop.spans().get(stop.size());
            drawing.keep(stop.size(), own.from(), own.to());
            if (i + 1 < along.stops().size()) {
                drawing.over(stop, along.stops().get(i + 1));
            }
        }
        return drawing.done();
    }

    /** A dart and a notch on the way, from the upper end. */
    private record DartAt(Dart.EdgeDart dart, double fromMm, double toMm) {}

    private record NotchAt(Notch notch, double atMm) {}

    private static final class Drawing {

        private final Along along;
        private final List<DartAt> darts = new ArrayList<>();
        private final List<NotchAt> notches = new ArrayList<>();
        private Path drawn;

        Drawing(Along along) {
            this.along = along;
        }

        private double length() {
            return drawn == null ? 0 : drawn.length();
        }

        private void add(Path path) {
            drawn = drawn == null ? path : drawn.then(path);
        }

        /** A stretch of a size's own line, with what rides on it. */
        void keep(String size, double from, double to) {
            if (to - from < SLIVER_MM) {
                return;
            }
            Along.OneSize one = along.bySize().get(size);
            double shift = length() - from;
            for (Dart.EdgeDart dart : one.piece().dartsOn(along.name())) {
                Along.Span mouth = one.span(dart, along.down());
                if (from - AT_END_MM <= mouth.from() && mouth.to() <= to + AT_END_MM) {
                    darts.add(new DartAt(dart, mouth.from() + shift, mouth.to() + shift));
                }
            }
            for (Notch notch : one.piece().notches()) {
                double at = place(notch, one);
                if (notch.edge().equals(along.name()) && from <= at && at < to) {
                    notches.add(new NotchAt(notch, at + shift));
                }
            }
            add(one.path().part(from, to));
        }

        private double place(Notch notch, Along.OneSize one) {
            return along.down() ? notch.atMm() : one.path().length() - notch.atMm();
        }

        /** From one stop to the next: the one size's line, or over to the other's. */
        void over(Along.Stop stop, Along.Stop next) {
            Along.OneSize upper = along.bySize().get(stop.size());
            Along.OneSize lower = along.bySize().get(next.size());
            double from = stop.spans().get(stop.size()).to();
            double to = next.spans().get(stop.size()).from();
            if (stop.size().equals(next.size())) {
                keep(stop.size(), from, to);
                return;
            }
            Path above = upper.path().part(from, to);
            Path below = lower.path()
                    .part(
                            stop.spans().get(next.size()).to(),
                            next.spans().get(next.size()).from());
            Path across = Crossover.of(above, below);
            for (Notch notch : upper.piece().notches()) {
                double at = place(notch, upper);
                if (notch.edge().equals(along.name()) && from <= at && at < to) {
                    notches.add(new NotchAt(notch, length() + (at - from) / above.length() * across.length()));
                }
            }
            add(across);
        }

        DrawnAcross done() {
            double whole = drawn.length();
            Path path = along.down() ? drawn : drawn.reversed();
            Edge like = along.bySize().get(along.stops().get(0).size()).edge();
            List<Dart.EdgeDart> ridingDarts = darts.stream()
                    .map(d -> new Dart.EdgeDart(
                            d.dart.name(),
                            along.name(),
                            along.down() ? d.fromMm : whole - d.toMm,
                            along.down() ? d.toMm : whole - d.fromMm,
                            d.dart.apex()))
                    .toList();
            List<Notch> ridingNotches = notches.stream()
                    .map(n -> new Notch(
                            along.name(),
                            Math.min(whole, Math.max(0, along.down() ? n.atMm : whole - n.atMm)),
                            n.notch.kind()))
                    .toList();
            return new DrawnAcross(like.withPath(path), ridingDarts, ridingNotches);
        }
    }
}
