package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import trueseam.garment.pattern.Grain;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.apparel.ApparelPieces;
import trueseam.intake.apparel.OtherLine;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.drawing.Look;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.outline.RawPiece;

/** The pieces that the file itself names, in the one size that is wanted. */
final class ToldPieces {

    private static final Pattern ATTRIBUTE = Pattern.compile("[^:]{1,40}:.*");
    private static final Pattern KEPT = Pattern.compile("(?i)(annotation|category)\\s*:.*");
    /** No allowance is wider; a sew line farther in is another line. */
    private static final double WIDEST_MM = 150;

    private static final double LETTERS_MM = 5;
    private static final int BESIDE_PLACES = 200;

    private ToldPieces() {}

    /** Those of the wanted size and those that the file gives no size, the largest first. */
    static List<ApparelPiece> wanted(Drawing drawing, String size) {
        ApparelPieces all = drawing.apparel();
        List<String> sizes = all.sizes().stream().filter(s -> !s.isBlank()).toList();
        List<ApparelPiece> wanted = all.pieces();
        if (sizes.size() > 1) {
            Optional<String> meant =
                    sizes.stream().filter(s -> s.equalsIgnoreCase(size.strip())).findFirst();
            wanted = all.pieces().stream()
                    .filter(piece ->
                            piece.size().isBlank() || Optional.of(piece.size()).equals(meant))
                    .toList();
            if (meant.isEmpty()) {
                throw new DrawingException(
                        drawing.file(),
                        "",
                        "Its pieces are drawn in the sizes " + String.join(", ", sizes)
                                + (size.isBlank() ? "" : " and not in size " + size)
                                + "; say one of these as the size.");
            }
        }
        return wanted.stream()
                .sorted(Comparator.comparingDouble(
                                (ApparelPiece p) -> Math.abs(p.boundary().signedArea()))
                        .reversed())
                .toList();
    }

    /** The same as other readers give a piece, before anything is named; what the file says outright stays with the told piece. */
    static RawPiece raw(ApparelPiece piece) {
        List<Stroke> inside = new ArrayList<>();
        piece.internalLines().forEach(path -> inside.add(stroke(path, "8")));
        piece.sewing()
                .filter(line -> beside(line, piece.boundary()).mostMm() > WIDEST_MM)
                .ifPresent(line -> inside.add(stroke(line, "14")));
        piece.sewLines().forEach(path -> inside.add(stroke(path, "14")));
        piece.cutOuts().forEach(path -> inside.add(stroke(path, "11")));
        for (OtherLine other : piece.otherLines()) {
            inside.add(stroke(other.path(), other.layer()));
        }
        Bounds bounds = piece.boundary().bounds();
        List<Caption> captions = piece.texts().stream()
                .filter(text ->
                        !ATTRIBUTE.matcher(text).matches() || KEPT.matcher(text).matches())
                .map(text -> new Caption(text, bounds.centre(), LETTERS_MM, ""))
                .toList();
        return new RawPiece(
                piece.name(),
                stroke(piece.boundary(), "1"),
                piece.sewing().map(line -> beside(line, piece.boundary())).filter(b -> b.mostMm() <= WIDEST_MM),
                inside,
                captions);
    }

    private static Stroke stroke(Path path, String layer) {
        return new Stroke(path, Look.PLAIN, layer, "");
    }

    private static RawPiece.Beside beside(Path line, Path boundary) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int i = 0; i < BESIDE_PLACES; i++) {
            Point p = line.pointAt(i * line.length() / BESIDE_PLACES);
            double apart = boundary.nearest(p).point().distanceTo(p);
            least = Math.min(least, apart);
            most = Math.max(most, apart);
        }
        return new RawPiece.Beside(line, least, most);
    }

    /** Its grainline; up the sheet where the file has none, as its reader says. */
    static Grain grain(ApparelPiece piece) {
        return piece.grain().orElseGet(() -> {
            Bounds bounds = piece.boundary().bounds();
            double half = Math.max(10, bounds.height() / 4);
            Point middle = bounds.centre();
            return new Grain(new Point(middle.x(), middle.y() - half), new Point(middle.x(), middle.y() + half));
        });
    }

    static Path grainLine(ApparelPiece piece) {
        Grain grain = grain(piece);
        return Path.through(grain.from(), grain.to());
    }

    /** What is written for the maker, such as a material that the pattern file has no place for. */
    static Optional<String> remark(ApparelPiece piece) {
        return piece.material().isBlank()
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT, "Its material is written as \"%s\"; cut it of that.", piece.material()));
    }
}
