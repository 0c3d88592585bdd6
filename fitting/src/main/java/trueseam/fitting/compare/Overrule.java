package trueseam.fitting.compare;

/** The dressmaker's own decision about one measure; it goes before every rule. */
public sealed interface Overrule {

    /** Leave it as it is. */
    record Leave() implements Overrule {}

    /** Alter it by the whole difference. */
    record Alter() implements Overrule {}

    /**
     * Alter it by so much.
     *
     * @param mm total, plus for larger
     */
    record Amount(double mm) implements Overrule {}
}
