package trueseam.output.print;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Level;
import trueseam.garment.pattern.Marking;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.PatternSymbols;

/** The marks inside a piece and on its edge. Everything drawn is kept free of words. */
final class PieceMarks {

    private static final Lettering NAME = Lettering.of(3.8).shaded(0.2);
    private static final double FOLD_ARROW_MM = 13;

    /** Where along a line words may stand, best first. */
    private static final List<Double> SHARES = List.of(0.7, 0.5, 0.6, 0.4, 0.3, 0.8, 0.65, 0.55, 0.45, 0.35, 0.75);

    /** A level shorter than this inside the piece is only a touch, mm. */
    private static final double SHORTEST_LEVEL_MM = 15;

    private record Name(String text, Point near, boolean onLevel) {}

    private final PieceLines lines;
    private final Piece piece;
    private final FreeRoom room;
    private final List<Name> names = new ArrayList<>();

    PieceMarks(PieceLines lines, FreeRoom room) {
        this.lines = lines;
        this.piece = lines.piece();
        this.room = room;
    }

    void drawLevels(Canvas canvas) {
        Path outline = lines.outline();
        Footprint inside = new Footprint(List.of(piece.outline()));
        for (Level level : piece.levels()) {
            List<PathPlace> crossings = new ArrayList<>(outline.crossings(new Point(0, level.y()), new Vec(1, 0)));
            crossings.sort((a, b) -> Double.compare(a.point().x(), b.point().x()));
            for (int i = 1; i < crossings.size(); i++) {
                Point from = crossings.get(i - 1).point();
                Point to = crossings.get(i).point();
                if (from.distanceTo(to) >= SHORTEST_LEVEL_MM && inside.contains(from.towards(to, 0.5))) {
                    drawLevel(canvas, level, from, to);
                }
            }
        }
    }

    private void drawLevel(Canvas canvas, Level level, Point from, Point to) {
        room.keep(Path.through(from, to));
        if (level.name().isLengthLine()) {
            PatternSymbols.lengthen(canvas, from, to, Pens.LENGTHEN);
            names.add(new Name("lengthen or shorten here", from.towards(to, 0.75), true));
        } else {
            canvas.line(from, to, Pens.LEVEL);
            names.add(new Name(Names.level(piece, level), from.towards(to, 0.75), true));
        }
    }

    void drawSymbols(Canvas canvas) {
        for (Marking marking : piece.markings()) {
            canvas.stroke(marking.path(), Pens.FINE);
            room.keep(marking.path());
            names.add(new Name(
                    marking.name(), marking.path().pointAt(marking.path().length() / 2), false));
        }
        for (Dart dart : piece.darts()) {
            drawDart(canvas, dart);
        }
        for (Notch notch : piece.notches()) {
            drawNotch(canvas, notch);
        }
        for (Landmark landmark : piece.landmarks()) {
            PatternSymbols.crossedCircle(canvas, landmark.at(), Pens.FINE);
            room.keep(new Bounds(
                            landmark.at().x(),
                            landmark.at().y(),
                            landmark.at().x(),
                            landmark.at().y())
                    .grown(5));
            names.add(new Name(landmark.name(), landmark.at(), false));
        }
        drawGrain(canvas);
        piece.fold().ifPresent(f -> drawFold(canvas, piece.edge(f)));
    }

    private void drawDart(Canvas canvas, Dart dart) {
        List<Path> legs = legs(piece, dart);
        canvas.stroke(legs, Pens.STITCHING);
        legs.forEach(room::keep);
        Path fold;
        if (dart instanceof Dart.EdgeDart d) {
            Point mouth = piece.edge(d.edge()).path().pointAt((d.fromMm() + d.toMm()) / 2);
            fold = Path.through(mouth, d.apex());
            PatternSymbols.dot(canvas, d.apex());
        } else if (dart instanceof Dart.DiamondDart d) {
            fold = Path.through(d.top(), d.bottom());
            d.corners().forEach(c -> PatternSymbols.dot(canvas, c));
        } else {
            throw new IllegalArgumentException("a dart of a kind that cannot be drawn: " + dart);
        }
        canvas.stroke(fold, Pens.FOLDED_DART);
        room.keep(fold);
        names.add(new Name(dart.name(), fold.pointAt(fold.length() / 2), false));
    }

    /** The lines sewn. */
    static List<Path> legs(Piece piece, Dart dart) {
        if (dart instanceof Dart.EdgeDart d) {
            Path edge = piece.edge(d.edge()).path();
            return List.of(Path.through(edge.pointAt(d.fromMm()), d.apex(), edge.pointAt(d.toMm())));
        }
        if (dart instanceof Dart.DiamondDart d) {
            return List.of(Path.through(d.top(), d.left(), d.bottom(), d.right(), d.top()));
        }
        throw new IllegalArgumentException("a dart of a kind that cannot be drawn: " + dart);
    }

