package trueseam.output.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import trueseam.fitting.profile.EaseAt;
import trueseam.fitting.profile.EaseProfile;
import trueseam.fitting.profile.EaseReading;
import trueseam.fitting.profile.TightBetween;
import trueseam.garment.flat.BodyPart;
import trueseam.garment.flat.FlatGirths;
import trueseam.garment.flat.GirthAt;
import trueseam.garment.length.LengthFormat;
import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.output.svg.Svg;
import trueseam.output.words.MeasureWords;

/** Draws one profile: names of heights, girths, room, numbers, from left to right, all on one scale of heights. */
final class ProfilePlot {

    static final double WIDTH = 960;

    private static final double LEFT = 172;
    private static final double GIRTH_END = 520;
    private static final double ROOM = 566;
    private static final double ROOM_END = 790;
    private static final double NUMBERS = 806;
    private static final double TOP = 104;
    private static final double BELOW = 100;
    private static final double NAME_GAP = 36;
    private static final int TICKS = 7;

    /** How much of a garment is drawn below the lowest girth: 4 in, for below it there is nothing to compare. */
    private static final double RUN_ON_MM = 101.6;

    private final EaseProfile profile;
    private final LengthFormat show;
    private final List<EaseReading> readings;
    private final Axis heights;
    private final Axis girths;
    private final Axis room;
    private final List<List<EaseReading>> tight;

    ProfilePlot(EaseProfile profile, LengthFormat show) {
        this.profile = profile;
        this.show = show;
        this.heights = heights(profile);
        this.readings = profile.readings(EaseProfile.STEP_MM).stream()
                .filter(reading -> reading.heightMm() >= heights.toMm())
                .toList();
        this.girths = axis(
                readings.stream().flatMap(r -> known(r.beforeMm(), r.afterMm(), r.bodyMm(), r.leastMm())),
                0.06,
                LEFT,
                GIRTH_END);
        this.room = axis(
                Stream.concat(
                        Stream.of(0.0),
                        readings.stream().flatMap(r -> known(r.easeBeforeMm(), r.easeAfterMm(), r.leastEaseMm()))),
                0.08,
                ROOM,
                ROOM_END);
        this.tight = tight(readings, profile.tightBetween());
    }

    EaseProfile profile() {
        return profile;
    }

    String title() {
        String round = profile.part() == BodyPart.TRUNK
                ? "Trunk"
                : "One " + profile.part().word();
        return round + ": garment and body by height";
    }

    double height() {
        return heights.end() + BELOW;
    }

    /** Heights run down the drawing, from the top of the garment to a little below the lowest girth that was measured. */
    static Axis heights(EaseProfile profile) {
        double top = Math.max(profile.before().topMm(), profile.after().topMm());
        double lowest = Double.POSITIVE_INFINITY;
        for (EaseAt level : profile.levels()) {
            top = Math.max(top, level.body().heightMm());
            lowest = Math.min(lowest, level.body().heightMm());
        }
        double hem = Math.min(profile.before().bottomMm(), profile.after().bottomMm());
        double bottom = Math.min(lowest, Math.max(hem, lowest - RUN_ON_MM));
        double tall = Math.max(260, Math.min(480, 1.2 * (top - bottom)));
        return new Axis(top, bottom, TOP, TOP + tall);
    }

    private static Axis axis(Stream<Double> values, double margin, double start, double end) {
        List<Double> all = values.toList();
        double low = all.stream().min(Double::compare).orElseThrow();
        double high = all.stream().max(Double::compare).orElseThrow();
        double pad = Math.max(8, margin * (high - low));
        return new Axis(low - pad, high + pad, start, end);
    }

    private static Stream<Double> known(OptionalDouble... values) {
        return Stream.of(values).filter(OptionalDouble::isPresent).map(OptionalDouble::getAsDouble);
    }

