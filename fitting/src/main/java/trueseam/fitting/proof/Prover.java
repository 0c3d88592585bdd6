package trueseam.fitting.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.fitting.tissue.Run;
import trueseam.fitting.truing.LevelShift;
import trueseam.fitting.truing.SeamEnds;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.flat.FlatMeasure;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Path;
import trueseam.geometry.polygon.OutlineFault;
import trueseam.geometry.polygon.Region;

/**
 * Proves an altered pattern against the original.
 *
 * <table>
 * <caption>What is proved (bounds from the design)</caption>
 * <tr><td>each traced edge congruent to the original</td><td>1e-6 mm</td></tr>
 * <tr><td>each changed measure, taken again on the flat pattern, at its target</td><td>0.1 mm</td></tr>
 * <tr><td>seams sewn edge to edge: change of the difference in length</td><td>0.1 mm</td></tr>
 * <tr><td>ends that meet when sewn level after truing; at panel seams what lay on the bust, hip or elbow line</td><td>0.5 mm</td></tr>
 * <tr><td>cap less armhole unchanged, unless asked</td><td>0.5 mm</td></tr>
 * <tr><td>outlines simple; dart legs equal; edges smooth across seams</td><td>exact; 1e-6 mm; 3 degrees</td></tr>
 * </table>
 */
public final class Prover {

    private static final double CONGRUENT_MM = 1e-6;
    private static final double TARGET_MM = 0.1;
    private static final double WALK_MM = 0.1;
    private static final double LEVEL_MM = 0.5;
    private static final double CAP_MM = 0.5;
    private static final double DART_MM = 1e-6;
    private static final double SMOOTH_DEGREES = 3;

    /** An outline is looked at for crossings in chords no farther from the curve than this. */
    private static final double OUTLINE_MM = 0.1;

    /** Runs shorter than a pencil's point have no shape to compare. */
    private static final double SHORTEST_RUN_MM = 1e-3;

    private final WorkedPattern worked;
    private final Map<Measure, Double> targets;
    private final boolean capMayChange;
    private final List<Proof> proofs = new ArrayList<>();

    private Prover(WorkedPattern worked, Map<Measure, Double> targets, boolean capMayChange) {
        this.worked = worked;
        this.targets = targets;
        this.capMayChange = capMayChange;
    }

    /**
     * Proves a pattern.
     *
     * @param worked the pattern before and after
     * @param targets what the changed measures should be on the flat pattern, mm
     * @param capMayChange whether the dressmaker asked for a change of cap ease
     * @return every proof, held or not
     */
    public static FitReport prove(WorkedPattern worked, Map<Measure, Double> targets, boolean capMayChange) {
        Prover prover = new Prover(worked, targets, capMayChange);
        prover.proveEdges();
        prover.proveTargets();
        prover.proveSeams();
        prover.proveLevels();
        prover.proveOutlines();
        prover.proveSmooth();
        return new FitReport(prover.proofs);
    }

    private void proveEdges() {
        for (AlteredPiece piece : worked.pieces()) {
            double worst = 0;
            String where = "";
            for (Run run : piece.runs()) {
                if (run.origin().isPresent() && run.lengthMm() > SHORTEST_RUN_MM) {
                    double miss = miss(piece, run, run.origin().get());
                    if (miss >= worst) {
                        worst = miss;
                        where = run.edge();
                    }
                }
            }
            proofs.add(new Proof(
                    Proof.Kind.CONGRUENT,
                    piece.now().name() + ", " + where,
                    worst,
                    CONGRUENT_MM,
                    "mm",
                    "the worst of its traced edges, in length and shape"));
        }
    }

    private static double miss(AlteredPiece piece, Run run, Run.Origin origin) {
        Path now = piece.now().edge(run.edge()).path();
        Path then = piece.original().edge(origin.stretch().edge()).path();
        return Congruence.missMm(
                part(then, origin.stretch().fromMm(), origin.stretch().toMm()), part(now, run.fromMm(), run.toMm()));
    }

    private static Path part(Path path, double from, double to) {
        return path.part(Math.max(0, from), Math.min(to, path.length()));
    }

