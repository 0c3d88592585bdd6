package trueseam.intake.bring;

import java.util.List;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.convert.Mirror;
import trueseam.intake.naming.Proposal;

/**
 * How a piece of the drawing comes to lie as pieces lie: head up, grain upright, its centre to the left.
 *
 * @param mirrored whether it is laid on its other face first
 * @param motion how it is then turned and shifted
 */
record Upright(boolean mirrored, Motion motion) {

    /** Lines as long as this may be a grainline, mm. */
    private static final double LEAST_GRAIN_MM = 60;

    /** A grainline drawn a little off is still meant: the piece is turned so that it stands upright. */
    private static final double GRAIN_WITHIN_RAD = Math.toRadians(6);

    /** As proposed, then turned the last bit so that the grainline, if one is drawn, stands upright. */
    static Upright of(Proposal proposal, List<Path> inside) {
        Upright rough = new Upright(proposal.mirrored(), proposal.turn());
        double best = LEAST_GRAIN_MM;
        double correct = 0;
        for (Path line : inside) {
            Path lying = rough.apply(line);
            Vec chord = lying.end().minus(lying.start());
            double off = Math.IEEEremainder(Math.PI / 2 - chord.angle(), Math.PI);
            if (lying.length() < 1.0005 * chord.length() && chord.length() > best && Math.abs(off) < GRAIN_WITHIN_RAD) {
                best = chord.length();
                correct = off;
            }
        }
        Motion turned = proposal.turn().then(Motion.pivot(Point.ORIGIN, correct));
        return new Upright(proposal.mirrored(), turned);
    }

    /** The same, shifted so that a point comes to the origin. */
    Upright withOrigin(Point p) {
        return new Upright(mirrored, motion.then(Motion.slide(Point.ORIGIN.minus(p))));
    }

    Point apply(Point p) {
        return motion.apply(mirrored ? Mirror.of(p) : p);
    }

    Path apply(Path path) {
        return (mirrored ? Mirror.of(path) : path).moved(motion);
    }

    /** The longest upright straight line, which is taken for the grain. */
    java.util.Optional<Path> grain(List<Path> inside) {
        return inside.stream()
                .map(this::apply)
                .filter(line -> line.length() >= LEAST_GRAIN_MM
                        && line.length() < 1.0005 * line.start().distanceTo(line.end())
                        && Math.abs(line.end().x() - line.start().x()) < 0.01 * line.length() + 0.2)
                .max(java.util.Comparator.comparingDouble(Path::length));
    }
}