    void draw(Svg svg) {
        hatches(svg);
        svg.element("text", title(), "class", "ease-title", "x", 20, "y", 24);
        frame(svg, girths, "Girth, " + show.unit().sign());
        frame(svg, room, "Ease, " + show.unit().sign());
        levels(svg);
        girthPanel(svg);
        roomPanel(svg);
        legend(svg);
    }

    private void hatches(Svg svg) {
        svg.open("defs");
        hatch(svg, "band", 7, "M0 7 L7 0");
        hatch(svg, "tight", 5, "M0 0 L5 5 M0 5 L5 0");
        svg.close();
    }

    private void hatch(Svg svg, String name, double size, String lines) {
        svg.open("pattern", "id", id(name), "width", size, "height", size, "patternUnits", "userSpaceOnUse");
        svg.empty("path", "class", "ease-hatch ease-hatch-" + name, "d", lines).close();
    }

    private String id(String hatch) {
        return "ease-" + profile.part().word() + "-" + hatch;
    }

    private void frame(Svg svg, Axis axis, String name) {
        svg.element("text", name, "class", "ease-axis-name", "x", axis.start(), "y", TOP - 42);
        for (double mm : axis.ticks(TICKS, show)) {
            double x = axis.at(mm);
            line(svg, "ease-tick", x, heights.start(), x, heights.end());
            svg.element("text", show.number(mm), "class", "ease-tick-name", "x", x, "y", heights.end() + 18);
        }
        line(svg, "ease-frame", axis.start(), heights.end(), axis.end(), heights.end());
    }

    private void levels(Svg svg) {
        double free = Double.NEGATIVE_INFINITY;
        for (EaseAt level : profile.levels()) {
            double y = heights.at(level.body().heightMm());
            double text = Math.max(y, free);
            free = text + NAME_GAP;
            line(svg, "ease-level", LEFT - 6, y, ROOM_END, y);
            if (text > y) {
                svg.empty("path", "class", "ease-level", "d", "M" + point(LEFT - 6, y) + "L" + point(LEFT - 18, text));
            }
            svg.element(
                    "text",
                    MeasureWords.label(level.body().measure()),
                    "class",
                    "ease-level-name",
                    "x",
                    LEFT - 22,
                    "y",
                    text + 1);
            svg.element(
                    "text",
                    offZero(level.body().heightMm()),
                    "class",
                    "ease-level-height",
                    "x",
                    LEFT - 22,
                    "y",
                    text + 17);
            numbers(svg, level, text);
        }
        svg.element("text", "Height from", "class", "ease-level-name", "x", LEFT - 22, "y", TOP - 42);
        svg.element("text", profile.part().zero(), "class", "ease-level-height", "x", LEFT - 22, "y", TOP - 26);
        svg.element("text", "Ease after", "class", "ease-axis-name", "x", NUMBERS, "y", TOP - 42);
        svg.element("text", "(before; least)", "class", "ease-small", "x", NUMBERS, "y", TOP - 26);
    }

    private String offZero(double mm) {
        return Math.abs(mm) < show.stepMm() / 2
                ? "at " + profile.part().zero()
                : show.show(Math.abs(mm)) + (mm > 0 ? " above" : " below");
    }

    private void numbers(Svg svg, EaseAt level, double y) {
        boolean tight = level.shortAfterMm().isPresent();
        String now = length(level.easeAfterMm());
        svg.element(
                "text",
                tight ? now + " \u2013 TIGHT" : now,
                "class",
                tight ? "ease-number ease-number-tight" : "ease-number",
                "x",
                NUMBERS,
                "y",
                y + 1);
        svg.element(
                "text",
                "(" + length(level.easeBeforeMm()) + "; " + length(level.body().leastEaseMm()) + ")",
                "class",
                "ease-small",
                "x",
                NUMBERS,
                "y",
                y + 17);
    }

    private String length(OptionalDouble mm) {
        return mm.isPresent() ? show.show(mm.getAsDouble()) : "not there";
    }

