package trueseam.worktable.work;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.trial.Pinned;
import trueseam.fitting.trial.PinnedException;
import trueseam.fitting.trial.PinnedLine;
import trueseam.fitting.trial.Sitting;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.pattern.Pattern;
import trueseam.worktable.project.TrialPart;

/**
 * What was typed of the trial garment, as far as it can be read.
 *
 * @param sittings the sittings with what can be read of them
 * @param problems what cannot, by field: {@code seen/SITTING/THING}
 */
public record TypedTrial(List<Sitting> sittings, List<Problem> problems) {

    /** Does not change. */
    public TypedTrial {
        sittings = List.copyOf(sittings);
        problems = List.copyOf(problems);
    }

    /**
     * Reads the sittings.
     *
     * @param part the sittings as typed
     * @param pattern what the trial garment was cut from
     * @param unit the unit of a bare number
     * @return the sittings
     */
    public static TypedTrial of(TrialPart part, Pattern pattern, LengthUnit unit) {
        List<Sitting> sittings = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (int s = 0; s < part.sittings().size(); s++) {
            List<Pinned> findings = new ArrayList<>();
            List<TrialPart.Seen> seen = part.sittings().get(s).seen();
            for (int i = 0; i < seen.size(); i++) {
                try {
                    findings.add(line(seen.get(i)).read(pattern, unit));
                } catch (PinnedException e) {
                    problems.add(new Problem("seen/" + s + "/" + i, e.getMessage()));
                }
            }
            sittings.add(new Sitting("sitting " + (s + 1), findings));
        }
        return new TypedTrial(sittings, problems);
    }

    /**
     * The line of a sitting's file that says the same.
     *
     * @param seen what was typed
     * @return the line
     */
    public static PinnedLine line(TrialPart.Seen seen) {
        return new PinnedLine(
                seen.symptom(), seen.cause(), seen.alteration(), seen.amount(), seen.as(), seen.side(), seen.note());
    }
}
