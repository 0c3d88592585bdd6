package trueseam.fitting.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.fitting.alteration.Alteration;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.proof.Prover;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.RequestException;
import trueseam.fitting.tissue.TissueException;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Pattern;

/**
 * Alterations of the repertoire that are larger than their entry takes without a thought: warned of where the pieces take them, refused
 * where they do not.
 */
public final class LargeAmounts {

    private static final String WAY_OUT = "; take the rest by the next size, or open the piece inside";

    /** What can be taken is found to so much of what was asked: at 3 in, half a millimetre. */
    private static final int HALVINGS = 7;

    /** Less than this is not worth altering: the finest mark of a tape. */
    private static final double LEAST_MM = 1;

    private LargeAmounts() {}

    /**
     * Refuses an alteration beyond the largest amount of its entry if, carried out by itself, it does not hold every proof.
     *
     * @param pattern the pattern before any alteration, in right and left pieces if it is asked for one side
     * @param applied the alteration
     * @param show the user's units
     * @throws BeyondTakenException if the pieces cannot take it: what would fail and where, what to do instead, and how much can be taken
     */
    public static void requireTaken(Pattern pattern, Applied applied, LengthFormat show) {
        if (isLarge(applied)) {
            requireTakenAlone(pattern, applied, show);
        }
    }

    /** The same for an amount of any size. (A small one may be possible only together with another, and is not asked beforehand.) */
    static void requireTakenAlone(Pattern pattern, Applied applied, LengthFormat show) {
        Optional<Refusal> refused = refusal(pattern, applied);
        if (refused.isPresent()) {
            Refusal why = refused.get();
            double taken = takenMm(pattern, applied);
            String much = Math.abs(taken) < LEAST_MM
                    ? "; hardly any of the " + show.show(Math.abs(applied.mm())) + " can be taken."
                    : "; of the " + show.show(Math.abs(applied.mm())) + " about " + show.show(Math.abs(taken))
                            + " can be taken.";
            throw new BeyondTakenException(
                    why.piece(),
                    why.where(),
                    applied.mm(),
                    taken,
                    why.sentence().replaceFirst("\\.$", "") + much);
        }
    }

    /** Why an alteration cannot be carried out by itself. */
    private record Refusal(String piece, String where, String sentence) {}

    private static Optional<Refusal> refusal(Pattern pattern, Applied applied) {
        String name = applied.entry().name();
        try {
            WorkedPattern worked = WorkedPattern.altered(pattern, List.of(applied));
            return Prover.prove(worked, Map.of(), worked.capEaseAsked()).failures().stream()
                    .findFirst()
                    .map(failed -> new Refusal(
                            pattern.name(),
                            name,
                            "with so much it would no longer hold that "
                                    + failed.kind().word() + " (" + failed.where() + ")" + WAY_OUT));
        } catch (RequestException e) {
            throw e; // not a matter of how much
        } catch (AlterationException e) {
            return Optional.of(refusal(e.piece(), e.where(), e.getMessage()));
        } catch (TissueException e) {
            return Optional.of(refusal(e.piece(), e.where(), e.getMessage()));
        } catch (IllegalArgumentException e) {
            // What geometry says is of points and turns, not of pieces.
            return Optional.of(new Refusal(pattern.name(), name, "its lines cannot be drawn with so much" + WAY_OUT));
        }
    }

    private static Refusal refusal(String piece, String where, String message) {
        String begins = piece + ", " + where + ": ";
        return new Refusal(piece, where, message.startsWith(begins) ? message.substring(begins.length()) : message);
    }

    /** The largest amount of the same sign that can be carried out by itself and proved, found by halving. */
    private static double takenMm(Pattern pattern, Applied applied) {
        double can = 0;
        double cannot = applied.mm();
        for (int i = 0; i < HALVINGS; i++) {
            double mm = (can + cannot) / 2;
            Applied less = new Applied(applied.entry(), applied.variant(), mm, applied.side());
            if (refusal(pattern, less).isPresent()) {
                cannot = mm;
            } else {
                can = mm;
            }
        }
        return can;
    }

    private static boolean isLarge(Applied applied) {
        return Math.abs(applied.mm()) > applied.entry().mostMm() + 1e-9;
    }

    static List<Finding> findings(List<Alteration> alterations, LengthFormat show) {
        List<Finding> findings = new ArrayList<>();
        for (Alteration alteration : alterations) {
            if (alteration instanceof Applied applied && isLarge(applied)) {
                findings.add(Finding.warning(
                        applied.entry().name(),
                        show.show(Math.abs(applied.mm())) + " is more than the "
                                + show.show(applied.entry().mostMm())
                                + " that this alteration is usually trusted with; consider the next size line there, or opening the"
                                + " piece inside, and sew a trial garment in any case."));
            }
        }
        return findings;
    }
}
