package trueseam.cloth.packing;

/** How long a search may go on. */
@FunctionalInterface
public interface Patience {

    /**
     * Which part of it is spent.
     *
     * @param rounds how many rounds were searched: a round is a fixed number of places weighed, so that the same seed after the same rounds
     *     gives the same layout
     * @return 0 at the beginning, 1 or more to end; 0 for as long as nothing is known of an end
     */
    double spent(int rounds);

    /**
     * So many rounds.
     *
     * @param most how many, at least 1
     * @return the patience
     */
    static Patience rounds(int most) {
        return rounds -> (double) rounds / most;
    }
}
