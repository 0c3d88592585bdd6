package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/** Every alteration by its name, in the order of work. */
public final class Repertoire {

    private static final List<Entry> ALL = inOrder(List.of(
            ChestLength.ENTRY,
            SwayBack.ENTRY,
            SwayBackFold.ENTRY,
            FullBust.ENTRY,
            BodiceLengths.BELOW_BUST,
            BodiceLengths.WAIST_LINE,
            BodiceLengths.DRESS_LENGTH,
            BodiceWaist.ALL_ROUND,
            BodiceWaist.ABDOMEN,
            BustPoint.HEIGHT,
            BustPoint.WIDTH,
            Gape.NECK,
            Gape.ARMHOLE,
            ChestFullness.ENTRY,
            FrontLength.ENTRY,
            FullBustInPanels.ENTRY,
            SleeveLengths.ABOVE,
            SleeveLengths.BELOW,
            SleevesToTheNeck.RAGLAN,
            SleevesToTheNeck.KIMONO,
            SleevesToTheNeck.RAGLAN_GIRTH,
            SleevesToTheNeck.KIMONO_GIRTH,
            ArmGirth.UPPER_ARM,
            ArmGirth.WHOLE_SLEEVE,
            SeamBulge.ELBOW,
            SeamBulge.FOREARM,
            SeamBulge.WRIST,
            ElbowDart.ENTRY,
            SleeveCap.HEIGHT,
            SleeveCap.EASE,
            SleeveCap.TURN,
            AcrossBack.ENTRY,
            AcrossFront.ENTRY,
            BackBelowArmhole.ENTRY,
            RoundBack.ROUND,
            RoundBack.HUMP,
            RoundBack.ERECT,
            ShoulderBlades.ENTRY,
            ShoulderWidth.ENTRY,
            ShoulderSlope.SQUARE,
            ShoulderSlope.SLOPING,
            ForwardShoulder.ENTRY,
            NeckSize.ENTRY,
            NeckSize.FULL,
            ArmholeHeight.ENTRY,
            CollarEdges.OUTER,
            CollarEdges.NECK,
            SkirtLength.ENTRY,
            SkirtGirth.WAIST,
            SkirtGirth.HIP,
            SkirtGirth.BOTH,
            SkirtGirth.ONE_LARGER,
            HipCurve.SKIRT,
            HipCurve.TROUSERS,
            RaisedSide.SKIRT,
            RaisedSide.TROUSERS,
            FullAbdomen.SKIRT,
            GorePlait.ENTRY,
            FullAbdomen.TROUSERS,
            LargeSeat.ENTRY,
            CrotchSeam.DEPTH,
            CrotchSeam.FRONT,
            CrotchSeam.BACK,
            CrotchSeam.SEAT,
            TrouserGirth.WAIST,
            TrouserGirth.HIP,
            TrouserSwayBack.ENTRY,
            LegSeams.THIGH,
            LegSeams.OUTER_THIGH,
            LegSeams.INNER_THIGH,
            LegSeams.KNEE,
            LegSeams.CALF,
            LegSeams.HEM,
            LegSeams.INSTEP,
            LegSwing.KNOCK_KNEE,
            LegSwing.BOW_LEG,
            LegSwing.LENGTH,
            LegSwing.ABOVE_KNEE,
            LegSwing.BELOW_KNEE,
            SkirtSwayBack.ENTRY,
            SkirtFlare.ENTRY,
            ProminentHips.ENTRY,
            SideSeams.BUST,
            SideSeams.WAIST,
            SideSeams.HIP,
            SkirtFlare.DRESS));

    private static final Map<GarmentKind, Map<Measure, List<Entry>>> SOLVING = solving();

    private Repertoire() {}

    private static List<Entry> inOrder(List<Entry> entries) {
        Set<String> names = new HashSet<>();
        for (Entry entry : entries) {
            if (!names.add(entry.name())) {
                throw new IllegalStateException("two alterations are called " + entry.name());
            }
        }
        List<Entry> sorted = new ArrayList<>(entries);
        sorted.sort((a, b) -> a.stage().compareTo(b.stage()));
        return List.copyOf(sorted);
    }

    /**
     * Every entry.
     *
     * @return in the order of work
     */
    public static List<Entry> all() {
        return ALL;
    }

    /**
     * The entry of a name.
     *
     * @param name as a user writes it
     * @return the entry, or nothing if there is none
     */
    public static Optional<Entry> named(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return ALL.stream().filter(entry -> entry.name().equals(wanted)).findFirst();
    }

    /**
     * The entries that a pattern can take.
     *
     * @param pattern the pattern
     * @return those with one of their pieces in it, in the order of work
     */
    public static List<Entry> of(Pattern pattern) {
        Set<PieceKind> kinds = new HashSet<>();
        pattern.pieces().forEach(piece -> kinds.add(piece.kind()));
        return ALL.stream()
                .filter(entry -> entry.on().stream().anyMatch(kinds::contains))
                .filter(entry -> isForWhole(entry, inParts(pattern)))
                .toList();
    }

