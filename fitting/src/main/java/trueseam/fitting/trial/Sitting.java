package trueseam.fitting.trial;

import java.util.List;

/**
 * One fitting of a trial garment on the body.
 *
 * @param name when it was, or what she calls it
 * @param findings what was seen and pinned, in the order of writing
 */
public record Sitting(String name, List<Pinned> findings) {

    // Immutable.
    public Sitting {
        findings = List.copyOf(findings);
    }
}
