package trueseam.fitting.trial;

import java.util.List;

/**
 * Why a trial garment shows its folds.
 *
 * @param key what tables and files call it, for example {@code sway-back}
 * @param words what it is, for example {@code the back is hollow at the waist}
 * @param remedies what is done about it, the first to be tried first; empty where nothing in the repertoire does it
 * @param note what is to be known; where there is no remedy, why, and what to do by hand; may be empty
 */
public record Cause(String key, String words, List<Remedy> remedies, String note) {

    // A cause that nothing is done about says why.
    public Cause {
        remedies = List.copyOf(remedies);
        if (remedies.isEmpty() && note.isBlank()) {
            throw new IllegalArgumentException("nothing is done about the cause " + key + ", and it does not say why");
        }
    }
}