    private void girthPanel(Svg svg) {
        profile.bodyCurve().ifPresent(body -> profile.leastCurve().ifPresent(least -> band(svg, body, least)));
        for (List<EaseReading> stretch : tight) {
            fill(svg, stretch, EaseReading::afterMm, EaseReading::leastMm, girths);
        }
        profile.bodyCurve().ifPresent(body -> svg.empty("path", "class", "ease-body", "d", "M" + curve(body)));
        profile.leastCurve().ifPresent(least -> svg.empty("path", "class", "ease-least", "d", "M" + curve(least)));
        svg.empty("path", "class", "ease-before", "d", garment(profile.before()));
        svg.empty("path", "class", "ease-after", "d", garment(profile.after()));
        for (EaseAt level : profile.levels()) {
            double y = heights.at(level.body().heightMm());
            svg.empty(
                    "circle", "class", "ease-dot", "cx", girths.at(level.body().mm()), "cy", y, "r", 4);
            if (level.body().leastEaseMm().isPresent()) {
                double x =
                        girths.at(level.body().mm() + level.body().leastEaseMm().getAsDouble());
                line(svg, "ease-least-mark", x, y - 6, x, y + 6);
            }
        }
    }

    private void roomPanel(Svg svg) {
        for (List<EaseReading> stretch : tight) {
            fill(svg, stretch, EaseReading::easeAfterMm, EaseReading::leastEaseMm, room);
        }
        line(svg, "ease-zero", room.at(0), heights.start(), room.at(0), heights.end());
        line(svg, readingsOf(EaseReading::leastEaseMm), "ease-least", room);
        line(svg, readingsOf(EaseReading::easeBeforeMm), "ease-before", room);
        line(svg, readingsOf(EaseReading::easeAfterMm), "ease-after", room);
        for (EaseAt level : profile.levels()) {
            double y = heights.at(level.body().heightMm());
            if (level.body().leastEaseMm().isPresent()) {
                double x = room.at(level.body().leastEaseMm().getAsDouble());
                line(svg, "ease-least-mark", x, y - 6, x, y + 6);
            }
            if (level.easeAfterMm().isPresent()) {
                double x = room.at(level.easeAfterMm().getAsDouble());
                String look = level.shortAfterMm().isPresent() ? "ease-now ease-now-tight" : "ease-now";
                svg.empty("rect", "class", look, "x", x - 4, "y", y - 4, "width", 8, "height", 8);
            }
        }
    }

    private record Place(double heightMm, double mm) {}

    private List<Place> readingsOf(Function<EaseReading, OptionalDouble> value) {
        List<Place> places = new ArrayList<>();
        for (EaseReading reading : readings) {
            value.apply(reading).ifPresent(mm -> places.add(new Place(reading.heightMm(), mm)));
        }
        return places;
    }

    private void line(Svg svg, List<Place> places, String look, Axis axis) {
        StringBuilder d = new StringBuilder();
        for (Place place : places) {
            d.append(d.isEmpty() ? 'M' : 'L').append(point(axis.at(place.mm()), heights.at(place.heightMm())));
        }
        if (places.size() > 1) {
            svg.empty("path", "class", look, "d", d);
        }
    }

    /** Neighbouring heights at which the altered garment is tighter than the least ease. */
    private static List<List<EaseReading>> tight(List<EaseReading> readings, List<TightBetween> between) {
        List<List<EaseReading>> stretches = new ArrayList<>();
        boolean open = false;
        for (EaseReading reading : readings) {
            boolean known = reading.afterMm().isPresent() && reading.leastMm().isPresent();
            boolean tight =
                    known && reading.afterMm().getAsDouble() < reading.leastMm().getAsDouble() - 0.5;
            if (tight && !open) {
                stretches.add(new ArrayList<>());
            }
            if (tight) {
                stretches.get(stretches.size() - 1).add(reading);
            }
            open = tight;
        }
        stretches.removeIf(stretch -> stretch.stream().noneMatch(reading -> isSaidToBeTight(reading, between)));
        return stretches;
    }

