package trueseam.fitting.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * One side of a seam rolled along the other.
 *
 * <p>Laws: (1) at every contact both edges are walked equally far, and the rolling edge touches the standing one there in the same
 * direction; (2) what is left over is the second sewn length less the first; (3) where the standing edge has a dart, the piece is lifted
 * over its mouth; at a corner it turns on the spot.
 *
 * @param seam the seam
 * @param standing the pieces that stay, laid end to end
 * @param contacts positions of the rolling side from the beginning to where the shorter side ends, at least two
 * @param landings where notches land, in the order of walking
 * @param firstMm sewn length of the standing side
 * @param secondMm sewn length of the rolling side
 * @param left the line that is left over where it lies at the end; nothing if both end together
 */
public record SeamWalk(
        Seam seam,
        List<Sheet> standing,
        List<Contact> contacts,
        List<Landing> landings,
        double firstMm,
        double secondMm,
        Optional<Path> left) {

    /** Positions are no farther apart than this, mm: finer than an eye follows. */
    private static final double STEP_MM = 4;

    /** A rest shorter than this is none. */
    private static final double NOTHING_MM = 1e-6;

    // Immutable.
    public SeamWalk {
        standing = List.copyOf(standing);
        contacts = List.copyOf(contacts);
        landings = List.copyOf(landings);
    }

    /**
     * Walks a seam.
     *
     * @param pattern the pattern
     * @param seam one of its seams
     * @return the walk, the second side rolling along the first
     */
    public static SeamWalk of(Pattern pattern, Seam seam) {
        Sides sides = Sides.of(pattern, seam);
        Way standing = Way.laid(sides.standing());
        Way rolling = Way.loose(sides.rolling());
        double walked = Math.min(standing.lengthMm(), rolling.lengthMm());
        List<Contact> contacts = contacts(standing, rolling, walked);
        return new SeamWalk(
                seam,
                standing.sheets(),
                contacts,
                landings(sides, standing),
                standing.lengthMm(),
                rolling.lengthMm(),
                left(standing, rolling, walked, contacts.get(contacts.size() - 1)));
    }

    /**
     * What is left over at the end.
     *
     * @return sewn length of the second side less that of the first, mm; positive where the rolling side is longer
     */
    public double leftOverMm() {
        return secondMm - firstMm;
    }

    /**
     * What is left over beyond the ease that is meant.
     *
     * @return mm, 0 where the seam walks
     */
    public double mismatchMm() {
        return leftOverMm() - seam.easeMm();
    }

    private static List<Contact> contacts(Way standing, Way rolling, double walked) {
        TreeSet<Double> stops = new TreeSet<>(standing.stops());
        stops.addAll(rolling.stops());
        stops.removeIf(mm -> mm >= walked - NOTHING_MM);
        stops.add(walked);
        List<Contact> contacts = new ArrayList<>();
        double from = 0;
        for (double to : stops) {
            if (to - from > NOTHING_MM) {
                stretch(standing.between(from, to), rolling.between(from, to), from, contacts);
                from = to;
            }
        }
        return contacts;
    }

    /** A stretch without corners on either edge. */
    private static void stretch(Way.Stroke on, Way.Stroke of, double from, List<Contact> contacts) {
        double mm = Math.min(on.path().length(), of.path().length());
        int steps = Math.max(1, (int) Math.ceil(mm / STEP_MM));
        for (int i = 0; i <= steps; i++) {
            double at = mm * i / steps;
            Point point = on.path().pointAt(at);
            Point foot = of.path().pointAt(at);
            Motion pose = laid(foot, tangent(of.path(), at), point, tangent(on.path(), at));
            contacts.add(new Contact(from + at, of.link().lying(pose), point));
        }
    }

    /** At the end of a stroke the direction in which it arrives, not that of what comes after. */
    private static Vec tangent(Path path, double at) {
        return at >= path.length() - NOTHING_MM ? path.endTangent() : path.tangentAt(at);
    }

    static Motion laid(Point from, Vec direction, Point to, Vec wanted) {
        return Motion.pivot(from, direction.angleTo(wanted)).then(Motion.slide(to.minus(from)));
    }

    private static Optional<Path> left(Way standing, Way rolling, double walked, Contact last) {
        if (standing.lengthMm() - walked > NOTHING_MM) {
            return standing.lastPart(walked);
        }
        return rolling.lengthMm() - walked > NOTHING_MM
                ? rolling.lastPart(walked).map(path -> path.moved(last.sheet().pose()))
                : Optional.empty();
    }

    private static List<Landing> landings(Sides sides, Way standing) {
        List<Marked> on = marked(sides.standing());
        List<Marked> of = marked(sides.rolling());
        List<Landing> landings = new ArrayList<>();
        on.forEach(notch -> landings.add(landing(false, notch, on, of, standing)));
        of.stream()
                .filter(notch -> notch.atMm <= standing.lengthMm())
                .forEach(notch -> landings.add(landing(true, notch, of, on, standing)));
        landings.sort((a, b) -> Double.compare(a.atMm(), b.atMm()));
        return landings;
    }

    private record Marked(String piece, Notch.Kind kind, double atMm) {}

    private static List<Marked> marked(List<Link> side) {
        List<Marked> found = new ArrayList<>();
        double before = 0;
        for (Link link : side) {
            for (Notch notch : link.piece().notches()) {
                double at = notch.edge().equals(link.edge().name()) ? link.walkedTo(notch) : -1;
                if (at >= 0) {
                    found.add(new Marked(link.piece().name(), notch.kind(), before + at));
                }
            }
            before += link.lengthMm();
        }
        return found;
    }

    private static Landing landing(
            boolean onRolling, Marked notch, List<Marked> own, List<Marked> others, Way standing) {
        Optional<Marked> partner =
                nearest(notch, others).filter(other -> nearest(other, own).equals(Optional.of(notch)));
        return new Landing(
                onRolling,
                notch.piece,
                notch.kind,
                notch.atMm,
                standing.pointAt(notch.atMm),
                partner.map(other -> OptionalDouble.of(other.atMm - notch.atMm)).orElse(OptionalDouble.empty()));
    }

    private static Optional<Marked> nearest(Marked notch, List<Marked> others) {
        return others.stream()
                .filter(other -> other.kind == notch.kind)
                .min(Comparator.comparingDouble(other -> Math.abs(other.atMm - notch.atMm)));
    }
}
