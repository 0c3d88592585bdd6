package trueseam.worktable.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.fitting.trial.Cause;
import trueseam.fitting.trial.Pinned;
import trueseam.fitting.trial.PinnedException;
import trueseam.fitting.trial.TrialFolds;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Pattern;
import trueseam.output.words.MeasureWords;
import trueseam.worktable.project.TrialPart;
import trueseam.worktable.work.Taken;
import trueseam.worktable.work.TypedTrial;
import trueseam.worktable.work.Workings;

/**
 * One sitting as the screen shows it.
 *
 * @param at its place, from 0
 * @param date its day
 * @param found what was seen
 */
public record SittingRow(int at, String date, List<Found> found) {

    /**
     * One thing seen.
     *
     * @param at its place in the sitting, from 0
     * @param typed as it is kept
     * @param seen what was seen, in words
     * @param cause what it came from, in words
     * @param reckoning how the amount was reckoned; empty where it cannot be read
     * @param problem what is wrong, else empty
     */
    public record Found(int at, TrialPart.Seen typed, String seen, String cause, String reckoning, String problem) {}

    static List<SittingRow> all(Workings workings) {
        List<SittingRow> rows = new ArrayList<>();
        List<TrialPart.Sitting> sittings = workings.project().trial().sittings();
        for (int s = 0; s < sittings.size(); s++) {
            List<Found> found = new ArrayList<>();
            for (int i = 0; i < sittings.get(s).seen().size(); i++) {
                found.add(found(i, sittings.get(s).seen().get(i), workings));
            }
            rows.add(new SittingRow(s, sittings.get(s).date(), found));
        }
        return rows;
    }

    private static Found found(int at, TrialPart.Seen typed, Workings workings) {
        LengthFormat show = workings.project().person().format();
        String seen = symptom(typed.symptom());
        String cause = TrialFolds.cause(typed.cause()).map(Cause::words).orElse(typed.cause());
        Optional<Pattern> pattern = workings.taken().value().map(Taken::pattern);
        if (pattern.isEmpty()) {
            return new Found(at, typed, seen, cause, "", workings.taken().sentence());
        }
        try {
            Pinned read = TypedTrial.line(typed)
                    .read(pattern.get(), workings.project().person().bareUnit());
            return new Found(at, typed, seen, cause, read.reckoning(show), "");
        } catch (PinnedException e) {
            return new Found(at, typed, seen, cause, "", e.getMessage());
        }
    }

    private static String symptom(String number) {
        return TrialFolds.symptoms().stream()
                .filter(one -> Integer.toString(one.number()).equals(number))
                .findFirst()
                .map(one -> MeasureWords.capital(one.seen()))
                .orElse(number);
    }
}
