package trueseam.drafting;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * Adds straight bands to a drafted shell: a waistband, cuffs, a neckband; and a shaped collar. A band is drawn upright along its grain;
 * its right edge is sewn to the shell and is as long; what is added later goes in at its upper end, for a waistband and a neckband the
 * centre back. A collar is drawn with its centre back upright, and that is where what is added later goes in.
 */
public final class Bands {

    private static final Allowances AROUND = Allowances.inches();

    private Bands() {}

    /**
     * A waistband for a skirt or trousers, half of it, on the fold at the centre front, open at the centre back.
     *
     * @param shell a skirt or trousers
     * @param heightMm finished height, mm
     * @return the shell with a piece {@code waistband}
     */
    public static Pattern withWaistband(Pattern shell, double heightMm) {
        return with(
                shell, PieceKind.WAISTBAND, "waistband", EdgeRole.WAIST, heightMm, 1, "centre front", "centre back");
    }

    /**
     * A channel for a drawstring at the waist of a skirt or trousers: as a waistband, but with its cord in it.
     *
     * @param shell a skirt or trousers
     * @param heightMm finished height, mm
     * @return the shell with a piece {@code drawstring channel}
     */
    public static Pattern withChannel(Pattern shell, double heightMm) {
        return with(
                shell,
                PieceKind.WAISTBAND,
                "drawstring channel",
                EdgeRole.WAIST,
                heightMm,
                1,
                "centre front",
                "centre back");
    }

    /**
     * Cuffs for the sleeves of a bodice or dress.
     *
     * @param shell a bodice or dress
     * @param heightMm finished height, mm
     * @return the shell with a piece {@code cuff}, cut twice
     */
    public static Pattern withCuffs(Pattern shell, double heightMm) {
        return with(shell, PieceKind.CUFF, "cuff", EdgeRole.WRIST, heightMm, 2, "", "end");
    }

    /**
     * A neckband or straight collar for a bodice or dress, half of it, on the fold at the centre front, open at the centre back.
     *
     * @param shell a bodice or dress
     * @param heightMm finished height, mm
     * @return the shell with a piece {@code neckband}
     */
    public static Pattern withNeckband(Pattern shell, double heightMm) {
        return with(shell, PieceKind.COLLAR, "neckband", EdgeRole.NECK, heightMm, 1, "centre front", "centre back");
    }

    /**
     * A convertible collar for a bodice or dress, half of it, on the fold at the centre back, open at the centre front; cut twice, for the
     * collar and the under collar.
     *
     * @param shell a bodice or dress
     * @param heightMm finished height at the centre back, mm
     * @return the shell with a piece {@code collar}
     */
    public static Pattern withCollar(Pattern shell, double heightMm) {
        List<EdgeRef> necks = sewnTo(shell, "collar", EdgeRole.NECK);
        double back = 0;
        for (EdgeRef neck : necks) {
            Piece piece = shell.piece(neck.piece());
            back += piece.kind().isBack() ? piece.sewnLength(neck.edge()) : 0;
        }
        Piece collar = CollarDraft.piece(shell.name(), back, shell.sewnLength(necks) - back, heightMm);
        return sewn(shell, collar, "neck", necks);
    }

    private static Pattern with(
            Pattern shell,
            PieceKind kind,
            String name,
            EdgeRole sewn,
            double heightMm,
            int cut,
            String fold,
            String upperEnd) {
        if (!(heightMm > 0)) {
            throw new IllegalArgumentException(
                    "A " + name + " of " + heightMm + " mm is not possible; give more than 0.");
        }
        List<EdgeRef> to = sewnTo(shell, name, sewn);
        double length = shell.sewnLength(to);
        double seam = AROUND.seamMm();
        String lowerEnd = fold.isEmpty() ? "other end" : fold;
        Point corner = new Point(heightMm, 0);
        Point top = new Point(heightMm, length);
        PieceBuilder band = new PieceBuilder(name, kind)
                .cut(cut)
                .edge(lowerEnd, EdgeRole.OTHER, Path.through(Point.ORIGIN, corner), fold.isEmpty() ? seam : 0)
                .edge(sewn.word(), sewn, Path.through(corner, top), seam)
                .edge(upperEnd, EdgeRole.CENTRE, Path.through(top, new Point(0, length)), seam)
                .edge("free edge", EdgeRole.OTHER, Path.through(new Point(0, length), Point.ORIGIN), seam)
                .grain(new Grain(new Point(heightMm / 2, 0.2 * length), new Point(heightMm / 2, 0.8 * length)));
        if (!fold.isEmpty()) {
            band.onFold(fold).notch(sewn.word(), frontMm(shell, to), Notch.Kind.SINGLE);
        }
        return sewn(shell, band.build(), sewn.word(), to);
    }

    /** From the centre front to the side or shoulder seam, where the band has its notch. */
    private static double frontMm(Pattern shell, List<EdgeRef> to) {
        return shell.sewnLength(to.stream()
                .filter(ref -> shell.piece(ref.piece()).kind().isFront())
                .toList());
    }

    /** The edges that a band is sewn to; a facing or a band lies on them and is none of them. */
    private static List<EdgeRef> sewnTo(Pattern shell, String name, EdgeRole role) {
        List<EdgeRef> to = new ArrayList<>();
        for (Piece piece : shell.pieces()) {
            for (Edge edge : piece.kind().isFollower() ? List.<Edge>of() : piece.edgesOf(role)) {
                to.add(new EdgeRef(piece.name(), edge.name()));
            }
        }
        if (to.isEmpty()) {
            throw new IllegalArgumentException(
                    "A " + name + " needs a " + role.word() + " to be sewn to, and the " + shell.name() + " has none.");
        }
        return to;
    }

    private static Pattern sewn(Pattern shell, Piece band, String edge, List<EdgeRef> to) {
        List<Piece> pieces = new ArrayList<>(shell.pieces());
        pieces.add(band);
        List<Seam> seams = new ArrayList<>(shell.seams());
        seams.add(new Seam(band.name(), to, List.of(new EdgeRef(band.name(), edge)), 0));
        return new Pattern(
                shell.name(), shell.size(), shell.sizeTable(), shell.source(), pieces, seams, shell.easeMm());
    }
}
