package trueseam.drafting;

import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * A convertible collar, half of it, on the fold at the centre back.
 *
 * <pre>{@code
 *   centre back               point
 *        |------ outer edge -----/     The neck edge is straight along the back neck, where what
 *        |                      /      is added or taken at the centre back goes in, and rises
 *        |                __.--'       from the shoulder to the centre front, so that the collar
 *        |---------------'             hugs the neck in front.
 *           back neck   front neck
 * }</pre>
 *
 * Its notch lies where the shoulder seam meets it. Source: common practice, the measures from memory.
 */
final class CollarDraft {

    /** How far the neck edge rises to the centre front: 1/2 in. */
    private static final double RISE_MM = 12.7;

    /** How far the point stands out beyond the neck at the centre front. */
    private static final double POINT_MM = 15;

    /** A lower collar has no room for the rise of its neck edge and a point. */
    private static final double LOWEST_MM = 3 * RISE_MM;

    private CollarDraft() {}

    /**
     * The collar.
     *
     * @param shell what it is sewn to
     * @param backMm length of half the back neck
     * @param frontMm length of half the front neck
     * @param heightMm finished height at the centre back
     */
    static Piece piece(String shell, double backMm, double frontMm, double heightMm) {
        if (!(heightMm >= LOWEST_MM)) {
            throw new IllegalArgumentException("A collar of " + heightMm
                    + " mm is too low for its neck edge to be shaped; give 1 1/2 in or more, or a neckband.");
        }
        double seam = Allowances.inches().seamMm();
        Path neck = neck(shell, backMm, frontMm);
        Point top = new Point(0, heightMm);
        Point point = new Point(neck.end().x() + POINT_MM, heightMm);
        return new PieceBuilder("collar", PieceKind.COLLAR)
                .cut(2)
                .edge("neck", EdgeRole.NECK, neck, seam)
                .edge("front edge", EdgeRole.OTHER, Path.through(neck.end(), point), seam)
                .edge("outer edge", EdgeRole.OTHER, Path.through(point, top), seam)
                .edge("centre back", EdgeRole.CENTRE, Path.through(top, Point.ORIGIN), 0)
                .onFold("centre back")
                .notch("neck", backMm, Notch.Kind.SINGLE)
                .grain(new Grain(new Point(backMm / 2, 0.2 * heightMm), new Point(backMm / 2, 0.8 * heightMm)))
                .build();
    }

    private static Path neck(String shell, double backMm, double frontMm) {
        Point shoulder = new Point(backMm, 0);
        double[] across = {frontMm};
        Path[] line = new Path[1];
        Settling.of(
                share -> {
                    Point front = new Point(backMm + across[0], RISE_MM);
                    // An arc that leaves level ends twice as steep as its chord.
                    line[0] = Path.of(
                            new Line(Point.ORIGIN, shoulder),
                            Joining.smooth(shoulder, new Vec(1, 0), front, new Vec(across[0], 2 * RISE_MM)));
                    double miss = backMm + frontMm - line[0].length();
                    across[0] += share * miss;
                    return Math.abs(miss);
                },
                shell,
                Measure.NECK_BASE_GIRTH);
        return line[0];
    }
}
