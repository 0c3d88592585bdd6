package trueseam.app.input;

import picocli.CommandLine.Option;
import trueseam.garment.handbook.BetweenSizes;

/** {@code --between-sizes}: which size where the body lies between two, where handbooks disagree. */
public final class BetweenSizesOption {

    @Option(
            names = "--between-sizes",
            paramLabel = "nearest|small-boned|large-boned|next-larger",
            defaultValue = "nearest",
            description =
                    "Which size where the body lies between two: the nearer; the smaller, for small bones; the larger, for"
                            + " large bones; or always the next larger; trueseam choices says why. Default: ${DEFAULT-VALUE}.")
    private String word;

    /** For the command line. */
    public BetweenSizesOption() {}

    /**
     * The way.
     *
     * @return the way that was chosen
     */
    public BetweenSizes between() {
        return BetweenSizes.of(word);
    }
}
