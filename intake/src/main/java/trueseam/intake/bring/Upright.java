package trueseam.intake.bring;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import trueseam.garment.pattern.Grain;
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
public record Upright(boolean mirrored, Motion motion) {

    /** As it lies in the drawing. */
    static final Upright AS_DRAWN = new Upright(false, Motion.NONE);

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

    /** Turned so that its grainline, up or down, stands upright. */
    static Upright hanging(Grain grain) {
        double off = Math.PI / 2 - grain.to().minus(grain.from()).angle();
        return new Upright(false, Motion.pivot(Point.ORIGIN, Math.IEEEremainder(off, Math.PI)));
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

    /** Where a point that lies so was drawn. */
    Point undone(Point lying) {
        Point p = motion.inverse().apply(lying);
        return mirrored ? Mirror.of(p) : p;
    }

    /**
     * Where a line that lies so was drawn.
     *
     * @param lying a line of the piece
     * @return the line in the drawing
     */
    public Path undone(Path lying) {
        Path back = lying.moved(motion.inverse());
        return mirrored ? Mirror.of(back) : back;
    }

    /** The number of the longest upright straight line that is left, which is taken for the grain. */
    Optional<Integer> grain(InnerLines lines) {
        List<Path> all = lines.all();
        return IntStream.range(0, all.size())
                .filter(lines::isLeft)
                .filter(i -> all.get(i).length() >= LEAST_GRAIN_MM
                        && all.get(i).length()
                                < 1.0005
                                        * all.get(i)
                                                .start()
                                                .distanceTo(all.get(i).end())
                        && Math.abs(all.get(i).end().x() - all.get(i).start().x())
                                < 0.01 * all.get(i).length() + 0.2)
                .boxed()
                .max(Comparator.comparingDouble(i -> all.get(i).length()));
    }
}
