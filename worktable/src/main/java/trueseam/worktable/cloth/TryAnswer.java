package trueseam.worktable.cloth;

import java.util.List;
import trueseam.cloth.proof.LayFault;
import trueseam.garment.length.LengthFormat;
import trueseam.output.words.LayFaultWords;

/**
 * What a script is told while a piece is in the hand.
 *
 * @param says how long the cloth would be
 * @param faults what would be wrong, in sentences
 * @param faulty the pieces concerned, by their places in the list
 */
record TryAnswer(String says, List<String> faults, List<Integer> faulty) {

    static TryAnswer of(Plan plan, LengthFormat show) {
        List<LayFault> faults = plan.faults();
        return new TryAnswer(
                LaidView.length(plan.lay(), show),
                sentences(plan, faults, show),
                faults.stream().flatMap(f -> f.pieces().stream()).distinct().toList());
    }

    static List<String> sentences(Plan plan, List<LayFault> faults, LengthFormat show) {
        return faults.stream()
                .map(f -> LayFaultWords.sentence(plan.lay(), f, show))
                .distinct()
                .toList();
    }
}