    /**
     * What a pattern has in parts, or cut otherwise than in the plain way: a front in panels, a back with a yoke, a sleeve in two
     * pieces, a kimono, a raglan.
     *
     * @param pattern the pattern
     * @return these kinds and the plain ones that they stand for; empty for most patterns
     */
    public static Set<PieceKind> inParts(Pattern pattern) {
        Set<PieceKind> kinds = EnumSet.noneOf(PieceKind.class);
        for (Piece piece : pattern.pieces()) {
            if (piece.kind().isPart()) {
                kinds.add(piece.kind());
                kinds.add(piece.kind().whole());
            }
            if (piece.kind().isKimono()) {
                kinds.add(PieceKind.SLEEVE); // it is cut in one with the bodice
            }
        }
        return kinds;
    }

    /**
     * What to do about an alteration that is written for plain pieces.
     *
     * @param inParts what the pattern has in parts, as {@link #inParts} says
     * @return the rest of a sentence, without a full stop
     */
    public static String otherwise(Set<PieceKind> inParts) {
        if (inParts.contains(PieceKind.KIMONO_FRONT) || inParts.contains(PieceKind.KIMONO_BACK)) {
            return "a bodice with armholes, and a kimono has its sleeve cut in one: pin it out on the trial garment and trace what"
                    + " was pinned, or choose a bodice with a sleeve that is set in";
        }
        if (inParts.contains(PieceKind.RAGLAN_FRONT) || inParts.contains(PieceKind.RAGLAN_SLEEVE)) {
            return "a bodice with its shoulders on it, and a raglan has them in its sleeve: pin the upper sleeve to front and back along"
                    + " the raglan seams, alter them as one piece, and cut them apart again along the seams";
        }
        return "a piece that this pattern has in parts: tape the parts together along the seam, alter them as one piece, and cut"
                + " them apart again along the seam";
    }

    /** An entry is carried out on the parts that it names itself; one written for a whole piece is not carried out on its parts. */
    static boolean isForWhole(Entry entry, Set<PieceKind> inParts) {
        return entry.on().stream().anyMatch(kind -> !kind.isPart() || inParts.contains(kind))
                && entry.on().stream()
                        .allMatch(
                                kind -> kind.isPart() || !inParts.contains(kind) || namesPartsOf(entry, kind, inParts));
    }

    private static boolean namesPartsOf(Entry entry, PieceKind whole, Set<PieceKind> inParts) {
        return entry.on().stream().anyMatch(kind -> kind.isPart() && kind.whole() == whole && inParts.contains(kind));
    }

    /**
     * The alteration whose amount is found from a measure.
     *
     * @param kind the garment
     * @param measure the measure
     * @return the first that the garment's pieces can take, or nothing
     */
    public static Optional<Entry> solving(GarmentKind kind, Measure measure) {
        return solving(kind, Set.of(), measure);
    }

    /**
     * The alteration whose amount is found from a measure, for a garment some of whose pieces are in parts.
     *
     * @param kind the garment
     * @param inParts what it has in parts, as {@link #inParts} says
     * @param measure the measure
     * @return the first that the garment's pieces can take, or nothing
     */
    public static Optional<Entry> solving(GarmentKind kind, Set<PieceKind> inParts, Measure measure) {
        for (Entry entry : SOLVING.get(kind).getOrDefault(measure, List.of())) {
            if (isForWhole(entry, inParts)) {
                return Optional.of(entry);
            }
        }
        return Optional.empty();
    }

    /** Asked for every measure in every round of every fit, so it is looked up once. */
    private static Map<GarmentKind, Map<Measure, List<Entry>>> solving() {
        Map<GarmentKind, Map<Measure, List<Entry>>> all = new EnumMap<>(GarmentKind.class);
        for (GarmentKind kind : GarmentKind.values()) {
            Map<Measure, List<Entry>> byMeasure = new EnumMap<>(Measure.class);
            for (Entry entry : ALL) {
                if (entry.solved() && isFor(entry, kind)) {
                    byMeasure
                            .computeIfAbsent(entry.measures().get(0), measure -> new ArrayList<>())
                            .add(entry);
                }
            }
            all.put(kind, Collections.unmodifiableMap(byMeasure));
        }
        return Collections.unmodifiableMap(all);
    }

    /**
     * Whether an alteration is one of a garment.
     *
     * @param entry the alteration
     * @param kind the garment
     * @return true if one of its pieces belongs to that garment
     */
    public static boolean isFor(Entry entry, GarmentKind kind) {
        return entry.on().stream().anyMatch(piece -> belongs(piece, kind));
    }

    private static boolean belongs(PieceKind piece, GarmentKind kind) {
        return switch (kind) {
            case BODICE ->
                piece == PieceKind.SLEEVE || piece == PieceKind.RAGLAN_SLEEVE || (piece.isUpper() && !piece.isDress());
            case DRESS -> piece == PieceKind.SLEEVE || piece.isDress();
            case SKIRT -> piece.isSkirt();
            case TROUSERS -> piece.isTrouser();
        };
    }
}
