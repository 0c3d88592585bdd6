package trueseam.intake.svg;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import trueseam.garment.finding.Finding;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.convert.Affine;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.drawing.Look;
import trueseam.intake.drawing.Stroke;

/** Reads an SVG file as a drawing. One file, one thread. */
public final class SvgDrawing {

    private static final double PX_MM = 25.4 / 96;

    /** Elements within use within use; a picture of a pattern needs two or three. */
    private static final int DEEPEST_USE = 12;

    /** What one use makes of another can double at every step: a drawing has so many lines at most. */
    private static final int MOST_STROKES = 200_000;

    /** The same where what is doubled has no lines. */
    private static final int MOST_STEPS = 1_000_000;

    /** A drawing of so many strokes of the pen is no pattern but a picture. */
    private static final int MOST_SEGMENTS = 1_000_000;

    private static final Set<String> NOT_DRAWN = Set.of(
            "defs",
            "symbol",
            "clipPath",
            "mask",
            "marker",
            "pattern",
            "linearGradient",
            "radialGradient",
            "filter",
            "metadata",
            "title",
            "desc",
            "style",
            "script",
            "namedview");

    private static final Set<String> NO_LINES = Set.of("image", "foreignObject", "textPath");

    private final String file;
    private final Element root;
    private final Styles styles;
    private final Map<String, Element> named = new HashMap<>();
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Caption> captions = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final Set<String> told = new HashSet<>();
    private int steps;
    private int segments;
    private double width = 100;
    private double height = 100;

    private SvgDrawing(String file, Element root) {
        this.file = file;
        this.root = root;
        this.styles = new Styles(root);
        index(root);
    }

    /**
     * Reads a file.
     *
     * @param file what it is called, for messages
     * @param text its text
     * @param unitMm how many mm a user unit is, where the user knows better than the file; else empty
     * @return the drawing, mm, y up
     * @throws DrawingException if the file is no SVG, unsafe to follow, or places its lines in a way that cannot be read
     */
    public static Drawing read(String file, String text, OptionalDouble unitMm) {
        SvgDrawing reading = new SvgDrawing(file, ElementReader.read(file, text));
        try {
            reading.walkRoot(reading.scale(unitMm));
        } catch (GeometryException e) {
            throw new DrawingException(
                    file,
                    "",
                    "Its lines are placed farther off or made larger than any number can say: " + e.getMessage());
        }
        return new Drawing(file, reading.strokes, reading.captions, reading.findings);
    }

    private void index(Element element) {
        String id = element.attribute("id");
        if (!id.isEmpty()) {
            named.putIfAbsent(id, element);
        }
        element.children().forEach(this::index);
    }

    /** From user units to mm, y up. */
    private Affine scale(OptionalDouble unitMm) {
        Optional<List<Double>> box =
                Units.numbers(root.attribute("viewBox")).filter(n -> n.size() == 4 && n.get(2) > 0 && n.get(3) > 0);
        OptionalDouble w = Units.length(root.attribute("width"), 0);
        OptionalDouble h = Units.length(root.attribute("height"), 0);
        width = box.map(b -> b.get(2)).orElse(w.orElse(100));
        height = box.map(b -> b.get(3)).orElse(h.orElse(100));
        double unit;
        if (unitMm.isPresent()) {
            unit = unitMm.getAsDouble();
        } else if (box.isPresent() && w.isPresent() && w.getAsDouble() > 0) {
            double across = w.getAsDouble() * PX_MM / box.get().get(2);
            double along = h.isPresent() && h.getAsDouble() > 0
                    ? h.getAsDouble() * PX_MM / box.get().get(3)
                    : across;
            boolean stretched = root.attribute("preserveAspectRatio").strip().startsWith("none");
            if (stretched && Math.abs(across / along - 1) > 1e-3) {
                throw new DrawingException(
                        file,
                        "element svg",
                        "Its width and height stretch the drawing unevenly; set them in the proportion of its viewBox.");
            }
            unit = Math.min(across, along);
            if (!Units.isTrue(root.attribute("width"))) {
                note("element svg", "Its size names no true unit; 96 px are taken for an inch. Check the test square.");
            }
        } else {
            unit = PX_MM;
            note(
                    "element svg",
                    "It says no size, so that 96 user units are taken for an inch; check the test square, or say how many"
                            + " millimetres a unit is.");
        }
        return new Affine(unit, 0, 0, -unit, 0, 0);
    }

