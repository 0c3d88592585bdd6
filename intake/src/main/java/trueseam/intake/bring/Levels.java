package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Level;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Point;
import trueseam.intake.naming.Proposal.NamedEdge;

/**
 * Where a piece is measured and altered, if nobody has said. Sources: hip line 7 in below the waist, length lines 2 1/2 in above the waist and
 * 6 in below the hip line (common practice; [DM1911], [ND1921]); bust line 1 1/2 in below the underarm, knee 2 in above the middle of the
 * inner leg, elbow 1/2 in above the middle of the underarm seam (from memory).
 */
final class Levels {

    private static final double IN = 25.4;

    private Levels() {}

    /** Where pieces of the kind have their origin: on the centre at the waist; at the underarm of a sleeve; at the crotch of a leg. */
    static Point origin(PieceKind kind, List<NamedEdge> edges) {
        if (kind == PieceKind.RAGLAN_SLEEVE) {
            double middle = end(edges, EdgeRole.WRIST, true)
                    .map(e -> (leftmost(edges, EdgeRole.WRIST) + e.x()) / 2)
                    .orElse(0.0);
            return new Point(middle, lowest(edges, EdgeRole.RAGLAN));
        }
        if (kind.isSleeve()) {
            Point crown = end(edges, EdgeRole.CAP, true).orElse(Point.ORIGIN);
            return new Point(crown.x(), lowest(edges, EdgeRole.CAP));
        }
        if (kind.isTrouser()) {
            double fork = lowest(edges, EdgeRole.CROTCH);
            double waist = leftmost(edges, EdgeRole.WAIST);
            return new Point(waist, fork);
        }
        double x = leftmost(
                edges, edges.stream().anyMatch(e -> e.role() == EdgeRole.CENTRE) ? EdgeRole.CENTRE : EdgeRole.WAIST);
        Optional<Point> waist = edges.stream()
                .filter(e -> e.role() == EdgeRole.WAIST)
                .flatMap(e -> List.of(e.path().start(), e.path().end()).stream())
                .min(java.util.Comparator.comparingDouble(Point::x));
        double y = waist.map(Point::y).orElseGet(() -> edges.stream()
                .mapToDouble(e -> e.path().bounds().minY())
                .min()
                .orElse(0));
        return new Point(x, y);
    }

    private static Optional<Point> end(List<NamedEdge> edges, EdgeRole role, boolean atEnd) {
        return edges.stream()
                .filter(e -> e.role() == role)
                .findFirst()
                .map(e -> atEnd ? e.path().end() : e.path().start());
    }

    private static double lowest(List<NamedEdge> edges, EdgeRole role) {
        return edges.stream()
                .filter(e -> e.role() == role)
                .mapToDouble(e -> e.path().bounds().minY())
                .min()
                .orElse(0);
    }

    private static double leftmost(List<NamedEdge> edges, EdgeRole role) {
        return edges.stream()
                .filter(e -> e.role() == role)
                .mapToDouble(e -> e.path().bounds().minX())
                .min()
                .orElse(0);
    }

    static List<Level> of(PieceKind kind, List<Edge> edges, List<Dart> darts) {
        List<Level> levels = new ArrayList<>();
        if (kind.isUpper()) {
            upper(kind, edges, darts, levels);
        } else if (kind.isSleeve()) {
            sleeve(edges, levels);
        } else if (kind.isTrouser()) {
            leg(edges, levels);
        } else if (kind.isSkirt()) {
            skirt(edges, levels);
        }
        return levels;
    }

    private static Optional<Edge> edge(List<Edge> edges, EdgeRole role) {
        return edges.stream().filter(e -> e.role() == role).findFirst();
    }

    private static void upper(PieceKind kind, List<Edge> edges, List<Dart> darts, List<Level> levels) {
        Optional<Edge> armhole = edge(edges, EdgeRole.ARMHOLE);
        armhole.ifPresent(a -> {
            double underarm = a.path().start().y();
            double shoulder = a.path().end().y();
            levels.add(new Level(LevelName.ACROSS, (underarm + shoulder) / 2));
            double bust = darts.stream()
                    .filter(d -> d instanceof Dart.EdgeDart e && e.edge().equals("side"))
                    .mapToDouble(d -> ((Dart.EdgeDart) d).apex().y())
                    .findFirst()
                    .orElse(underarm - 1.5 * IN);
            levels.add(new Level(LevelName.BUST, bust));
        });
        if (armhole.isEmpty()) {
            // A kimono or a raglan: the side ends under the arm all the same.
            edge(edges, EdgeRole.SIDE)
                    .ifPresent(side -> levels.add(
                            new Level(LevelName.BUST, side.path().bounds().maxY() - 0.5 * IN)));
        }
        if (kind.isDress()) {
            double waist = edge(edges, EdgeRole.SIDE).map(Levels::narrowest).orElse(0.0);
            levels.add(new Level(LevelName.WAIST, waist));
            levels.add(new Level(LevelName.BODICE_LENGTH, waist + 2.5 * IN));
            levels.add(new Level(LevelName.HIP, waist - 7 * IN));
            levels.add(new Level(LevelName.SKIRT_LENGTH, waist - 7.75 * IN));
        } else {
            levels.add(new Level(LevelName.WAIST, 0));
            levels.add(new Level(LevelName.BODICE_LENGTH, 2.5 * IN));
        }
    }

    /** The waist of a garment without a waist seam: where its side comes nearest to the centre. */
    private static double narrowest(Edge side) {
        double y = 0;
        double least = Double.POSITIVE_INFINITY;
        for (double mm = 0; mm <= side.length(); mm += 2) {
            Point p = side.path().pointAt(mm);
            if (p.x() < least) {
                least = p.x();
                y = p.y();
            }
        }
        return y;
    }

    private static void sleeve(List<Edge> edges, List<Level> levels) {
        double wrist =
                edge(edges, EdgeRole.WRIST).map(e -> e.path().bounds().minY()).orElse(-400.0);
        double elbow = wrist / 2 + 0.5 * IN;
        levels.add(new Level(LevelName.BICEP, 0));
        levels.add(new Level(LevelName.ABOVE_ELBOW, elbow / 2));
        levels.add(new Level(LevelName.ELBOW, elbow));
        levels.add(new Level(LevelName.BELOW_ELBOW, (elbow + wrist) / 2));
    }

    private static void leg(List<Edge> edges, List<Level> levels) {
        double waist =
                edge(edges, EdgeRole.WAIST).map(e -> e.path().bounds().minY()).orElse(230.0);
        double hem =
                edge(edges, EdgeRole.HEM).map(e -> e.path().bounds().minY()).orElse(-800.0);
        double knee = hem / 2 + 2 * IN;
        levels.add(new Level(LevelName.HIP, waist / 3));
        levels.add(new Level(LevelName.CROTCH_DEPTH, waist / 3 + IN));
        levels.add(new Level(LevelName.CROTCH, 0));
        levels.add(new Level(LevelName.ABOVE_KNEE, knee / 2));
        levels.add(new Level(LevelName.KNEE, knee));
        levels.add(new Level(LevelName.BELOW_KNEE, (knee + hem) / 2));
    }

    private static void skirt(List<Edge> edges, List<Level> levels) {
        double hem =
                edge(edges, EdgeRole.HEM).map(e -> e.path().bounds().minY()).orElse(-600.0);
        double hip = Math.max(-7 * IN, 0.4 * hem);
        levels.add(new Level(LevelName.HIP, hip));
        levels.add(new Level(LevelName.SKIRT_LENGTH, Math.max(hip - 6 * IN, (hip + hem) / 2)));
    }
}
