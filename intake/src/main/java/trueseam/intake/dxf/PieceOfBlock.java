package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Grain;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.intake.apparel.ApparelNotch;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.apparel.GradePoint;

/** Reads one piece from its block. */
final class PieceOfBlock {

    /** A point marks the vertex that it lies so near to. */
    private static final double ON_VERTEX_MM = 0.1;

    /** Vertices so near are one. */
    private static final double ONE_VERTEX_MM = 1e-3;

    /** Without turn points a bend sharper than this is a corner: chords of a curve turn less. */
    private static final double CORNER_RAD = Math.toRadians(20);

    /** Sew lines have no turn points of their own. */
    private static final double SEWN_CORNER_RAD = Math.toRadians(8);

    /** A curve may leave its chords by so much where the file names no smaller tolerance: less than half of a pencil line. */
    static final double SMOOTH_MM = 0.1;

    private static final double NOTCH_OFF_MM = 2;
    private static final int MOST_STROKES = 10_000;
    private static final int MOST_NOTCHES = 1000;
    private static final Pattern RULE = Pattern.compile("#\\s*(\\d{1,6})");
    private static final Pattern COUNT = Pattern.compile("\\d{1,3}");

    private final String place;
    private final Block block;
    private final BlockContents contents;
    private final Notes notes;
    private final double smoothMm;

    /** A piece to be read; curves leave their chords by at most the last. */
    PieceOfBlock(String place, Block block, BlockContents contents, Notes notes, double smoothMm) {
        this.place = place;
        this.block = block;
        this.contents = contents;
        this.notes = notes;
        this.smoothMm = smoothMm;
    }

    ApparelPiece read() {
        Path drawn = boundary();
        SmoothOutline outline = smooth(drawn);
        List<Path> sewn = Chains.joined(contents.lines(ApparelLayer.SEW_LINE));
        Optional<Path> sewing = greatest(sewn);
        List<Path> sewLines =
                sewn.stream().filter(line -> !sewing.equals(Optional.of(line))).toList();
        Optional<String> sized = contents.said("Size");
        tellRest();
        return new ApparelPiece(
                block.name(),
                contents.said("Piece Name").orElse(sized.isPresent() ? block.name() : beforeSuffix()),
                sized.orElseGet(this::suffix),
                cutCount(),
                contents.said("Material").orElse(""),
                contents.said("Category").orElse(""),
                outline.path(),
                outline.corners(),
                cornersMarked(),
                sewing.map(line -> SmoothOutline.of(
                                anticlockwise(line), bend -> Math.abs(bend.turnRad()) > SEWN_CORNER_RAD, smoothMm)
                        .path()),
                sewLines,
                notches(outline.path()),
                grain(),
                first(ApparelLayer.MIRROR_LINE),
                contents.lines(ApparelLayer.INTERNAL),
                contents.lines(ApparelLayer.CUT_OUT),
                drillHoles(),
                contents.otherLines,
                first(ApparelLayer.GRADE_LINE),
                gradePoints(),
                contents.words.stream().map(Mark.Words::text).toList());
    }

    private Path boundary() {
        List<Path> all = Chains.joined(contents.lines(ApparelLayer.BOUNDARY));
        Optional<Path> greatest = greatest(all);
        if (greatest.isEmpty()) {
            Path longest =
                    all.stream().max(Comparator.comparingDouble(Path::length)).orElseThrow();
            throw new EntityException(String.format(
                    Locale.ROOT,
                    "its boundary is open between (%.1f, %.1f) and (%.1f, %.1f), a gap of %.1f mm; close it in the file",
                    longest.end().x(),
                    longest.end().y(),
                    longest.start().x(),
                    longest.start().y(),
                    longest.end().distanceTo(longest.start())));
        }
        if (all.size() > 1) {
            notes.say(Finding.warning(
                    place,
                    "layer 1 has " + all.size()
                            + " lines that do not meet; the closed one around the greatest area was taken for "
                            + "the boundary and the others were left out."));
        }
        int strokes = greatest.get().segments().size();
        if (strokes > MOST_STROKES) {
            throw new EntityException(
                    "its boundary has " + strokes + " strokes; at most " + MOST_STROKES + " are taken");
        }
        return anticlockwise(greatest.get());
    }

