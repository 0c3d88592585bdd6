package trueseam.app.input;

import picocli.CommandLine.Option;
import trueseam.garment.handbook.TrouserHem;

/** {@code --trouser-hem}: how deep the hem of trousers is, where handbooks disagree. */
public final class TrouserHemOption {

    @Option(
            names = "--trouser-hem",
            paramLabel = "as-drawn|shallow|usual|men|safe",
            defaultValue = "as-drawn",
            description =
                    "How deep the hem of trousers is cut: as the pattern has it, 1 in, 1 3/8 in, 2 in, or 2 1/2 in for"
                            + " safety; trueseam choices says why. Default: ${DEFAULT-VALUE}.")
    private String word;

    /** For the command line. */
    public TrouserHemOption() {}

    /**
     * The hem.
     *
     * @return the way that was chosen
     */
    public TrouserHem hem() {
        return TrouserHem.of(word);
    }
}