    /** Only what the sentences say is hatched: what the tape may err by is not. */
    private static boolean isSaidToBeTight(EaseReading reading, List<TightBetween> between) {
        return reading.measured()
                        .filter(level -> level.shortAfterMm().isPresent())
                        .isPresent()
                || between.stream().anyMatch(place -> place.heightMm() == reading.heightMm());
    }

    private void fill(
            Svg svg,
            List<EaseReading> stretch,
            Function<EaseReading, OptionalDouble> from,
            Function<EaseReading, OptionalDouble> to,
            Axis axis) {
        StringBuilder d = new StringBuilder();
        for (EaseReading reading : stretch) {
            d.append(d.isEmpty() ? 'M' : 'L')
                    .append(point(axis.at(from.apply(reading).orElseThrow()), heights.at(reading.heightMm())));
        }
        for (int i = stretch.size() - 1; i >= 0; i--) {
            d.append('L')
                    .append(point(
                            axis.at(to.apply(stretch.get(i)).orElseThrow()),
                            heights.at(stretch.get(i).heightMm())));
        }
        svg.empty("path", "class", "ease-tight", "fill", "url(#" + id("tight") + ")", "d", d.append('Z'));
    }

    private void band(Svg svg, Path body, Path least) {
        String d = "M" + curve(body) + "L" + curve(least.reversed()) + "Z";
        svg.empty("path", "class", "ease-band", "fill", "url(#" + id("band") + ")", "d", d);
    }

    /** A curve of girths over heights, laid on the drawing: its heights run down and its girths to the right. */
    private String curve(Path path) {
        StringBuilder d = new StringBuilder(laid(path.start()));
        for (Segment segment : path.segments()) {
            if (segment instanceof Cubic cubic) {
                d.append('C')
                        .append(laid(cubic.handle1()))
                        .append(laid(cubic.handle2()))
                        .append(laid(cubic.end()));
            } else {
                d.append('L').append(laid(segment.end()));
            }
        }
        return d.toString();
    }

    private String laid(Point point) {
        return point(girths.at(point.y()), heights.at(point.x())) + " ";
    }

    private String garment(FlatGirths garment) {
        StringBuilder d = new StringBuilder();
        for (GirthAt at : garment.every(EaseProfile.STEP_MM)) {
            if (at.heightMm() < heights.toMm()) {
                break;
            }
            d.append(d.isEmpty() ? 'M' : 'L').append(point(girths.at(at.girthMm()), heights.at(at.heightMm())));
        }
        return d.toString();
    }

    private void legend(Svg svg) {
        double y = heights.end() + 48;
        sample(svg, "ease-after", LEFT, y, "garment after");
        sample(svg, "ease-before", LEFT + 165, y, "garment before");
        sample(svg, "ease-body", LEFT + 335, y, "body; dots measured");
        sample(svg, "ease-least", LEFT + 550, y, "body with least ease");
        svg.empty(
                "rect",
                "class",
                "ease-tight",
                "fill",
                "url(#" + id("tight") + ")",
                "x",
                LEFT + 550,
                "y",
                y + 12,
                "width",
                32,
                "height",
                14);
        svg.element("text", "tight", "class", "ease-small", "x", LEFT + 590, "y", y + 24);
        svg.empty(
                "rect",
                "class",
                "ease-band",
                "fill",
                "url(#" + id("band") + ")",
                "x",
                LEFT + 335,
                "y",
                y + 12,
                "width",
                32,
                "height",
                14);
        svg.element("text", "least ease", "class", "ease-small", "x", LEFT + 375, "y", y + 24);
    }

    private static void sample(Svg svg, String look, double x, double y, String words) {
        line(svg, look, x, y, x + 32, y);
        svg.element("text", words, "class", "ease-small", "x", x + 40, "y", y + 5);
    }

    private static void line(Svg svg, String look, double x1, double y1, double x2, double y2) {
        svg.empty("line", "class", look, "x1", x1, "y1", y1, "x2", x2, "y2", y2);
    }

    private static String point(double x, double y) {
        return Svg.number(x) + " " + Svg.number(y);
    }
}
