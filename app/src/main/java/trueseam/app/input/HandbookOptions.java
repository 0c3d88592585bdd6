package trueseam.app.input;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trueseam.garment.handbook.Handbooks;
import trueseam.garment.handbook.HipLine;

/** What a fit asks where handbooks disagree. */
public final class HandbookOptions {

    @Mixin
    private LeastEaseOption least;

    @Mixin
    private BetweenSizesOption between;

    @Mixin
    private TrouserHemOption hem;

    @Option(
            names = "--hip-line",
            paramLabel = "as-drawn|own|seven|five-to-seven|abdomen",
            defaultValue = "as-drawn",
            description =
                    "At which height the hip is measured and altered: where the pattern has it; at the person's own waist to"
                            + " hip; 7 in, 6 in or 3 1/2 in down the side; trueseam choices says why. Default: ${DEFAULT-VALUE}.")
    private String hipLine;

    /** For the command line. */
    public HandbookOptions() {}

    /**
     * The answers.
     *
     * @return what was chosen
     */
    public Handbooks handbooks() {
        return new Handbooks(least.least(), between.between(), HipLine.of(hipLine), hem.hem());
    }
}