    private void drawNotch(Canvas canvas, Notch notch) {
        Edge edge = piece.edge(notch.edge());
        Point sewn = edge.path().pointAt(Math.min(notch.atMm(), edge.length()));
        Vec outwards =
                edge.path().tangentAt(Math.min(notch.atMm(), edge.length())).right();
        Point cut = sewn.plus(outwards.times(lines.allowanceMm(edge.name())));
        int count =
                switch (notch.kind()) {
                    case SINGLE -> 1;
                    case DOUBLE -> 2;
                    case TRIPLE -> 3;
                };
        PatternSymbols.notch(canvas, cut, outwards, count, Pens.SYMBOL);
        canvas.line(sewn.minus(outwards.times(2)), cut, Pens.FINE);
    }

    private void drawGrain(Canvas canvas) {
        Point from = piece.grain().from();
        Point to = piece.grain().to();
        PatternSymbols.grain(canvas, from, to, Pens.SYMBOL);
        Path line = Path.through(from, to);
        room.keep(line);
        double angle = PatternSymbols.readable(to.minus(from));
        Vec up = Vec.atAngle(angle).left().times(1.5);
        double share = clearest(from, to, up.times(2.2), canvas.typeface().widthOf("grain", NAME) / 2 + 1);
        Point beside = from.towards(to, share).plus(up);
        canvas.text("grain", beside, NAME.turned(angle).centred());
        room.keep(new Bounds(beside.x(), beside.y(), beside.x(), beside.y()).grown(5));
    }

    /** Where along a line words of a length beside it cover least: the middle of its upper half, if that is free. */
    private double clearest(Point from, Point to, Vec beside, double halfMm) {
        Vec half = to.minus(from).unit().times(halfMm);
        double whole = from.distanceTo(to);
        double best = 0.5;
        int least = Integer.MAX_VALUE;
        for (double share : SHARES) {
            if (share * whole < halfMm || (1 - share) * whole < halfMm) {
                continue;
            }
            Point middle = from.towards(to, share).plus(beside);
            int covered = room.covered(
                    Bounds.of(middle.minus(half), middle.plus(half)).grown(0.5));
            if (covered < least) {
                least = covered;
                best = share;
            }
        }
        return best;
    }

    private void drawFold(Canvas canvas, Edge fold) {
        Path path = fold.path();
        double margin = path.length() * 0.1;
        Point from = path.pointAt(margin);
        Point to = path.pointAt(path.length() - margin);
        Vec along = to.minus(from).unit();
        Vec inwards = along.left().times(FOLD_ARROW_MM);
        PatternSymbols.fold(canvas, from, to, inwards, Pens.SYMBOL);
        room.keep(Path.through(from, from.plus(inwards), to.plus(inwards), to));
        double angle = PatternSymbols.readable(along);
        Lettering lettering = Lettering.of(4.2).turned(angle).centred();
        String words = fold.name() + ": place on the fold of the cloth";
        lettering = canvas.typeface().fitted(words, lettering, path.length() * 0.7, 2);
        double half = canvas.typeface().widthOf(words, lettering) / 2;
        Point middle = from.towards(to, clearest(from, to, inwards.times(0.5), half + 2))
                .plus(inwards.times(0.5));
        canvas.text(words, middle.minus(Vec.atAngle(angle).left().times(lettering.sizeMm() * 0.35)), lettering);
        Vec arm = along.times(half);
        room.keep(Bounds.of(middle.minus(arm), middle.plus(arm)).grown(2));
    }

    /** Names come last, where the lines and the title leave room. */
    void drawNames(Canvas canvas) {
        for (Name name : names) {
            double width = canvas.typeface().widthOf(name.text(), NAME) + 2;
            double height = NAME.sizeMm() * 1.2;
            Point near = name.near();
            Bounds area = around(near);
            if (name.onLevel()) {
                Bounds above = along(near, 0.4, height);
                Bounds below = along(near, -0.4 - height, height);
                area = room.least(width, height, near, above) <= room.least(width, height, near, below) ? above : below;
            }
            room.take(width, height, near, area)
                    .ifPresent(box -> canvas.text(
                            name.text(), new Point(box.minX() + 1, box.minY() + NAME.sizeMm() * 0.3), NAME));
        }
    }

    private static Bounds around(Point near) {
        return new Bounds(near.x(), near.y(), near.x(), near.y()).grown(60);
    }

    /** A band beside a level, across the whole piece. */
    private Bounds along(Point near, double up, double height) {
        Bounds all = piece.outline().bounds();
        return new Bounds(all.minX(), near.y() + up, all.maxX(), near.y() + up + height);
    }
}