    private static Optional<Path> greatest(List<Path> lines) {
        return lines.stream()
                .filter(Path::isClosed)
                .filter(line -> Math.abs(line.signedArea()) > 0)
                .max(Comparator.comparingDouble(line -> Math.abs(line.signedArea())));
    }

    private static Path anticlockwise(Path line) {
        return line.signedArea() < 0 ? line.reversed() : line;
    }

    private boolean cornersMarked() {
        return !contents.spots(ApparelLayer.TURN_POINT).isEmpty()
                || !contents.spots(ApparelLayer.CURVE_POINT).isEmpty();
    }

    /** A turn point is one vertex, the nearest to it: beside a tight hollow others lie within a hair's breadth. */
    private static Predicate<SmoothOutline.Bend> onNearest(Path drawn, NearPoints turns) {
        Map<Point, Double> nearestMm = new HashMap<>();
        for (Segment s : drawn.segments()) {
            turns.nearest(s.start()).ifPresent(turn -> nearestMm.merge(turn, turn.distanceTo(s.start()), Math::min));
        }
        return bend -> turns.nearest(bend.at())
                .filter(turn -> turn.distanceTo(bend.at()) <= nearestMm.getOrDefault(turn, 0.0) + ONE_VERTEX_MM)
                .isPresent();
    }

    private SmoothOutline smooth(Path drawn) {
        NearPoints turns = NearPoints.of(contents.spots(ApparelLayer.TURN_POINT), ON_VERTEX_MM);
        boolean told = cornersMarked();
        Predicate<SmoothOutline.Bend> isCorner =
                told ? onNearest(drawn, turns) : bend -> Math.abs(bend.turnRad()) > CORNER_RAD;
        SmoothOutline outline = SmoothOutline.of(drawn, isCorner, smoothMm);
        if (!told) {
            notes.say(Finding.warning(
                    place,
                    String.format(
                            Locale.ROOT,
                            "it has neither turn points nor curve points; the %d bends of more than %.0f degrees were taken for its corners.",
                            outline.corners().size(),
                            Math.toDegrees(CORNER_RAD))));
        }
        if (outline.curved() > 0) {
            notes.say(Finding.note(
                    place,
                    String.format(
                            Locale.ROOT,
                            "%d chords between curve points were drawn as curves through the same points, at most %.3f mm off.",
                            outline.curved(),
                            outline.mostMm())));
        }
        if (outline.kept() > 0) {
            notes.say(Finding.note(
                    place,
                    String.format(
                            Locale.ROOT,
                            "%d bends between straight chords stay as drawn: a curve would leave the chords by more than %.2f mm.",
                            outline.kept(),
                            smoothMm)));
        }
        return outline;
    }

    private String suffix() {
        int at = block.name().lastIndexOf('_');
        return at < 0 ? "" : block.name().substring(at + 1).strip();
    }

    private String beforeSuffix() {
        int at = block.name().lastIndexOf('_');
        return at <= 0 ? block.name() : block.name().substring(0, at).strip();
    }

    private int cutCount() {
        Optional<String> said = contents.said("Quantity");
        int sum = 0;
        Matcher counts = COUNT.matcher(said.orElse(""));
        while (counts.find()) {
            sum += Integer.parseInt(counts.group());
        }
        if (sum < 1) {
            notes.say(Finding.note(place, "how many are cut is not said; 1 was taken."));
        }
        return Math.max(1, sum);
    }

