package trueseam.cloth.goods;

import java.util.List;
import java.util.OptionalDouble;
import trueseam.geometry.Bounds;

/**
 * The cloth that a garment is cut from.
 *
 * @param widthMm its width from selvage to selvage as it is sold, mm
 * @param layers how it lies
 * @param oneWay whether it has a nap, a pile or a print with one way up: then all pieces lie one way up (common practice)
 * @param shrinkLength by what part it shrinks lengthwise in its first wash, such as 0.05; it is washed before it is cut, so more is bought
 * @param shrinkWidth and across
 * @param selvageMm how much of each selvage is kept free, mm
 * @param stripeAlongMm the distance from one crosswise stripe of a plaid or border to the next, along the cloth, mm; 0 for none
 * @param stripeAcrossMm the distance from one lengthwise stripe to the next, across the cloth, mm; 0 for none
 * @param haveMm the length that there is, where it is a remnant, mm
 * @param flaws places that no piece may cover
 */
public record Cloth(
        double widthMm,
        Layers layers,
        boolean oneWay,
        double shrinkLength,
        double shrinkWidth,
        double selvageMm,
        double stripeAlongMm,
        double stripeAcrossMm,
        OptionalDouble haveMm,
        List<Flaw> flaws) {

    /** The widest cloth that is sold, mm, with room: sheeting and curtain cloth. */
    public static final double WIDEST_MM = 5000;

    /** The usual free selvage, mm (common practice). */
    public static final double USUAL_SELVAGE_MM = 10;

    /** Checks what no cloth can be. */
    public Cloth {
        flaws = List.copyOf(flaws);
        if (!(widthMm >= 100 && widthMm <= WIDEST_MM)) {
            throw new IllegalArgumentException("A cloth " + widthMm
                    + " mm wide is not sold; give its width from selvage to selvage, 100 mm to 5 m.");
        }
        if (!(shrinkLength >= 0 && shrinkLength < 0.5 && shrinkWidth >= 0 && shrinkWidth < 0.5)) {
            throw new IllegalArgumentException("Cloth shrinks by 0 to less than 50 %, and not by "
                    + Math.round(100 * shrinkLength) + " % lengthwise and " + Math.round(100 * shrinkWidth)
                    + " % across; measure a swatch before and after washing it.");
        }
        if (!(selvageMm >= 0 && 4 * selvageMm < widthMm)) {
            throw new IllegalArgumentException("A selvage of " + selvageMm + " mm leaves too little of the cloth.");
        }
        if (!(stripeAlongMm >= 0 && stripeAcrossMm >= 0)) {
            throw new IllegalArgumentException("A repeat is 0 for none, or longer.");
        }
        if (layers == Layers.CROSSWISE && (stripeAlongMm > 0 || stripeAcrossMm > 0)) {
            throw new IllegalArgumentException(
                    "Stripes cannot be matched through cloth folded crosswise; lay it in a single layer.");
        }
        if (oneWay && layers == Layers.CROSSWISE) {
            throw new IllegalArgumentException(
                    "Cloth with one way up must not be folded crosswise: the nap of the upper layer would run the other way; lay it"
                            + " open or fold it lengthwise.");
        }
    }

    /**
     * Plain cloth without a way up, in a single layer.
     *
     * @param widthMm its width, mm
     * @param layers how it lies
     * @return the cloth
     */
    public static Cloth plain(double widthMm, Layers layers) {
        return new Cloth(widthMm, layers, false, 0, 0, USUAL_SELVAGE_MM, 0, 0, OptionalDouble.empty(), List.of());
    }

    /**
     * Whether it has stripes or a plaid to match.
     *
     * @return whether a repeat is above 0
     */
    public boolean striped() {
        return stripeAlongMm > 0 || stripeAcrossMm > 0;
    }

    /**
     * Whether all pieces lie one way up: for a nap, and for crosswise stripes, which would run the other way in a piece laid head to tail.
     *
     * @return whether they do
     */
    public boolean headsUp() {
        return oneWay || stripeAlongMm > 0;
    }

    /**
     * The width that pieces may be laid on, after the first wash, without selvages: of a lengthwise fold one half.
     *
     * @return mm
     */
    public double usableMm() {
        double free = widthMm * (1 - shrinkWidth) - 2 * selvageMm;
        return layers == Layers.LENGTHWISE ? free / 2 : free;
    }

    /**
     * How much must be bought that so much is there after the first wash (required / (1 - s)).
     *
     * @param neededMm the length that is needed, mm
     * @return the length to buy, mm
     */
    public double toBuyMm(double neededMm) {
        return neededMm / (1 - shrinkLength);
    }

    /**
     * The same in another width.
     *
     * @param otherMm its width, mm
     * @return the cloth
     */
    public Cloth wide(double otherMm) {
        return new Cloth(
                otherMm,
                layers,
                oneWay,
                shrinkLength,
                shrinkWidth,
                selvageMm,
                stripeAlongMm,
                stripeAcrossMm,
                haveMm,
                flaws);
    }

    /**
     * The same laid otherwise.
     *
     * @param other how it lies
     * @return the cloth
     */
    public Cloth laid(Layers other) {
        return new Cloth(
                widthMm,
                other,
                oneWay,
                shrinkLength,
                shrinkWidth,
                selvageMm,
                stripeAlongMm,
                stripeAcrossMm,
                haveMm,
                flaws);
    }

    /**
     * Where a flaw lies on the cloth as it is laid: of a lengthwise fold where it shows through on the half that is seen.
     *
     * @param flaw a flaw of the open cloth
     * @return along the cloth in x, across it in y, from the fold or from the lower line that is free of the selvage
     */
    public Bounds asLaid(Flaw flaw) {
        double low = flaw.lowMm() - selvageMm;
        double high = flaw.highMm() - selvageMm;
        if (layers != Layers.LENGTHWISE) {
            return new Bounds(flaw.fromMm(), low, flaw.toMm(), high);
        }
        // Folded in the middle, of both halves; a flaw over the middle begins at the fold.
        double middle = usableMm();
        double a = Math.abs(low - middle);
        double b = Math.abs(high - middle);
        boolean over = low < middle && high > middle;
        return new Bounds(flaw.fromMm(), over ? 0 : Math.min(a, b), flaw.toMm(), Math.max(a, b));
    }
}
