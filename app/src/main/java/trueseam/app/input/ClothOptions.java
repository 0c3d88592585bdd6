package trueseam.app.input;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Flaw;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.goods.Shrinkage;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthUnit;

/** The cloth that is bought or at hand. */
public final class ClothOptions {

    @Option(
            names = "--width",
            paramLabel = "LENGTH",
            required = true,
            description = "The cloth's width from selvage to selvage, such as 150cm or 45in.")
    private String width;

    @ArgGroup
    private Lying lying;

    /** How it lies. */
    static final class Lying {
        @Option(names = "--fold", description = "It lies folded lengthwise, selvage on selvage.")
        private boolean fold;

        @Option(names = "--single", description = "It lies open, in a single layer.")
        private boolean single;

        @Option(names = "--crosswise", description = "It lies folded crosswise, end on end.")
        private boolean crosswise;

        private Layers layers() {
            if (crosswise) {
                return Layers.CROSSWISE;
            }
            return single && !fold ? Layers.SINGLE : Layers.LENGTHWISE;
        }
    }

    @Option(names = "--nap", description = "It has a nap, a pile or a one-way print: all pieces lie one way up.")
    private boolean nap;

    @Option(
            names = "--shrink",
            paramLabel = "PERCENT[,PERCENT]",
            description =
                    "By how much it shrinks lengthwise, and crosswise, in its first wash; it is washed before cutting.")
    private String shrink = "0";

    @Option(
            names = "--selvage",
            paramLabel = "LENGTH",
            description = "How much of each selvage is kept free. Default: 1 cm.")
    private String selvage;

    @Option(
            names = "--stripes",
            paramLabel = "LENGTH[,LENGTH]",
            description =
                    "The repeat of a plaid or stripe along the cloth, and across it; 0 for none. Seams are matched at the stitching"
                            + " line.")
    private String stripes = "0";

    @Option(names = "--have", paramLabel = "LENGTH", description = "How much of it there is, where it is a remnant.")
    private String have;

    @Option(
            names = "--flaw",
            paramLabel = "FROM,TO,LOW,HIGH",
            description =
                    "A place that no piece may cover: from and to along the cloth, from and to across it from the lower selvage. May"
                            + " be given several times.")
    private List<String> flaws = List.of();

    /** For the command line. */
    public ClothOptions() {}

    /**
     * Whether it was said how the cloth lies.
     *
     * @return whether it was
     */
    public boolean saysHowItLies() {
        return lying != null;
    }

    /**
     * The cloth.
     *
     * @param bare the unit of numbers without one
     * @return the cloth, folded lengthwise where nothing was said
     * @throws InputException if it is no cloth
     */
    public Cloth cloth(LengthUnit bare) {
        Layers layers = lying == null ? Layers.LENGTHWISE : lying.layers();
        double[] shrinks = two(shrink, "--shrink", LengthUnit.MILLIMETRE, true);
        double[] repeats = two(stripes, "--stripes", bare, false);
        List<Flaw> places = new ArrayList<>();
        for (String flaw : flaws) {
            String[] parts = flaw.split(",", -1);
            if (parts.length != 4) {
                throw new InputException(
                        "--flaw needs four lengths, from and to along the cloth and from and to across it, such as"
                                + " 20cm,30cm,5cm,9cm; \"" + flaw + "\" has " + parts.length + ".");
            }
            places.add(made(() -> new Flaw(
                    length(parts[0], bare), length(parts[1], bare), length(parts[2], bare), length(parts[3], bare))));
        }
        return made(() -> new Cloth(
                length(width, bare),
                layers,
                nap,
                shrinks[0],
                shrinks[1],
                selvage == null ? Cloth.USUAL_SELVAGE_MM : length(selvage, bare),
                repeats[0],
                repeats[1],
                have == null ? OptionalDouble.empty() : OptionalDouble.of(length(have, bare)),
                places));
    }

    private static <T> T made(java.util.function.Supplier<T> making) {
        try {
            return making.get();
        } catch (IllegalArgumentException e) {
            throw new InputException(e.getMessage());
        }
    }

    private static double length(String text, LengthUnit bare) {
        return Length.parse(text.strip(), bare).mm();
    }

    private static double[] two(String text, String option, LengthUnit bare, boolean percent) {
        String[] parts = text.split(",", -1);
        if (parts.length > 2) {
            throw new InputException(
                    option + " takes one or two values, and \"" + text + "\" has " + parts.length + ".");
        }
        double[] values = new double[2];
        for (int i = 0; i < parts.length; i++) {
            values[i] = percent ? shrinkage(parts[i], option) : length(parts[i], bare);
        }
        return values;
    }

    private static double shrinkage(String text, String option) {
        try {
            return Shrinkage.part(text);
        } catch (IllegalArgumentException e) {
            throw new InputException(option + ": " + e.getMessage());
        }
    }
}
