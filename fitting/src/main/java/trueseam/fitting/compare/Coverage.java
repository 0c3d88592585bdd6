package trueseam.fitting.compare;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.PieceKind;

/** Which measures a garment is fitted by, and which of them the catalogue alters. */
public final class Coverage {

    private static final Map<GarmentKind, Set<Measure>> ALTERED = new EnumMap<>(Map.of(
            GarmentKind.BODICE,
            EnumSet.of(
                    Measure.BUST_GIRTH,
                    Measure.WAIST_GIRTH,
                    Measure.BACK_WAIST_LENGTH,
                    Measure.UPPER_ARM_GIRTH,
                    Measure.WRIST_GIRTH,
                    Measure.UPPER_ARM_LENGTH,
                    Measure.ARM_LENGTH),
            GarmentKind.DRESS,
            EnumSet.of(
                    Measure.BUST_GIRTH,
                    Measure.WAIST_GIRTH,
                    Measure.HIP_GIRTH,
                    Measure.BACK_WAIST_LENGTH,
                    Measure.DRESS_LENGTH,
                    Measure.UPPER_ARM_GIRTH,
                    Measure.WRIST_GIRTH,
                    Measure.UPPER_ARM_LENGTH,
                    Measure.ARM_LENGTH),
            GarmentKind.SKIRT,
            EnumSet.of(Measure.WAIST_GIRTH, Measure.HIP_GIRTH, Measure.SKIRT_LENGTH),
            GarmentKind.TROUSERS,
            EnumSet.of(
                    Measure.WAIST_GIRTH,
                    Measure.HIP_GIRTH,
                    Measure.BODY_RISE,
                    Measure.FRONT_CROTCH_LENGTH,
                    Measure.BACK_CROTCH_LENGTH,
                    Measure.INSIDE_LEG_LENGTH,
                    Measure.TROUSER_LENGTH)));

    private static final Set<Measure> ONLY_SHOWN_ABOVE = EnumSet.of(
            Measure.ACROSS_FRONT_WIDTH,
            Measure.ACROSS_BACK_WIDTH,
            Measure.SHOULDER_LENGTH,
            Measure.NECK_BASE_GIRTH,
            Measure.BUST_POINT_HEIGHT,
            Measure.BUST_POINT_WIDTH,
            Measure.FRONT_WAIST_LENGTH_OVER_BUST,
            Measure.ELBOW_GIRTH);

    private static final Set<Measure> ONLY_SHOWN_BELOW = EnumSet.of(Measure.THIGH_GIRTH, Measure.KNEE_GIRTH);

    /** A kimono sleeve has no place for the elbow: it is wide, and its seams run straight past it. */
    private static final Set<Measure> OF_AN_ELBOW = EnumSet.of(Measure.UPPER_ARM_LENGTH, Measure.ELBOW_GIRTH);

    private Coverage() {}

    /**
     * The measures that a garment is compared in.
     *
     * @param kind the garment
     * @return altered ones and those that are only shown
     */
    public static Set<Measure> measuresOf(GarmentKind kind) {
        Set<Measure> all = EnumSet.copyOf(ALTERED.get(kind));
        switch (kind) {
            case BODICE, DRESS -> all.addAll(ONLY_SHOWN_ABOVE);
            case TROUSERS -> all.addAll(ONLY_SHOWN_BELOW);
            case SKIRT -> {}
        }
        for (Measure measure : Measure.values()) {
            if (Repertoire.solving(kind, measure).isPresent()) {
                all.add(measure);
            }
        }
        return all;
    }

    /**
     * The measures that a garment is compared in, some of whose pieces are in parts.
     *
     * @param kind the garment
     * @param inParts what it has in parts, as {@link Repertoire#inParts} says
     * @return altered ones and those that are only shown
     */
    public static Set<Measure> measuresOf(GarmentKind kind, Set<PieceKind> inParts) {
        Set<Measure> all = EnumSet.copyOf(measuresOf(kind));
        for (Measure measure : Measure.values()) {
            if (Repertoire.solving(kind, inParts, measure).isPresent()) {
                all.add(measure);
            }
        }
        if (isKimono(inParts)) {
            all.removeAll(OF_AN_ELBOW);
        }
        return all;
    }

    private static boolean isKimono(Set<PieceKind> inParts) {
        return inParts.contains(PieceKind.KIMONO_FRONT) || inParts.contains(PieceKind.KIMONO_BACK);
    }

    /**
     * Whether the catalogue alters a measure of a garment.
     *
     * @param kind the garment
     * @param measure the measure
     * @return true if it does
     */
    public static boolean isAltered(GarmentKind kind, Measure measure) {
        return isAltered(kind, Set.of(), measure);
    }

    /**
     * Whether the catalogue alters a measure of a garment some of whose pieces are in parts.
     *
     * @param kind the garment
     * @param inParts what it has in parts, as {@link Repertoire#inParts} says
     * @param measure the measure
     * @return true if it does
     */
    public static boolean isAltered(GarmentKind kind, Set<PieceKind> inParts, Measure measure) {
        boolean none = isKimono(inParts) && OF_AN_ELBOW.contains(measure);
        return (ALTERED.get(kind).contains(measure) && !none)
                || Repertoire.solving(kind, inParts, measure).isPresent();
    }
}
