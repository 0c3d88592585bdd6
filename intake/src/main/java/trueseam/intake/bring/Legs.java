package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * Two straight lines of nearly one length that meet: the legs of a dart, perhaps.
 *
 * @param from where the one begins
 * @param apex where they meet
 * @param to where the other ends
 * @param lines which lines they are, by their place
 */
record Legs(Point from, Point apex, Point to, List<Integer> lines) {

    private static final double MEET_MM = 1;
    private static final double LEGS_DIFFER = 0.12;
    private static final double SHORTEST_MM = 25;

    /** Among more straight lines than this none are legs: it is hatching. */
    private static final int MOST_LEGS = 500;

    /** How sure two lines are the legs of a dart: sure of equal ones, half sure of the most unlike that are taken (our own scale). */
    double confidence() {
        double one = from.distanceTo(apex);
        double other = to.distanceTo(apex);
        return 0.97 - 0.5 * Math.abs(one - other) / (LEGS_DIFFER * Math.max(one, other));
    }

    static List<Legs> of(List<Path> lines) {
        List<Legs> all = new ArrayList<>();
        boolean hatched = lines.stream().filter(Legs::isLong).count() > MOST_LEGS;
        for (int i = 0; i < lines.size() && !hatched; i++) {
            Path line = lines.get(i);
            if (line.segments().size() == 2 && !line.isClosed()) {
                add(all, line.start(), line.segments().get(0).end(), line.end(), List.of(i));
            }
            for (int j = i + 1; j < lines.size() && isLong(line); j++) {
                if (isLong(lines.get(j))) {
                    meet(all, line, lines.get(j), List.of(i, j));
                }
            }
        }
        return all;
    }

    private static boolean isLong(Path line) {
        return line.length() >= SHORTEST_MM
                && line.length() < 1.02 * line.start().distanceTo(line.end());
    }

    private static void meet(List<Legs> all, Path a, Path b, List<Integer> places) {
        for (Path p : List.of(a, a.reversed())) {
            for (Path q : List.of(b, b.reversed())) {
                if (p.end().isNear(q.start(), MEET_MM)) {
                    add(all, p.start(), p.end(), q.end(), places);
                }
            }
        }
    }

    private static void add(List<Legs> all, Point from, Point apex, Point to, List<Integer> places) {
        double one = from.distanceTo(apex);
        double other = to.distanceTo(apex);
        boolean alike = Math.abs(one - other) <= LEGS_DIFFER * Math.max(one, other);
        if (alike && Math.min(one, other) >= SHORTEST_MM && from.distanceTo(to) < Math.min(one, other) * 1.2) {
            all.add(new Legs(from, apex, to, places));
        }
    }
}