    private void note(String place, String sentence) {
        if (told.add(place + sentence)) {
            findings.add(Finding.note(place, sentence));
        }
    }

    /** The outermost svg has its size and viewBox in the scale already. */
    private void walkRoot(Affine toMm) {
        Affine here = own(root).then(toMm);
        Map<String, String> look = styles.of(root, Map.of());
        root.children().forEach(child -> walk(child, here, look, "", 0));
    }

    private void walk(Element element, Affine placed, Map<String, String> around, String layer, int uses) {
        if (++steps > MOST_STEPS) {
            throw new DrawingException(
                    file,
                    element.place(),
                    "Elements use one another more than " + MOST_STEPS
                            + " times; unlink the copies in a vector editor.");
        }
        Map<String, String> look = styles.of(element, around);
        if (NOT_DRAWN.contains(element.name())
                || "none".equals(look.get("display"))
                || "0".equals(look.get("opacity"))) {
            return;
        }
        if (NO_LINES.contains(element.name())) {
            note(element.place(), "It has no lines that can be sewn and was left out.");
            return;
        }
        Affine here = own(element).then(placed);
        switch (element.name()) {
            case "g", "a", "switch" -> {
                String inner = within(layer, name(element));
                element.children().forEach(child -> walk(child, here, look, inner, uses));
            }
            case "svg" -> {
                Affine inner = nested(element).then(here);
                element.children().forEach(child -> walk(child, inner, look, layer, uses));
            }
            case "use" -> use(element, here, look, layer, uses);
            case "text" -> caption(element, here, look, layer);
            default -> {
                if (Shapes.isShape(element)) {
                    draw(element, here, look, layer);
                }
            }
        }
    }

    private Affine own(Element element) {
        String text = element.attribute("transform");
        if (text.isBlank()) {
            return Affine.NONE;
        }
        return Transforms.read(text)
                .orElseThrow(() -> new DrawingException(
                        file,
                        element.place(),
                        "Its transform \"" + Shapes.shortened(text)
                                + "\" cannot be read, so that nobody knows where its lines lie; correct it."));
    }

    /** A drawing within the drawing: shifted to its place and, with a viewBox, scaled into it. */
    private Affine nested(Element element) {
        double x = Units.length(element.attribute("x"), width).orElse(0);
        double y = Units.length(element.attribute("y"), height).orElse(0);
        Affine shift = new Affine(1, 0, 0, 1, x, y);
        Optional<List<Double>> box =
                Units.numbers(element.attribute("viewBox")).filter(n -> n.size() == 4 && n.get(2) > 0 && n.get(3) > 0);
        if (box.isEmpty()) {
            return shift;
        }
        double w = Units.length(element.attribute("width"), width).orElse(width);
        double h = Units.length(element.attribute("height"), height).orElse(height);
        double unit = Math.min(w / box.get().get(2), h / box.get().get(3));
        // By default the content lies in the middle (SVG 1.1, 7.8: xMidYMid meet).
        double dx = (w - unit * box.get().get(2)) / 2 - unit * box.get().get(0);
        double dy = (h - unit * box.get().get(3)) / 2 - unit * box.get().get(1);
        return new Affine(unit, 0, 0, unit, dx, dy).then(shift);
    }

    private void use(Element element, Affine here, Map<String, String> look, String layer, int uses) {
        String reference = element.attribute("href").strip();
        if (!reference.startsWith("#")) {
            note(element.place(), "It uses something outside the file, which is not read; it was left out.");
            return;
        }
        Element meant = named.get(reference.substring(1));
        if (meant == null) {
            note(element.place(), "It uses \"" + Shapes.shortened(reference) + "\", which is not in the file.");
            return;
        }
        if (uses >= DEEPEST_USE) {
            throw new DrawingException(
                    file,
                    element.place(),
                    "Elements use one another in a circle or more than " + DEEPEST_USE
                            + " deep; unlink the copies in a vector editor.");
        }
        Affine shift = new Affine(
                1,
                0,
                0,
                1,
                Units.length(element.attribute("x"), width).orElse(0),
                Units.length(element.attribute("y"), height).orElse(0));
        Affine there = shift.then(here);
        if (meant.name().equals("symbol")) {
            Affine inner = nested(meant).then(there);
            meant.children().forEach(child -> walk(child, inner, look, layer, uses + 1));
        } else {
            walk(meant, there, look, layer, uses + 1);
        }
    }

