package trueseam.output.strips;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.polygon.Region;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Dash;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.PatternSymbols;
import trueseam.output.drawing.Pen;
import trueseam.output.drawing.Shapes;
import trueseam.output.drawing.Typeface;

/** Draws one strip, upright, with its number in it and its words to the left. */
record StripDrawing(Cutting.Strip strip, int number) {

    private static final Pen CUT = Pen.of(0.4);
    private static final Pen OLD = Pen.of(0.4).with(Dash.DASHED);
    private static final Pen BARE = Pen.of(0.5).gray(1);
    private static final Pen FOLD = Pen.of(0.3).with(Dash.DASH_DOT);
    private static final Pen FINE = Pen.of(0.2);
    private static final Pen AWAY = Pen.of(0.15).gray(0.5);

    private static final Lettering WORDS = Lettering.of(2.8).turned(Math.PI / 2);
    private static final Lettering NUMBER = Lettering.of(4).heavy().centred();
    private static final Lettering NOTE = Lettering.of(2.6).centred();
    private static final Lettering JOIN = Lettering.of(2.6).heavy().centred().backed();
    private static final double RING_MM = 3.2;

    /** Beside a shorter strip words run on beyond it, mm. */
    private static final double SHORTEST_LINE_MM = 60;

    /** From the words' left side to their first base line, mm. */
    private static final double FIRST_LINE_MM = 2.4;

    private String place() {
        return "strip " + number + ": " + strip.sliver().place();
    }

    /** What is written beside it; along a short strip in more lines. */
    private List<String> words(Typeface typeface) {
        double room = Math.max(strip.bounds().height(), SHORTEST_LINE_MM);
        List<String> lines = new ArrayList<>(typeface.wrapped(place(), WORDS, room));
        lines.addAll(typeface.wrapped(strip.sliver().kind().task(), WORDS, room));
        return lines;
    }

    /** How much room its words take to the left of it, mm. */
    double wordsWideMm(Typeface typeface) {
        return words(typeface).size() * WORDS.lineMm() + 1;
    }

    /** How high it is with its words, mm. */
    double highMm(Typeface typeface) {
        double high = strip.bounds().height();
        for (String line : words(typeface)) {
            high = Math.max(high, typeface.widthOf(line, WORDS));
        }
        return high;
    }

    /**
     * Draws it.
     *
     * @param from upper left corner of the words; the strip stands to the right of them
     */
    void draw(Canvas page, Point from) {
        Sliver sliver = strip.sliver();
        Bounds b = strip.bounds();
        Point corner = from.plus(new Vec(wordsWideMm(page.typeface()), -b.height()));
        Motion onPage = strip.turn().then(Motion.slide(corner.minus(new Point(b.minX(), b.minY()))));
        List<Path> area = moved(sliver.area().outlines(), onPage);
        if (sliver.kind().isGuide()) {
            page.hatch(area, 2.5, Math.PI / 4, AWAY);
        }
        page.stroke(moved(sliver.paper().outlines(), onPage), CUT);
        if (sliver.kind().isGuide()) {
            page.stroke(area, FINE);
        }
        List<Path> lines = sliver.onTissueLines();
        page.stroke(moved(lines, onPage), BARE);
        page.stroke(moved(lines, onPage), OLD);
        if (sliver.kind() == StripKind.FOLD_OUT) {
            page.stroke(middle(sliver).moved(onPage), FOLD);
        }
        for (Sliver.Join join : sliver.joins()) {
            join(page, join, onPage);
        }
        for (Sliver.Note note : sliver.notes()) {
            Vec way = onPage.apply(note.way()).times(page.typeface().widthOf(note.words(), NOTE) / 2);
            double turn = PatternSymbols.readable(onPage.apply(new Vec(1, 0)));
            page.text(
                    note.words(),
                    onPage.apply(note.at()).plus(way),
                    NOTE.turned(turn).backed());
        }
        numberSpot(sliver, lines).map(onPage::apply).ifPresent(at -> number(page, at));
        Point line = from.plus(new Vec(FIRST_LINE_MM, -highMm(page.typeface())));
        for (String words : words(page.typeface())) {
            page.text(words, line, WORDS);
            line = line.plus(new Vec(WORDS.lineMm(), 0));
        }
    }

    private void number(Canvas page, Point at) {
        page.fill(List.of(Shapes.circle(at, RING_MM)), 1);
        page.stroke(Shapes.circle(at, RING_MM), FINE);
        String words = String.valueOf(number);
        Lettering fitted = page.typeface().fitted(words, NUMBER, 1.6 * RING_MM, 2);
        page.text(words, at.plus(new Vec(0, -0.36 * fitted.sizeMm())), fitted);
    }

    /** A stroke across the cut, and its number on this side of it. */
    private void join(Canvas page, Sliver.Join join, Motion onPage) {
        boolean ahead = strip.sliver().paper().contains(join.at().plus(join.into()));
        Point at = onPage.apply(join.at());
        Vec inward = onPage.apply(ahead ? join.into() : join.into().reversed());
        page.line(at.minus(inward.times(1.5)), at.plus(inward.times(3)), CUT);
        Point words = at.plus(inward.times(5)).plus(new Vec(0, -0.36 * JOIN.sizeMm()));
        page.text("join " + join.number(), words, JOIN);
    }

    /** Half way between both lines: there the tissue is folded. */
    private static Path middle(Sliver sliver) {
        Bounds b = sliver.area().outlines().get(0).bounds();
        return Path.through(
                new Point(b.minX(), b.centre().y()),
                new Point(b.maxX(), b.centre().y()));
    }

    /** A place on the strip where the ring covers no line, if there is one: beside the middle of the longest dashed line. */
    private static Optional<Point> numberSpot(Sliver sliver, List<Path> lines) {
        Path longest = null;
        for (Path line : lines) {
            longest = longest == null || line.length() > longest.length() ? line : longest;
        }
        if (longest == null) {
            return Optional.empty();
        }
        for (double share : List.of(0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9)) {
            double along = share * longest.length();
            Point on = longest.pointAt(along);
            for (double beside : List.of(1.0, -1.0)) {
                Point at = on.plus(longest.tangentAt(along).left().times(beside * Sliver.MARGIN_MM / 2));
                if (isClear(sliver, at)) {
                    return Optional.of(at);
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isClear(Sliver sliver, Point at) {
        Region ring = Region.within(Shapes.circle(at, RING_MM + 0.4), 0.05);
        boolean onNote = sliver.notes().stream().anyMatch(note -> note.at().distanceTo(at) < 4 * RING_MM);
        return !onNote
                && ring.difference(sliver.paper()).isEmpty()
                && (ring.intersection(sliver.area()).isEmpty()
                        || ring.difference(sliver.area()).isEmpty());
    }

    private static List<Path> moved(List<Path> paths, Motion by) {
        return paths.stream().map(p -> p.moved(by)).toList();
    }
}
