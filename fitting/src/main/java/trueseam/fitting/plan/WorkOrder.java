package trueseam.fitting.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import trueseam.fitting.alteration.Alteration;
import trueseam.fitting.alteration.CrotchLength;
import trueseam.fitting.alteration.KimonoLength;
import trueseam.fitting.alteration.KimonoSleeveGirth;
import trueseam.fitting.alteration.LengthAtLine;
import trueseam.fitting.alteration.PanelGirth;
import trueseam.fitting.alteration.RaglanSleeveGirth;
import trueseam.fitting.alteration.SideGirth;
import trueseam.fitting.alteration.SleeveGirth;
import trueseam.fitting.alteration.SleeveReach;
import trueseam.fitting.alteration.TwoPieceSleeveGirth;
import trueseam.fitting.alteration.WristGirth;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.repertoire.Request;
import trueseam.fitting.repertoire.Stage;
import trueseam.fitting.repertoire.Variant;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.PieceKind;

/**
 * The alterations for given amounts, in the order of work: lengths first, because they move the levels at which widths are measured;
 * then the crotch, the widths, the sleeve (common practice).
 */
final class WorkOrder {

    private static final Set<PieceKind> UPPER =
            kinds(piece -> piece.isUpper() && piece != PieceKind.BACK_YOKE); // the yoke lies above the line
    private static final Set<PieceKind> BELOW_HIP = kinds(piece -> piece.isSkirt() || piece.isDress());
    private static final Set<PieceKind> TROUSERS = kinds(PieceKind::isTrouser);
    private static final Set<PieceKind> SLEEVE = kinds(PieceKind::isSleeve);

    /** The farthest that a crotch point is moved; the rest of a crotch length goes to the waist at the centre: 3/4 in, ours. */
    private static final double CROTCH_POINT_MM = 19.05;

    /** Measures that are altered here; every other one by the entry of the repertoire that is solved for it. */
    private static final Set<Measure> HERE = EnumSet.copyOf(Sharing.ORDER);

    /** Less cannot be slid: what another change already did leaves a length of nothing but rounding. */
    private static final double NOTHING_MM = 1e-3;

    private final Amounts amounts;
    private final FitChoices choices;
    private final GarmentKind kind;
    private final Set<PieceKind> inParts;
    private final boolean panelled;
    private final Map<Stage, List<Alteration>> byStage = new EnumMap<>(Stage.class);

    private static Set<PieceKind> kinds(Predicate<PieceKind> which) {
        return Arrays.stream(PieceKind.values()).filter(which).collect(Collectors.toUnmodifiableSet());
    }

    WorkOrder(Amounts amounts, FitChoices choices, GarmentKind kind, Pattern pattern) {
        this.inParts = Repertoire.inParts(pattern);
        this.panelled = PanelGirth.isPanelled(pattern);
        this.amounts = amounts;
        this.choices = choices;
        this.kind = kind;
    }

    /** Whether a measure is altered by the entry of the repertoire that is solved for it. */
    static boolean isByRepertoire(GarmentKind kind, Measure measure) {
        return isByRepertoire(kind, Set.of(), measure);
    }

    /** The same of a garment some of whose pieces are in parts. */
    static boolean isByRepertoire(GarmentKind kind, Set<PieceKind> inParts, Measure measure) {
        return !HERE.contains(measure)
                && Repertoire.solving(kind, inParts, measure).isPresent();
    }

    List<Alteration> alterations() {
        for (Stage stage : Stage.values()) {
            byStage.put(stage, new ArrayList<>());
        }
        lengths(byStage.get(Stage.LENGTH));
        crotch(byStage.get(Stage.CROTCH));
        double bust = amounts.of(Measure.BUST_GIRTH);
        double waist = amounts.of(Measure.WAIST_GIRTH);
        double hip = amounts.of(Measure.HIP_GIRTH);
        if (bust != 0 || waist != 0 || hip != 0) {
            byStage.get(Stage.WIDTH)
                    .add(
                            panelled
                                    ? new PanelGirth(bust, waist, hip, choices.hem(), choices.panels())
                                    : new SideGirth(bust, waist, hip, choices.hem()));
        }
        sleeveGirth(byStage.get(Stage.SLEEVE));
        byMeasure();
        byName();
        return byStage.values().stream().flatMap(List::stream).toList();
    }

