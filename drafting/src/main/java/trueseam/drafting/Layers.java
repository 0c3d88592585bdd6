package trueseam.drafting;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** Pieces that lie on the pieces of a shell: neck facings and linings, as demo pieces for what follows an alteration. */
public final class Layers {

    private static final double SEAM_MM = Allowances.inches().seamMm();

    private Layers() {}

    /**
     * A shell with a facing for the neck of every front and back: along shoulder and centre for the width, its free edge a curve.
     *
     * @param shell a bodice or dress
     * @param widthMm the width of the facing, mm; shorter than every shoulder
     * @return the shell with its facings
     * @throws IllegalArgumentException if the shell has no neck
     */
    public static Pattern withNeckFacings(Pattern shell, double widthMm) {
        List<Piece> pieces = new ArrayList<>(shell.pieces());
        List<Seam> seams = new ArrayList<>(shell.seams());
        for (Piece piece : shell.pieces()) {
            if (!piece.edgesOf(EdgeRole.NECK).isEmpty()) {
                Piece facing = neckFacing(piece, widthMm);
                pieces.add(facing);
                String neck = piece.only(EdgeRole.NECK).name();
                seams.add(Seam.of(facing.name(), new EdgeRef(piece.name(), neck), new EdgeRef(facing.name(), neck), 0));
            }
        }
        if (pieces.size() == shell.pieces().size()) {
            throw new IllegalArgumentException(shell.name() + " has no neck to be faced.");
        }
        return with(shell, pieces, seams);
    }

    /** Anticlockwise: the shoulder towards the neck, the neck, the centre, and the free edge back to the shoulder. */
    private static Piece neckFacing(Piece piece, double widthMm) {
        Edge neck = piece.only(EdgeRole.NECK);
        Edge shoulder = piece.only(EdgeRole.SHOULDER);
        Edge centre = piece.only(EdgeRole.CENTRE);
        boolean neckFollows = shoulder.path().end().isNear(neck.path().start(), Path.CHAIN_MM);
        Path along = neckFollows
                ? shoulder.path().part(shoulder.length() - widthMm, shoulder.length())
                : shoulder.path().part(0, widthMm);
        Path down = neckFollows
                ? centre.path().part(0, widthMm)
                : centre.path().part(centre.length() - widthMm, centre.length());
        Point from = neckFollows ? down.end() : along.end();
        Point to = neckFollows ? along.start() : down.start();
        Path free = Path.of(free(from, to, neckFollows));
        PieceBuilder facing = new PieceBuilder(piece.name() + " neck facing", PieceKind.FACING).cut(1);
        if (neckFollows) {
            facing.edge(shoulder.name(), EdgeRole.SHOULDER, along, SEAM_MM)
                    .edge(neck.name(), EdgeRole.NECK, neck.path(), SEAM_MM)
                    .edge(centre.name(), EdgeRole.CENTRE, down, centre.allowanceMm())
                    .edge("free edge", EdgeRole.OTHER, free, 0);
        } else {
            facing.edge(centre.name(), EdgeRole.CENTRE, down, centre.allowanceMm())
                    .edge(neck.name(), EdgeRole.NECK, neck.path(), SEAM_MM)
                    .edge(shoulder.name(), EdgeRole.SHOULDER, along, SEAM_MM)
                    .edge("free edge", EdgeRole.OTHER, free, 0);
        }
        if (piece.fold().isPresent()) {
            facing.onFold(centre.name());
        }
        Point middle = free.pointAt(free.length() / 2);
        return facing.grain(new Grain(middle.plus(new Vec(0, 5)), middle.plus(new Vec(0, widthMm / 2))))
                .build();
    }

    /** Square from the centre, running into the shoulder. */
    private static Cubic free(Point from, Point to, boolean fromCentre) {
        Point centre = fromCentre ? from : to;
        Point shoulder = fromCentre ? to : from;
        Point one = new Point(centre.x() + 0.55 * (shoulder.x() - centre.x()), centre.y());
        Point other = new Point(shoulder.x(), centre.y() + 0.45 * (shoulder.y() - centre.y()));
        return fromCentre ? new Cubic(from, one, other, to) : new Cubic(from, other, one, to);
    }

    /**
     * A shell with a lining of every piece that it has.
     *
     * @param shell the shell
     * @return the shell with its linings
     */
    public static Pattern withLining(Pattern shell) {
        List<Piece> pieces = new ArrayList<>(shell.pieces());
        for (Piece piece : shell.pieces()) {
            if (!piece.kind().isFollower()) {
                pieces.add(new Piece(
                        piece.name() + " lining",
                        PieceKind.LINING,
                        piece.cutCount(),
                        piece.fold(),
                        piece.edges(),
                        piece.darts(),
                        piece.notches(),
                        piece.landmarks(),
                        piece.levels(),
                        piece.markings(),
                        piece.grain()));
            }
        }
        return with(shell, pieces, shell.seams());
    }

    private static Pattern with(Pattern shell, List<Piece> pieces, List<Seam> seams) {
        return new Pattern(
                shell.name(), shell.size(), shell.sizeTable(), shell.source(), pieces, seams, shell.easeMm());
    }
}
