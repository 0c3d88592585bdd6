package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Stretch;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Crotch length of the front and of the back, each by its own share: the crotch point moves out or in, tapering along the
 * inseam to the knee; what the crotch point cannot take, the waist at the centre takes, rising or falling to nothing at the
 * side (common practice).
 *
 * <p>Moves the upper inseam and the crotch point. Pin: the knee on the inseam; the side waist for the waist. Must stay: inseam
 * length, waist length, the other piece. Trued: the crotch curve, drawn new into the moved point.
 *
 * @param frontPointMm how far the front crotch point moves out, mm
 * @param frontWaistMm how far the centre front waist rises, mm
 * @param backPointMm how far the back crotch point moves out, mm
 * @param backWaistMm how far the centre back waist rises, mm
 */
public record CrotchLength(double frontPointMm, double frontWaistMm, double backPointMm, double backWaistMm)
        implements Alteration {

    /** How much of the crotch seam is drawn new into a moved crotch point. */
    private static final double REDRAWN_SHARE = 0.35;

    /** How much of the centre seam is drawn new into a moved waist. */
    private static final double WAIST_SHARE = 0.25;

    /** The part drawn new must keep this share of its way: with less it would fold back on itself. Ours. */
    private static final double LEAST_WAY = 0.1;

    @Override
    public String title() {
        return "Crotch length, front and back by their own shares";
    }

    @Override
    public List<PieceWork> work(Pattern pattern) {
        List<PieceWork> work = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            if (piece.kind() == PieceKind.TROUSER_FRONT) {
                add(work, piece, frontPointMm, frontWaistMm);
            } else if (piece.kind() == PieceKind.TROUSER_BACK) {
                add(work, piece, backPointMm, backWaistMm);
            }
        }
        return work;
    }

    private static void add(List<PieceWork> work, Piece piece, double pointMm, double waistMm) {
        if (pointMm == 0 && waistMm == 0) {
            return;
        }
        StepList list = new StepList(piece);
        if (pointMm != 0) {
            movePoint(list, piece, pointMm);
        }
        if (waistMm != 0) {
            if (pointMm != 0) {
                list.add(new Step.LayBack());
            }
            moveWaist(list, piece, waistMm);
        }
        work.add(new PieceWork(piece.name(), list.finished()));
    }

    private static void movePoint(StepList list, Piece piece, double outMm) {
        Edge crotch = piece.only(EdgeRole.CROTCH);
        Edge inseam = piece.only(EdgeRole.INSEAM);
        double outward = -new Flank(piece).outward();
        boolean pointAtStart = inseam.path().start().y() > inseam.path().end().y();
        Place point = pointAtStart
                ? Place.startOf(inseam.name(), "crotch point")
                : Place.endOf(piece, inseam.name(), "crotch point");
        double knee = kneeOn(piece, inseam);
        list.add(new Step.Mark("crotch mark", point, outward * outMm, 0));
        list.add(new Step.Pin(new Place(inseam.name(), knee, "knee on the inseam")));
        list.add(new Step.Pivot(new Until.MeetsAcross(point, "crotch mark")));
        list.trace(inseam.name(), Math.min(knee, point.alongMm()), Math.max(knee, point.alongMm()));
        double whole = crotch.length();
        boolean crotchEndsThere = pointAtStart;
        Stretch drawn = new Stretch(
                crotch.name(),
                crotchEndsThere ? whole * (1 - REDRAWN_SHARE) : 0,
                crotchEndsThere ? whole : whole * REDRAWN_SHARE);
        requireRoom(piece, crotch.path(), drawn, new Vec(outward * outMm, 0), outMm, "crotch point");
        list.join(drawn.edge(), drawn.fromMm(), drawn.toMm(), JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
    }

    /**
     * Refuses an amount that takes away so much of the part drawn new that the curve would fold or cross itself.
     *
     * @param moved how its outer end moves; its inner end stays
     */
    private static void requireRoom(Piece piece, Path crotch, Stretch drawn, Vec moved, double amountMm, String place) {
        boolean outerAtEnd = drawn.fromMm() > 0;
        Point inner = crotch.pointAt(outerAtEnd ? drawn.fromMm() : drawn.toMm());
        Point outer = crotch.pointAt(outerAtEnd ? drawn.toMm() : drawn.fromMm());
        double way = outer.minus(inner).dot(moved.unit());
        boolean shrinks = way < 0;
        if (shrinks && -way - moved.length() < LEAST_WAY * -way) {
            throw new AlterationException(
                    piece.name(),
                    drawn.edge(),
                    amountMm,
                    String.format(
                            Locale.ROOT,
                            "%.0f mm are to be taken away at the %s, and the curve drawn into it would fold at more than"
                                    + " %.0f mm; alter the crotch depth or take a smaller size.",
                            Math.ceil(Math.abs(amountMm)),
                            place,
                            Math.floor((1 - LEAST_WAY) * -way)));
        }
    }

    private static double kneeOn(Piece piece, Edge inseam) {
        return piece.level(LevelName.KNEE).stream()
                .boxed()
                .flatMap(y -> inseam.path().atLevel(y).stream())
                .mapToDouble(PathPlace::alongMm)
                .findFirst()
                .orElseThrow(() -> new AlterationException(
                        piece.name(),
                        inseam.name(),
                        0,
                        "the knee level does not cross this edge; mark the knee level."));
    }

    private static void moveWaist(StepList list, Piece piece, double riseMm) {
        Edge waist = piece.only(EdgeRole.WAIST);
        Edge crotch = piece.only(EdgeRole.CROTCH);
        Flank flank = new Flank(piece);
        boolean centreAtEnd = flank.upwards;
        double whole = crotch.length();
        Stretch drawn = new Stretch(
                crotch.name(), centreAtEnd ? 0 : whole * (1 - WAIST_SHARE), centreAtEnd ? whole * WAIST_SHARE : whole);
        requireRoom(piece, crotch.path(), drawn, new Vec(0, riseMm), riseMm, "waist at the centre");
        Place centre = centreAtEnd
                ? Place.endOf(piece, waist.name(), "waist at the centre")
                : Place.startOf(waist.name(), "waist at the centre");
        list.add(new Step.Mark("waist rise mark", centre, 0, riseMm));
        list.add(new Step.Pin(flank.top("side waist")));
        list.add(new Step.Pivot(new Until.MeetsAlong(centre, "waist rise mark")));
        list.trace(waist.name(), 0, waist.length());
        JoinForm form = centreAtEnd
                ? JoinForm.curve(Direction.FREE, Direction.AS_DRAWN)
                : JoinForm.curve(Direction.AS_DRAWN, Direction.FREE);
        list.join(drawn.edge(), drawn.fromMm(), drawn.toMm(), form);
    }
}