    private void draw(Element element, Affine here, Map<String, String> look, String layer) {
        if ("hidden".equals(look.get("visibility")) || "collapse".equals(look.get("visibility"))) {
            return;
        }
        boolean stroked = !"none".equals(look.getOrDefault("stroke", "none"));
        boolean filled = !"none".equals(look.getOrDefault("fill", "black"));
        if (!stroked && !filled) {
            return;
        }
        try {
            for (Path path : Shapes.of(element, width, height)) {
                segments += path.segments().size();
                if (segments > MOST_SEGMENTS) {
                    throw new DrawingException(
                            file,
                            element.place(),
                            "More than " + MOST_SEGMENTS + " strokes in its lines; that is a picture and no pattern.");
                }
                if (strokes.size() >= MOST_STROKES) {
                    throw new DrawingException(
                            file, element.place(), "More than " + MOST_STROKES + " lines; that is no pattern.");
                }
                strokes.add(new Stroke(here.apply(path), seen(look, here, stroked), layer, name(element)));
            }
        } catch (Shapes.Unusable | GeometryException e) {
            findings.add(Finding.warning(element.place(), "It was left out: " + e.getMessage()));
        }
    }

    private static Look seen(Map<String, String> look, Affine here, boolean stroked) {
        double scale = Math.sqrt(Math.abs(here.a() * here.d() - here.b() * here.c()));
        String colour = Colours.read(stroked ? look.get("stroke") : look.getOrDefault("fill", "black"));
        double wide = stroked
                ? Units.length(look.getOrDefault("stroke-width", "1"), 100).orElse(1) * scale
                : 0;
        List<Double> dashes = Units.numbers(
                        look.getOrDefault("stroke-dasharray", "none").replace("px", ""))
                .map(all -> all.stream()
                        .map(d -> Math.round(d * scale * 1000) / 1000.0)
                        .toList())
                .filter(all -> all.stream().anyMatch(d -> d > 0))
                .orElse(List.of());
        return new Look(colour, Math.round(wide * 1000) / 1000.0, dashes);
    }

    private void caption(Element element, Affine here, Map<String, String> look, String layer) {
        if ("hidden".equals(look.get("visibility"))) {
            return;
        }
        Element placing =
                element.attribute("x").isBlank() && !element.children().isEmpty()
                        ? element.children().get(0)
                        : element;
        double x = first(placing.attribute("x"));
        double y = first(placing.attribute("y"));
        String text = words(element).replaceAll("\\s+", " ").strip();
        if (!text.isEmpty()) {
            double scale = Math.sqrt(Math.abs(here.a() * here.d() - here.b() * here.c()));
            double size = Units.length(look.getOrDefault("font-size", "16"), 16).orElse(16) * scale;
            boolean filled = !"none".equals(look.getOrDefault("fill", "black"));
            String colour =
                    Colours.read(filled ? look.getOrDefault("fill", "black") : look.getOrDefault("stroke", "black"));
            captions.add(new Caption(text, here.apply(new Point(x, y)), size, layer, colour));
        }
    }

    private double first(String text) {
        return Arrays.stream(text.strip().split("[\\s,]+"))
                .findFirst()
                .flatMap(t -> {
                    OptionalDouble length = Units.length(t, width);
                    return length.isPresent() ? Optional.of(length.getAsDouble()) : Optional.empty();
                })
                .orElse(0.0);
    }

    private static String words(Element element) {
        StringBuilder all = new StringBuilder(element.text());
        for (Element child : element.children()) {
            all.append(' ').append(words(child));
        }
        return all.toString();
    }

    /** A layer has a label beside its id in many editors. */
    private static String name(Element element) {
        String label = element.attribute("label");
        return label.isBlank() ? element.attribute("id") : label;
    }

    private static String within(String layer, String name) {
        return name.isBlank() ? layer : layer.isEmpty() ? name : layer + "/" + name;
    }
}
