package trueseam.worktable.cloth;

import java.util.Optional;
import trueseam.cloth.lay.ClothPart;
import trueseam.cloth.lay.CutForm;
import trueseam.cloth.lay.LaidPiece;
import trueseam.cloth.lay.Spot;
import trueseam.cloth.lay.Turns;
import trueseam.cloth.packing.Way;
import trueseam.worktable.page.Visit;

/** What a hand does with a piece: moves it by dx and dy millimetres, or turns it. */
final class HandMove {

    private HandMove() {}

    static Spot of(Plan base, LaidPiece piece, Visit visit) {
        String how = visit.field("how");
        if (how.isEmpty()) {
            return base.laying().moved(piece, number(visit, "dx"), number(visit, "dy"));
        }
        return base.laying().turned(piece, way(base, piece, how));
    }

    private static Way way(Plan base, LaidPiece piece, String how) {
        ClothPart part = piece.part();
        Way now = piece.placed().way();
        double most = base.laying().wishes().tiltDegrees();
        String name = part.piece().name();
        Optional<Way> way =
                switch (how) {
                    case "round" -> Turns.headToTail(part, now);
                    case "over" -> Turns.turnedOver(part, now);
                    case "left" -> Turns.tilted(part, now, STEP_DEGREES, most);
                    case "right" -> Turns.tilted(part, now, -STEP_DEGREES, most);
                    default -> throw new ClothException("A piece is turned round, over, left or right.");
                };
        return way.orElseThrow(() -> new ClothException(
                switch (how) {
                    case "round" -> name + " stays as it lies: on this cloth all pieces lie one way up.";
                    case "over" ->
                        name
                                + (part.form() == CutForm.DRAWN
                                        ? " stays on this face: turned over it would give two lefts or two rights."
                                        : " is its own mirror image, so turning it over changes nothing.");
                    default ->
                        name
                                + (part.form() == CutForm.AT_FOLD
                                        ? " lies at the fold and cannot be tilted."
                                        : most == 0
                                                ? " stays on the grain; say first by how much pieces may be tilted."
                                                : " is tilted as far as you allow.");
                }));
    }

    /** How far a piece is tilted at once, degrees. */
    private static final double STEP_DEGREES = 0.5;

    static double number(Visit visit, String field) {
        try {
            double value = Double.parseDouble(visit.field(field));
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // Said below.
        }
        throw new ClothException("Take hold of a piece on the cloth, then move it.");
    }
}