    private void proveTargets() {
        targets.forEach((measure, target) -> {
            Optional<FlatMeasure> measured = FlatPattern.measure(worked.altered(), measure);
            measured.ifPresent(flat -> proofs.add(new Proof(
                    Proof.Kind.TARGET,
                    measure.term(),
                    flat.mm() - target,
                    TARGET_MM,
                    "mm",
                    "measured again on the flat pattern")));
        });
    }

    private void proveSeams() {
        Pattern before = worked.original();
        Pattern after = worked.altered();
        for (Seam seam : before.seams()) {
            double change = after.mismatchMm(seam) - before.mismatchMm(seam);
            if (isCap(before, seam)) {
                if (!capMayChange) {
                    proofs.add(
                            new Proof(Proof.Kind.CAP, seam.name(), change, CAP_MM, "mm", "change of cap less armhole"));
                }
            } else {
                proofs.add(new Proof(
                        Proof.Kind.WALK,
                        seam.name(),
                        change - worked.bandEaseMm().getOrDefault(seam.name(), 0.0),
                        WALK_MM,
                        "mm",
                        "change of the difference between its two sides"));
            }
        }
    }

    private static boolean isCap(Pattern pattern, Seam seam) {
        EdgeRef ref = seam.second().get(0);
        EdgeRef other = seam.first().get(0);
        return pattern.piece(ref.piece()).edge(ref.edge()).role() == EdgeRole.CAP
                || pattern.piece(other.piece()).edge(other.edge()).role() == EdgeRole.CAP;
    }

    private void proveLevels() {
        for (LevelShift shift : worked.apart()) {
            proofs.add(new Proof(
                    Proof.Kind.LEVEL,
                    shift.seam() + ", " + shift.end(),
                    shift.apartMm(),
                    LEVEL_MM,
                    "mm",
                    "front against back, after truing"));
        }
        proofs.addAll(PanelLevels.prove(worked, LEVEL_MM));
    }

    private void proveOutlines() {
        for (AlteredPiece piece : worked.pieces()) {
            Optional<OutlineFault> fault = Region.faultOf(piece.now().outline(), OUTLINE_MM);
            proofs.add(new Proof(
                    Proof.Kind.SIMPLE,
                    piece.now().name(),
                    fault.isPresent() ? 1 : 0,
                    0,
                    "crossings",
                    fault.map(Prover::words).orElse("its outline is simple")));
            proveDarts(piece);
        }
    }

    private static String words(OutlineFault fault) {
        return String.format(
                Locale.ROOT,
                "looked at along the outline, first at (%.1f, %.1f) mm",
                fault.place().x(),
                fault.place().y());
    }

    private void proveDarts(AlteredPiece piece) {
        for (Dart dart : piece.now().darts()) {
            if (dart instanceof Dart.EdgeDart d) {
                double before = 0;
                for (Dart original : piece.original().darts()) {
                    if (original instanceof Dart.EdgeDart o && o.name().equals(d.name())) {
                        before = legDifference(piece.original(), o);
                    }
                }
                proofs.add(new Proof(
                        Proof.Kind.DART,
                        piece.now().name() + ", " + d.name(),
                        legDifference(piece.now(), d) - before,
                        DART_MM,
                        "mm",
                        "one leg against the other"));
            }
        }
    }

    private static double legDifference(Piece piece, Dart.EdgeDart dart) {
        Path path = piece.edge(dart.edge()).path();
        return path.pointAt(dart.fromMm()).distanceTo(dart.apex())
                - path.pointAt(Math.min(dart.toMm(), path.length())).distanceTo(dart.apex());
    }

    private void proveSmooth() {
        for (SeamEnds ends : SeamEnds.of(worked.original())) {
            double before = Math.toDegrees(ends.bendRad(worked.original()));
            double after = Math.toDegrees(ends.bendRad(worked.altered()));
            // A pattern that was drawn with a point there keeps its point: then only the change is proved.
            boolean wasSmooth = Math.abs(before) <= SMOOTH_DEGREES;
            proofs.add(new Proof(
                    Proof.Kind.SMOOTH,
                    ends.seam() + ", " + ends.word(),
                    wasSmooth ? after : after - before,
                    SMOOTH_DEGREES,
                    "degrees",
                    wasSmooth ? "bend across the sewn seam" : "change of the bend across the sewn seam"));
        }
    }
}
