package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Stretch;
import trueseam.garment.flat.Overarm;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** The sleeve of a kimono piece: its edges and the places on them, whichever way the piece lies. */
final class KimonoSleeve {

    /**
     * So much of a difference between front and back is left to the walking of the seam, at the wrist: a line drawn fuller to hold it
     * would wave. It is what a seam is usually trued within [THR200].
     */
    static final double WALKED_MM = 3;

    private static final double SAME_PLACE_MM = 1e-6;

    final Piece piece;
    final Edge over;
    final Edge under;
    final Edge wrist;

    private KimonoSleeve(Piece piece) {
        this.piece = piece;
        this.over = piece.only(EdgeRole.OVERARM);
        this.under = piece.only(EdgeRole.UNDERARM);
        this.wrist = piece.only(EdgeRole.WRIST);
    }

    /** The sleeves of every kimono piece. */
    static List<KimonoSleeve> of(Pattern pattern) {
        List<KimonoSleeve> all = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            if (piece.kind().isKimono()) {
                all.add(new KimonoSleeve(piece));
            }
        }
        return all;
    }

    /**
     * The curve from the side into the sleeve; nothing for any other piece.
     *
     * @param farMm how much farther it goes than to where the upper arm is read
     */
    static Optional<Stretch> turn(Piece piece, double farMm) {
        if (!piece.kind().isKimono()) {
            return Optional.empty();
        }
        KimonoSleeve sleeve = new KimonoSleeve(piece);
        Stretch turn = sleeve.turn();
        double far = Math.min(farMm, (sleeve.under.length() - turn.lengthMm()) / 2);
        return Optional.of(
                sleeve.isUnderOutwards()
                        ? new Stretch(turn.edge(), turn.fromMm(), turn.toMm() + far)
                        : new Stretch(turn.edge(), turn.fromMm() - far, turn.toMm()));
    }

    /** Whether the seam under the arm is drawn from the body to the wrist. */
    boolean isUnderOutwards() {
        return meetsWrist(under.path().end());
    }

    /** Whether the seam over the arm is drawn from the wrist to the shoulder. */
    boolean isOverInwards() {
        return meetsWrist(over.path().start());
    }

    private boolean meetsWrist(Point p) {
        return p.isNear(wrist.path().start(), SAME_PLACE_MM)
                || p.isNear(wrist.path().end(), SAME_PLACE_MM);
    }

    /** Down the arm, along the overarm seam at the wrist. */
    Vec out() {
        return isOverInwards()
                ? over.path().startTangent().reversed()
                : over.path().endTangent();
    }

    /** Square to the overarm, towards the seam under the arm. */
    Vec down() {
        Vec square = out().right();
        Vec across = underWrist().on(piece).minus(overWrist().on(piece));
        return square.dot(across) > 0 ? square : square.reversed();
    }

    /** Where the seam under the arm meets the wrist. */
    Place underWrist() {
        String word = "wrist at the underarm seam";
        return isUnderOutwards() ? Place.endOf(piece, under.name(), word) : Place.startOf(under.name(), word);
    }

    private Place overWrist() {
        String word = "wrist at the overarm seam";
        return isOverInwards() ? Place.startOf(over.name(), word) : Place.endOf(piece, over.name(), word);
    }

    /** Where the upper arm is read on the seam under the arm. */
    Place upperArm() {
        double along = Overarm.upperArmPlace(piece)
                .orElseThrow(() -> new AlterationException(
                        piece.name(),
                        under.name(),
                        0,
                        "square to the overarm, 2 in below the underarm point, there is no such seam; name the edges of the"
                                + " piece."))
                .alongMm();
        return new Place(under.name(), along, "underarm seam at the upper arm");
    }

    /** From the underarm point to the upper arm. */
    Stretch turn() {
        double at = upperArm().alongMm();
        return isUnderOutwards() ? new Stretch(under.name(), 0, at) : new Stretch(under.name(), at, under.length());
    }

    /** From the upper arm to the wrist. */
    Stretch straight() {
        double at = upperArm().alongMm();
        return isUnderOutwards() ? new Stretch(under.name(), at, under.length()) : new Stretch(under.name(), 0, at);
    }
}