    private List<ApparelNotch> notches(Path boundary) {
        List<ApparelNotch> all = new ArrayList<>();
        List<Mark.Spot> spots = contents.spots(ApparelLayer.NOTCH);
        List<Path> slits = contents.lines(ApparelLayer.NOTCH);
        if (spots.size() + slits.size() > MOST_NOTCHES) {
            throw new EntityException(
                    "it has " + (spots.size() + slits.size()) + " notches; at most " + MOST_NOTCHES + " are taken");
        }
        for (Mark.Spot spot : spots) {
            PathPlace near = boundary.nearest(spot.at());
            all.add(new ApparelNotch(
                    spot.at(),
                    near.alongMm(),
                    near.point().distanceTo(spot.at()),
                    notchKind(spot.trait().layer()),
                    spot.depthMm(),
                    spot.widthMm(),
                    spot.angleRad()));
        }
        for (Path slit : slits) {
            PathPlace start = boundary.nearest(slit.start());
            PathPlace end = boundary.nearest(slit.end());
            boolean atStart =
                    start.point().distanceTo(slit.start()) <= end.point().distanceTo(slit.end());
            Point at = atStart ? slit.start() : slit.end();
            PathPlace near = atStart ? start : end;
            all.add(new ApparelNotch(
                    at,
                    near.alongMm(),
                    near.point().distanceTo(at),
                    ApparelNotch.Kind.PLAIN,
                    OptionalDouble.of(slit.length()),
                    OptionalDouble.empty(),
                    OptionalDouble.empty()));
        }
        for (ApparelNotch notch : all) {
            if (notch.offMm() > NOTCH_OFF_MM) {
                notes.say(Finding.warning(
                        place,
                        String.format(
                                Locale.ROOT,
                                "a notch at (%.1f, %.1f) lies %.1f mm from the boundary; it belongs to another line or is misplaced.",
                                notch.at().x(),
                                notch.at().y(),
                                notch.offMm())));
            }
        }
        return all;
    }

    /** All but the plain one from memory. */
    private static ApparelNotch.Kind notchKind(String layer) {
        return switch (layer.strip()) {
            case "80" -> ApparelNotch.Kind.T;
            case "81" -> ApparelNotch.Kind.CASTLE;
            case "82" -> ApparelNotch.Kind.CHECK;
            case "83" -> ApparelNotch.Kind.U;
            default -> ApparelNotch.Kind.PLAIN;
        };
    }

    private Optional<Grain> grain() {
        Optional<Path> line =
                first(ApparelLayer.GRAIN).filter(path -> !path.start().isNear(path.end(), 1));
        if (line.isEmpty()) {
            notes.say(
                    Finding.warning(place, "it has no grainline on layer 7; the grain was taken to run up the sheet."));
        }
        return line.map(path -> path.start().y() <= path.end().y()
                ? new Grain(path.start(), path.end())
                : new Grain(path.end(), path.start()));
    }

    private Optional<Path> first(ApparelLayer layer) {
        return contents.lines(layer).stream().max(Comparator.comparingDouble(Path::length));
    }

    private List<Point> drillHoles() {
        List<Point> all = new ArrayList<>();
        contents.spots(ApparelLayer.DRILL).forEach(spot -> all.add(spot.at()));
        contents.lines(ApparelLayer.DRILL)
                .forEach(circle -> all.add(circle.bounds().centre()));
        return all;
    }

    private List<GradePoint> gradePoints() {
        List<GradePoint> all = new ArrayList<>();
        for (Mark.Words words : contents.words) {
            Matcher rule = RULE.matcher(words.text());
            if (rule.matches()) {
                all.add(new GradePoint(words.at(), Integer.parseInt(rule.group(1))));
            }
        }
        return all;
    }

    private void tellRest() {
        if (!contents.unknownLayers.isEmpty()) {
            notes.say(Finding.note(
                    place,
                    "layers that the convention does not know were kept as lines inside: "
                            + String.join(
                                    ", ",
                                    contents.unknownLayers.stream().limit(10).toList()) + "."));
        }
        int quality = contents.lines(ApparelLayer.QUALITY_CURVE).size()
                + contents.lines(ApparelLayer.STRIPE_OR_PLAID).size();
        if (quality > 0) {
            notes.say(
                    Finding.note(
                            place,
                            quality
                                    + " lines for stripes, plaids or for proving curves (layers 9, 10, 84 to 87) are in the drawing only."));
        }
        if (contents.placings > 0) {
            notes.say(Finding.note(
                    place, contents.placings + " blocks placed inside the piece are in the drawing only."));
        }
    }
}