    private void sleeveGirth(List<Alteration> sleeve) {
        double arm = amounts.of(Measure.UPPER_ARM_GIRTH);
        double wrist = amounts.of(Measure.WRIST_GIRTH);
        double carriedOn = choices.reach() == SleeveReach.WHOLE && !amounts.has(Measure.WRIST_GIRTH) ? arm : 0;
        if (inParts.contains(PieceKind.RAGLAN_SLEEVE)) {
            sleeve.add(new RaglanSleeveGirth(arm, wrist + carriedOn));
            return;
        }
        if (inParts.contains(PieceKind.KIMONO_BACK)) {
            sleeve.add(new KimonoSleeveGirth(arm, wrist + carriedOn));
            return;
        }
        if (inParts.contains(PieceKind.UNDER_SLEEVE)) {
            if (arm != 0 || wrist != 0) {
                sleeve.add(new TwoPieceSleeveGirth(arm, wrist + carriedOn, choices.sleeveSeams()));
            }
            return;
        }
        if (arm != 0) {
            sleeve.add(new SleeveGirth(arm, choices.cap(), choices.reach()));
        }
        if (wrist != 0) {
            sleeve.add(new WristGirth(wrist));
        }
    }

    private void byMeasure() {
        for (Measure measure : Measure.values()) {
            if (isByRepertoire(kind, inParts, measure) && amounts.of(measure) != 0) {
                Repertoire.solving(kind, inParts, measure).ifPresent(entry -> byStage.get(entry.stage())
                        .add(new Applied(entry, way(entry), amounts.of(measure), Optional.empty())));
            }
        }
    }

    /** The way that she asked for, if she asked for this alteration without an amount. */
    private Variant way(Entry entry) {
        return choices.requests().stream()
                .filter(request -> request.entry().equals(entry) && request.mm().isEmpty())
                .map(Request::variant)
                .findFirst()
                .orElse(entry.variants().get(0));
    }

    private void byName() {
        named(choices).forEach(applied -> byStage.get(applied.entry().stage()).add(applied));
    }

    /** What she asked for by name, with its amount. */
    static List<Applied> named(FitChoices choices) {
        return choices.requests().stream()
                .filter(request -> request.mm().isPresent())
                .map(request -> new Applied(
                        request.entry(), request.variant(), request.mm().getAsDouble(), request.side()))
                .toList();
    }

    private void lengths(List<Alteration> all) {
        add(all, "Bodice length", LevelName.BODICE_LENGTH, UPPER, amounts.of(Measure.BACK_WAIST_LENGTH));
        double below = amounts.of(Measure.SKIRT_LENGTH);
        if (amounts.has(Measure.DRESS_LENGTH)) {
            below += amounts.of(Measure.DRESS_LENGTH) - amounts.of(Measure.BACK_WAIST_LENGTH);
        }
        add(all, "Length below the hip", LevelName.SKIRT_LENGTH, BELOW_HIP, below);
        add(all, "Crotch depth", LevelName.CROTCH_DEPTH, TROUSERS, amounts.of(Measure.BODY_RISE));
        double leg = amounts.of(Measure.INSIDE_LEG_LENGTH);
        if (amounts.has(Measure.TROUSER_LENGTH)) {
            // The depth does part of it: the outseam grows by both.
            leg += amounts.of(Measure.TROUSER_LENGTH) - amounts.of(Measure.BODY_RISE);
        }
        add(all, "Leg length", LevelName.ABOVE_KNEE, TROUSERS, leg / 2);
        add(all, "Leg length", LevelName.BELOW_KNEE, TROUSERS, leg / 2);
        double arm = amounts.of(Measure.ARM_LENGTH);
        if (inParts.contains(PieceKind.KIMONO_BACK)) {
            if (Math.abs(arm) > NOTHING_MM) {
                all.add(new KimonoLength(arm));
            }
            return;
        }
        double upper = amounts.has(Measure.UPPER_ARM_LENGTH) ? amounts.of(Measure.UPPER_ARM_LENGTH) : arm / 2;
        add(all, "Sleeve length", LevelName.ABOVE_ELBOW, SLEEVE, upper);
        add(all, "Sleeve length", LevelName.BELOW_ELBOW, SLEEVE, arm - upper);
    }

    private static void add(List<Alteration> all, String what, LevelName line, Set<PieceKind> on, double longerMm) {
        if (Math.abs(longerMm) > NOTHING_MM) {
            all.add(new LengthAtLine(what, line, on, longerMm));
        }
    }

    private void crotch(List<Alteration> all) {
        double front = amounts.of(Measure.FRONT_CROTCH_LENGTH);
        double back = amounts.of(Measure.BACK_CROTCH_LENGTH);
        if (front != 0 || back != 0) {
            double frontPoint = Math.max(-CROTCH_POINT_MM, Math.min(CROTCH_POINT_MM, front));
            double backPoint = Math.max(-CROTCH_POINT_MM, Math.min(CROTCH_POINT_MM, back));
            all.add(new CrotchLength(frontPoint, front - frontPoint, backPoint, back - backPoint));
        }
    }
}
