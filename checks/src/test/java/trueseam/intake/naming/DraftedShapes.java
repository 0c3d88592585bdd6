package trueseam.intake.naming;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftException;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.size.SizeRow;
import trueseam.garment.size.SizeTable;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.intake.size.SizeTables;

/** What the pieces that are drafted here look like, in every size of every built-in table: the two tables that naming goes by. */
final class DraftedShapes {

    private final Map<String, List<List<EdgeShape>>> edges = new LinkedHashMap<>();
    private final Map<String, List<String>> names = new LinkedHashMap<>();
    private final Map<String, List<double[]>> whole = new LinkedHashMap<>();

    static List<Pattern> patterns() {
        List<Pattern> all = new ArrayList<>();
        for (SizeTable table : SizeTables.builtIn()) {
            for (SizeRow row : table.rows()) {
                for (Garment garment : Garment.values()) {
                    try {
                        all.add(garment.draft(DraftFigure.of(table, row.size()), Allowances.inches()));
                    } catch (DraftException e) {
                        // No such garment in this size; the survey of drafts says which and why.
                    }
                }
            }
        }
        return all;
    }

    DraftedShapes() {
        patterns().forEach(pattern -> pattern.pieces().forEach(this::look));
    }

    private void look(Piece piece) {
        List<Path> paths = new ArrayList<>();
        List<String> said = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            int last = paths.size() - 1;
            // A drawing has the cap in one stretch, and what runs on without a corner in a kimono.
            Optional<String> both = last < 0 ? Optional.empty() : oneStretch(piece, said.get(last), edge.role());
            if (both.isPresent()) {
                paths.set(last, paths.get(last).then(edge.path()));
                said.set(last, both.get());
            } else {
                paths.add(edge.path());
                said.add(edge.role().word() + "," + edge.name());
            }
        }
        Path all = paths.get(0);
        for (int i = 1; i < paths.size(); i++) {
            all = all.then(paths.get(i));
        }
        String kind = piece.kind().word();
        List<List<EdgeShape>> shapes = edges.computeIfAbsent(kind, k -> new ArrayList<>());
        names.putIfAbsent(kind, said);
        for (int i = 0; i < paths.size(); i++) {
            if (shapes.size() <= i) {
                shapes.add(new ArrayList<>());
            }
            shapes.get(i).add(EdgeShape.of(paths.get(i), all.length(), all.bounds()));
        }
        Bounds bounds = all.bounds();
        double darts =
                piece.darts().stream().filter(d -> d instanceof Dart.EdgeDart).count();
        whole.computeIfAbsent(kind, k -> new ArrayList<>())
                .add(new double[] {Math.log(bounds.width() / bounds.height()), Math.log(all.length()), darts});
    }

    private static Optional<String> oneStretch(Piece piece, String before, EdgeRole role) {
        if (role == EdgeRole.CAP && before.startsWith("cap,")) {
            return Optional.of("cap," + Parting.CAP);
        } else if (piece.kind().isKimono() && role == EdgeRole.UNDERARM && before.startsWith("side,")) {
            return Optional.of("side," + Parting.SIDE_AND_UNDERARM);
        } else if (piece.kind().isKimono() && role == EdgeRole.SHOULDER && before.startsWith("overarm,")) {
            return Optional.of("overarm," + Parting.OVERARM_AND_SHOULDER);
        }
        return Optional.empty();
    }

    String edgeTable() {
        StringBuilder text = new StringBuilder(
                "# source: mean and standard deviation over drafted pieces of every size of the"
                        + " built-in tables; the deviations are widened, because other people draw otherwise\n"
                        + "kind,role,name,chord,chord spread,bulge,bulge spread,share,share spread,across,across spread,up,up spread\n");
        edges.forEach((kind, shapes) -> {
            for (int i = 0; i < shapes.size(); i++) {
                List<EdgeShape> of = shapes.get(i);
                text.append(kind).append(',').append(names.get(kind).get(i));
                double[] chord =
                        round(of.stream().map(s -> Math.toDegrees(s.chordRad())).toList());
                text.append(String.format(Locale.ROOT, ",%.1f,%.1f", chord[0], 6 + chord[1]));
                add(text, of.stream().map(EdgeShape::bulge).toList(), 0.03);
                add(text, of.stream().map(EdgeShape::share).toList(), 0.025);
                add(text, of.stream().map(EdgeShape::across).toList(), 0.06);
                add(text, of.stream().map(EdgeShape::up).toList(), 0.04);
                text.append('\n');
            }
        });
        return text.toString();
    }

    String pieceTable() {
        StringBuilder text = new StringBuilder(
                "# source: as edge-shapes.csv; logarithms of width over height and of the"
                        + " outline's length in mm\nkind,aspect,aspect spread,around,around spread,darts,darts spread\n");
        whole.forEach((kind, of) -> {
            text.append(kind);
            add(text, of.stream().map(v -> v[0]).toList(), 0.1);
            add(text, of.stream().map(v -> v[1]).toList(), 0.12);
            double[] darts = mean(of.stream().map(v -> v[2]).toList());
            text.append(String.format(Locale.ROOT, ",%.2f,%.2f%n", darts[0], 0.5 + darts[1]));
        });
        return text.toString();
    }

    private static void add(StringBuilder text, List<Double> values, double widened) {
        double[] mean = mean(values);
        text.append(String.format(Locale.ROOT, ",%.3f,%.3f", mean[0], widened + mean[1]));
    }

    private static double[] mean(List<Double> values) {
        double mean = values.stream().mapToDouble(v -> v).average().orElseThrow();
        double square = values.stream()
                .mapToDouble(v -> (v - mean) * (v - mean))
                .average()
                .orElseThrow();
        return new double[] {mean, Math.sqrt(square)};
    }

    /** The mean direction, round the circle. */
    private static double[] round(List<Double> degrees) {
        double x =
                degrees.stream().mapToDouble(d -> Math.cos(Math.toRadians(d))).sum();
        double y =
                degrees.stream().mapToDouble(d -> Math.sin(Math.toRadians(d))).sum();
        double mean = Math.toDegrees(Math.atan2(y, x));
        double square = degrees.stream()
                .mapToDouble(d -> Math.pow(Math.IEEEremainder(d - mean, 360), 2))
                .average()
                .orElseThrow();
        return new double[] {mean, Math.sqrt(square)};
    }
}
