package trueseam.fitting.alteration;

import static trueseam.garment.pattern.EdgeRole.ARMHOLE;
import static trueseam.garment.pattern.EdgeRole.CAP;
import static trueseam.garment.pattern.EdgeRole.CENTRE;
import static trueseam.garment.pattern.EdgeRole.CROTCH;
import static trueseam.garment.pattern.EdgeRole.HEM;
import static trueseam.garment.pattern.EdgeRole.INSEAM;
import static trueseam.garment.pattern.EdgeRole.NECK;
import static trueseam.garment.pattern.EdgeRole.SHOULDER;
import static trueseam.garment.pattern.EdgeRole.SIDE;
import static trueseam.garment.pattern.EdgeRole.WAIST;

import java.util.EnumSet;
import java.util.Set;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/**
 * Which edges an alteration must leave untouched, from the column "unchanged" of the trade's list of alterations (section 4.3;
 * common practice). Edges that only keep their length or shape while they move are not here: the proofs hold those.
 */
final class StayingEdges {

    private static final Set<EdgeRole> ALL = EnumSet.allOf(EdgeRole.class);
    private static final Set<EdgeRole> NONE = EnumSet.noneOf(EdgeRole.class);

    private StayingEdges() {}

    /** The roles of edges of a piece that stay when one measure of a garment is altered. */
    static Set<EdgeRole> of(Measure measure, CapChoice cap, GarmentKind kind, Piece piece) {
        boolean sleeve = piece.kind() == PieceKind.SLEEVE;
        return switch (measure) {
            // "AH length, shoulder, neck, CF/CB": the armhole is carried, the rest stays.
            case BUST_GIRTH -> sleeve ? ALL : EnumSet.of(SHOULDER, NECK, CENTRE);
            case WAIST_GIRTH -> sleeve ? ALL : waist(kind);
            case HIP_GIRTH ->
                sleeve
                        ? ALL
                        : kind == GarmentKind.TROUSERS
                                ? EnumSet.of(CROTCH, INSEAM)
                                : EnumSet.of(ARMHOLE, SHOULDER, NECK, CENTRE);
            case BACK_WAIST_LENGTH, DRESS_LENGTH -> sleeve ? ALL : EnumSet.of(ARMHOLE, SHOULDER, NECK);
            case SKIRT_LENGTH, BODY_RISE -> EnumSet.of(WAIST);
            case INSIDE_LEG_LENGTH, TROUSER_LENGTH -> EnumSet.of(WAIST, CROTCH);
            case ARM_LENGTH, UPPER_ARM_LENGTH, WRIST_GIRTH -> sleeve ? EnumSet.of(CAP) : ALL;
            case UPPER_ARM_GIRTH ->
                sleeve
                        ? NONE
                        : cap == CapChoice.KEEP_CAP_HEIGHT ? ALL : EnumSet.of(SHOULDER, NECK, CENTRE, SIDE, WAIST, HEM);
            case FRONT_CROTCH_LENGTH -> piece.kind() == PieceKind.TROUSER_BACK ? ALL : EnumSet.of(SIDE, HEM);
            case BACK_CROTCH_LENGTH -> piece.kind() == PieceKind.TROUSER_FRONT ? ALL : EnumSet.of(SIDE, HEM);
            // The hip curve lies between waist and hip of the side; hem and waist beside it are trued.
            case TOP_HIP_GIRTH -> sleeve ? ALL : EnumSet.of(ARMHOLE, SHOULDER, NECK, CENTRE, CROTCH, INSEAM);
            case THIGH_GIRTH -> EnumSet.of(WAIST);
            // Pinned at the crotch point, the inseam swings: what meets it there is trued.
            case KNEE_GIRTH -> EnumSet.of(WAIST);
            case CALF_GIRTH -> EnumSet.of(WAIST, CROTCH);
            // Where the back armhole would get too flat or too full, the sleeve follows it.
            case ACROSS_BACK_WIDTH ->
                sleeve ? NONE : piece.kind().isFront() ? ALL : EnumSet.of(SHOULDER, NECK, CENTRE, SIDE, WAIST, HEM);
            case SHOULDER_LENGTH -> sleeve ? NONE : EnumSet.of(NECK, CENTRE, SIDE, WAIST, HEM);
            case NECK_BASE_GIRTH -> sleeve ? ALL : EnumSet.of(ARMHOLE, SIDE, WAIST, HEM);
            default -> throw new IllegalArgumentException("no alteration of " + measure);
        };
    }

    private static Set<EdgeRole> waist(GarmentKind kind) {
        return switch (kind) {
            case BODICE, DRESS -> EnumSet.of(SHOULDER, NECK, CENTRE);
            case SKIRT -> EnumSet.of(CENTRE, HEM);
            case TROUSERS -> EnumSet.of(CROTCH, INSEAM, HEM);
        };
    }
}
