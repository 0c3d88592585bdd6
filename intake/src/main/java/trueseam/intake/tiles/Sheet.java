package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.intake.drawing.Caption;

/** Lays pages where they belong and cuts each to its own part, so that every line is on one page only. One file, one thread. */
final class Sheet {

    /** Between blocks that nothing joins, mm. */
    private static final double BETWEEN_MM = 50;

    private static final double ALONG_MM = 0.1;

    private final List<Leaf> leaves;
    private final Edges edges;
    private final Steps steps;
    private final Set<Caption> labels;
    private final Furniture furniture;
    private final List<Part> parts = new ArrayList<>();
    private final List<Caption> captions = new ArrayList<>();

    private Sheet(List<Leaf> leaves, Edges edges, Steps steps, Set<Caption> labels, Furniture furniture) {
        this.leaves = leaves;
        this.edges = edges;
        this.steps = steps;
        this.labels = labels;
        this.furniture = furniture;
    }

    /** What lies on the sheet. */
    record Laid(List<Part> parts, List<Caption> captions) {}

    static Laid of(List<Leaf> leaves, Edges edges, Arrangement arrangement, Set<Caption> labels, Furniture furniture) {
        Sheet sheet = new Sheet(leaves, edges, arrangement.steps(), labels, furniture);
        double left = 0;
        for (Map<Integer, Cell> block : arrangement.blocks()) {
            Grid grid = Grid.of(block, "");
            for (Map.Entry<Integer, Cell> at : grid.cells().entrySet()) {
                Vec to = new Vec(
                        left + at.getValue().column() * sheet.steps.right(),
                        -at.getValue().row() * sheet.steps.down());
                sheet.lay(at.getKey(), grid, at.getValue(), to);
            }
            Page any = leaves.get(block.keySet().iterator().next()).page();
            left += (grid.columns() - 1) * sheet.steps.right() + any.widthMm() + BETWEEN_MM;
        }
        return new Laid(sheet.parts, sheet.captions);
    }

    private void lay(int number, Grid grid, Cell cell, Vec to) {
        Leaf leaf = leaves.get(number);
        double right = edges.rightEdge(steps.right());
        double low = edges.lowEdge(steps.down());
        List<Double> upright = new ArrayList<>();
        List<Double> level = new ArrayList<>();
        double x0 = side(grid.has(cell.plus(0, -1)), right - steps.right(), -1, upright);
        double x1 = side(grid.has(cell.plus(0, 1)), right, leaf.page().widthMm() + 1, upright);
        double y0 = side(grid.has(cell.plus(1, 0)), low, -1, level);
        double y1 =
                side(grid.has(cell.plus(-1, 0)), low + steps.down(), leaf.page().heightMm() + 1, level);
        Bounds own = new Bounds(x0, y0, x1, y1);
        Motion motion = Motion.slide(to);
        for (Inked line : leaf.lines()) {
            Bounds box = common(own, line.visible());
            if (box == null) {
                continue;
            }
            for (Path part : Cut.within(line.stroke().path(), line.bounds(), box)) {
                Bounds b = part.bounds();
                boolean along = upright.stream()
                                .anyMatch(x -> Math.abs(b.minX() - x) < ALONG_MM && b.width() < ALONG_MM)
                        || level.stream().anyMatch(y -> Math.abs(b.minY() - y) < ALONG_MM && b.height() < ALONG_MM);
                parts.add(new Part(
                        part.moved(motion),
                        line.stroke(),
                        number,
                        apart(part.start(), upright, level),
                        apart(part.end(), upright, level),
                        along));
            }
        }
        for (Caption caption : leaf.page().captions()) {
            boolean here = own.meets(Bounds.of(caption.at(), caption.at()), 0);
            if (here && !labels.contains(caption) && !furniture.holds(caption)) {
                captions.add(new Caption(
                        caption.text(),
                        motion.apply(caption.at()),
                        caption.heightMm(),
                        caption.layer(),
                        caption.colour()));
            }
        }
    }

    private static double side(boolean neighbour, double edge, double paper, List<Double> edges) {
        if (neighbour) {
            edges.add(edge);
            return edge;
        }
        return paper;
    }

    private static Bounds common(Bounds a, Bounds b) {
        double x0 = Math.max(a.minX(), b.minX());
        double y0 = Math.max(a.minY(), b.minY());
        double x1 = Math.min(a.maxX(), b.maxX());
        double y1 = Math.min(a.maxY(), b.maxY());
        return x0 <= x1 && y0 <= y1 ? new Bounds(x0, y0, x1, y1) : null;
    }

    private static double apart(Point p, List<Double> upright, List<Double> level) {
        double apart = Double.POSITIVE_INFINITY;
        for (double x : upright) {
            apart = Math.min(apart, Math.abs(p.x() - x));
        }
        for (double y : level) {
            apart = Math.min(apart, Math.abs(p.y() - y));
        }
        return apart;
    }

    /** Words at the edges that several pages share: numbers of marks. They belong to no piece. */
    static Set<Caption> edgeWords(List<Leaf> leaves) {
        Map<String, List<Caption>> byText = new java.util.HashMap<>();
        Map<String, Set<Integer>> pages = new java.util.HashMap<>();
        for (Leaf leaf : leaves) {
            for (Caption caption : leaf.page().captions()) {
                if (caption.text().length() <= 4 && isAtRim(caption.at(), leaf.page())) {
                    byText.computeIfAbsent(caption.text(), t -> new ArrayList<>())
                            .add(caption);
                    pages.computeIfAbsent(caption.text(), t -> new HashSet<>())
                            .add(leaf.page().number());
                }
            }
        }
        Set<Caption> words = new HashSet<>();
        byText.forEach((text, list) -> {
            if (pages.get(text).size() >= 2) {
                words.addAll(list);
            }
        });
        return words;
    }

    private static boolean isAtRim(Point p, Page page) {
        double rim = 35;
        return p.x() < rim || p.y() < rim || p.x() > page.widthMm() - rim || p.y() > page.heightMm() - rim;
    }
}
