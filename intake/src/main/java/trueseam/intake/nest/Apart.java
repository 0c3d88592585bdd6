package trueseam.intake.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** How far one line lies from another, all along. */
final class Apart {

    private static final int PLACES = 160;

    /** Allowances are drawn as exactly as this; corners round a little. */
    private static final double ALIKE_MM = 0.15;

    /** Seam, hem, neck and one more: no piece has more allowances that differ. */
    private static final int ALLOWANCES = 4;

    private static final double MOST = 0.9;

    /** Less is no seam allowance (1/8 in, common practice for lingerie); more is none either, hems included. */
    private static final double LEAST_MM = 3;

    private static final double WIDEST_MM = 80;

    private static final double ON_MM = 0.05;

    private static final double STRAIGHT_MM = 0.5;

    private record Place(Point at, double mm) {}

    private final List<Place> places;

    private Apart(List<Place> places) {
        this.places = places;
    }

    /**
     * Holds a line against others.
     *
     * @param line the line walked
     * @param others what it is held against; at each place the nearest counts
     */
    static Apart from(Path line, List<Path> others) {
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < PLACES; i++) {
            Point p = line.pointAt((i + 0.5) * line.length() / PLACES);
            double mm = others.stream()
                    .filter(o -> o.bounds().grown(WIDEST_MM).meets(Bounds.of(p, p), 0))
                    .mapToDouble(o -> o.nearest(p).point().distanceTo(p))
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
            places.add(new Place(p, mm));
        }
        return new Apart(places);
    }

    /** Whether the one lies on the other all the way. */
    boolean isOn() {
        return places.stream().allMatch(p -> p.mm <= ON_MM);
    }

    /** Whether the two meet nowhere but along one straight line, the fold: sizes that are laid together touch elsewhere too. */
    boolean isClear() {
        return areOnOneLine(
                places.stream().filter(p -> p.mm < LEAST_MM).map(Place::at).toList());
    }

    /** Whether the distance is one of a few, each kept for a stretch, and none but along one straight line. */
    boolean isAllowance() {
        List<Double> apart =
                places.stream().map(Place::mm).filter(mm -> mm >= ON_MM).toList();
        List<Point> touching =
                places.stream().filter(p -> p.mm < ON_MM).map(Place::at).toList();
        return !apart.isEmpty() && areOnOneLine(touching) && areFew(apart);
    }

    private static boolean areFew(List<Double> apart) {
        List<Double> left = new ArrayList<>(apart);
        for (int i = 0; i < ALLOWANCES; i++) {
            double middle = commonest(left);
            if (LEAST_MM <= middle && middle <= WIDEST_MM) {
                left.removeIf(mm -> Math.abs(mm - middle) <= ALIKE_MM);
            }
        }
        return left.size() <= (1 - MOST) * apart.size();
    }

    private static double commonest(List<Double> all) {
        double best = 0;
        long most = 0;
        for (double mm : all) {
            long alike = all.stream().filter(o -> Math.abs(o - mm) <= ALIKE_MM).count();
            if (alike > most) {
                most = alike;
                best = mm;
            }
        }
        return best;
    }

    private static boolean areOnOneLine(List<Point> points) {
        if (points.size() < 3) {
            return true;
        }
        Point a = points.get(0);
        Point far =
                points.stream().max(Comparator.comparingDouble(a::distanceTo)).orElseThrow();
        Vec along = far.minus(a).unit();
        return points.stream().allMatch(p -> Math.abs(along.cross(p.minus(a))) < STRAIGHT_MM);
    }
}
