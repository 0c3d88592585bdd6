package trueseam.output.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import trueseam.geometry.Point;

/**
 * The way of a tape as seen from one side.
 *
 * @param seen stretches on the side of the viewer
 * @param behind stretches that go round behind the body
 * @param levels thin lines of levels
 * @param marks the points on the side of the viewer
 */
record DrawnTape(
        List<List<Point>> seen, List<List<Point>> behind, List<List<Point>> levels, Map<BodyPoint, List<Point>> marks) {

    static DrawnTape of(TapePath path, FigureView view) {
        DrawnTape drawn = new DrawnTape(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new TreeMap<>());
        for (List<Spot> stroke : path.strokes()) {
            drawn.part(stroke, view);
        }
        if (!path.goesRound() || drawn.seen.isEmpty()) {
            drawn.behind.clear();
        }
        if (drawn.seen.isEmpty()) {
            return drawn;
        }
        for (List<Spot> level : path.levels()) {
            drawn.levels.add(level.stream().map(view::seen).toList());
        }
        path.marks().forEach((point, spots) -> {
            List<Point> shown =
                    spots.stream().filter(view::shows).map(view::seen).toList();
            if (!shown.isEmpty()) {
                drawn.marks.put(point, shown);
            }
        });
        return drawn;
    }

    /** Parts a stroke where it passes a side of the body. */
    private void part(List<Spot> stroke, FigureView view) {
        int from = 0;
        for (int i = 1; i < stroke.size(); i++) {
            boolean last = i == stroke.size() - 1;
            if (last || isSeen(stroke, i, view) != isSeen(stroke, i - 1, view)) {
                List<Point> stretch =
                        stroke.subList(from, i + 1).stream().map(view::seen).toList();
                (isSeen(stroke, i - 1, view) ? seen : behind).add(stretch);
                from = i;
            }
        }
    }

    /** Whether the step that starts at a spot lies on the viewer's side. */
    private static boolean isSeen(List<Spot> stroke, int i, FigureView view) {
        return view.shows(stroke.get(i).towards(stroke.get(i + 1), 0.5));
    }
}
