package trueseam.output.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import trueseam.fitting.proof.FitReport;
import trueseam.fitting.proof.Proof;

/** The proofs in words. */
public final class ProofWords {

    private static final double SMALLEST_SHOWN = 1e-6;

    private ProofWords() {}

    /**
     * Whether the pattern may be cut.
     *
     * @param report the proofs
     * @return one sentence
     */
    public static String headline(FitReport report) {
        int all = report.proofs().size();
        int failed = report.failures().size();
        if (failed == 0) {
            return "All " + all + " proofs hold, measured on the finished outlines.";
        }
        return "FAILED: " + failed + " of " + all + (failed == 1 ? " proofs does" : " proofs do")
                + " not hold. Do not cut from this pattern as it is.";
    }

    /**
     * The proofs that fail, with where and by how much.
     *
     * @param report the proofs
     * @return a sentence for each; none if all hold
     */
    public static List<String> failures(FitReport report) {
        return report.failures().stream()
                .map(proof -> MeasureWords.capital(proof.sentence()))
                .toList();
    }

    /**
     * The proofs kind by kind.
     *
     * @param report the proofs
     * @return for each kind how many there are and how far the worst is off
     */
    public static List<String> kinds(FitReport report) {
        Map<Proof.Kind, List<Proof>> kinds = new EnumMap<>(Proof.Kind.class);
        for (Proof proof : report.proofs()) {
            kinds.computeIfAbsent(proof.kind(), kind -> new ArrayList<>()).add(proof);
        }
        List<String> lines = new ArrayList<>();
        kinds.forEach((kind, proofs) -> {
            Proof worst = proofs.get(0);
            for (Proof proof : proofs) {
                worst = Math.abs(proof.value()) > Math.abs(worst.value()) ? proof : worst;
            }
            lines.add(MeasureWords.capital(kind.word()) + ": " + proofs.size() + " measured, " + most(worst.value())
                    + " " + worst.unit() + " off, " + shown(worst.bound()) + " allowed.");
        });
        return List.copyOf(lines);
    }

    private static String shown(double value) {
        double size = Math.abs(value);
        if (size == 0) {
            return "0";
        }
        return plain(size);
    }

    private static String most(double value) {
        double size = Math.abs(value);
        boolean nothing = size > 0 && size < SMALLEST_SHOWN;
        return nothing ? "less than " + plain(SMALLEST_SHOWN) : "at most " + shown(size);
    }

    private static String plain(double value) {
        return new BigDecimal(value, new MathContext(2)).stripTrailingZeros().toPlainString();
    }
}
