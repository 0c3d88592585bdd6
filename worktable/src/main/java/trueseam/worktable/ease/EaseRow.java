package trueseam.worktable.ease;

import java.util.OptionalDouble;
import trueseam.fitting.profile.EaseAt;
import trueseam.garment.flat.BodyPart;
import trueseam.garment.length.LengthFormat;
import trueseam.output.profile.ProfileWords;
import trueseam.output.words.EaseWords;
import trueseam.output.words.MeasureWords;

/**
 * A measured height as a line of the table.
 *
 * @param label what was measured
 * @param height where
 * @param body how far round the body is
 * @param before how far round the garment was
 * @param after how far round it is
 * @param easeBefore the ease it had
 * @param easeAfter the ease it has
 * @param least the least ease, or empty
 * @param source where the least ease comes from, in a word or two
 * @param tight whether it is tighter than the least ease
 */
public record EaseRow(
        String label,
        String height,
        String body,
        String before,
        String after,
        String easeBefore,
        String easeAfter,
        String least,
        String source,
        boolean tight) {

    static EaseRow of(EaseAt level, BodyPart part, LengthFormat show) {
        return new EaseRow(
                MeasureWords.label(level.body().measure()),
                new ProfileWords(show).height(part, level.body().heightMm()),
                show.show(level.body().mm()),
                shown(level.beforeMm(), show),
                shown(level.afterMm(), show),
                shown(level.easeBeforeMm(), show),
                shown(level.easeAfterMm(), show),
                shown(level.body().leastEaseMm(), show),
                EaseWords.brief(level.body().easeSource()),
                level.shortAfterMm().isPresent());
    }

    private static String shown(OptionalDouble mm, LengthFormat show) {
        return mm.isPresent() ? show.show(mm.getAsDouble()) : "not there";
    }
}
