package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.geometry.PathPlace;
import trueseam.intake.said.MarkSaid;

/** Darts of legs that are drawn inside and end on an edge. */
final class DartMaking {

    /** A dart has a mouth. */
    private static final double LEAST_MOUTH_MM = 3;

    /** Its tip lies away from the edge that it is sewn into. */
    private static final double LEAST_DEPTH_MM = 25;

    private DartMaking() {}

    /** The darts; their legs are taken out of the lines. Legs end so near to an edge as its reach says. */
    static List<Dart.EdgeDart> of(InnerLines lines, List<Edge> edges, ToDoubleFunction<Edge> reachMm, SaidMarks said) {
        List<Dart.EdgeDart> darts = new ArrayList<>();
        for (Legs legs : Legs.of(lines.all())) {
            for (Edge edge : edges) {
                PathPlace a = edge.path().nearest(legs.from());
                PathPlace b = edge.path().nearest(legs.to());
                double reach = reachMm.applyAsDouble(edge);
                boolean on = a.point().isNear(legs.from(), reach) && b.point().isNear(legs.to(), reach);
                double from = Math.min(a.alongMm(), b.alongMm());
                double to = Math.max(a.alongMm(), b.alongMm());
                if (on
                        && to - from > LEAST_MOUTH_MM
                        && to - from < edge.length()
                        && edge.path().nearest(legs.apex()).point().distanceTo(legs.apex()) > LEAST_DEPTH_MM
                        && darts.stream()
                                .noneMatch(d -> d.edge().equals(edge.name()) && from < d.toMm() && d.fromMm() < to)
                        && said.takes(MarkSaid.What.DART, edge, legs.apex(), legs.confidence())) {
                    String usual = edge.role().word() + " dart";
                    long before = darts.stream()
                            .filter(d -> d.name().startsWith(usual))
                            .count();
                    String name = usual + (before == 0 ? "" : " " + (before + 1));
                    darts.add(new Dart.EdgeDart(name, edge.name(), from, to, legs.apex()));
                    legs.lines().forEach(lines::use);
                    break;
                }
            }
        }
        return darts;
    }
}
