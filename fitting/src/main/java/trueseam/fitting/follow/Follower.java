package trueseam.fitting.follow;

import java.util.List;

/**
 * What follows an alteration by itself, without being asked for.
 *
 * @param name what follows
 * @param rule what it goes by
 * @param source who says so
 */
public record Follower(String name, String rule, String source) {

    private static final List<Follower> ALL = List.of(
            new Follower(
                    "sleeve",
                    "each half of the cap takes what its armhole was made longer or shorter on purpose",
                    "common practice"),
            new Follower(
                    "waistband, drawstring channel, cuff, neckband, collar",
                    "takes the full amount at one end, at the centre back where it has one; the cord of a channel is the waist and 24 in",
                    "ND1921"),
            new Follower(
                    "notch of a band or collar",
                    "comes to the walked place where the shoulder or side seam meets it",
                    "common practice"),
            new Follower("facing", "is traced anew from the altered piece", "DM1911"),
            new Follower("lining", "takes the same changes at the same places", "DM1911"),
            new Follower(
                    "buttonholes",
                    "the first and the last keep their distance from the ends of the opening, one stays at bust and one at waist level, the"
                            + " others are spaced evenly between",
                    "common practice"),
            new Follower(
                    "pocket",
                    "goes with the level or the waist that it hangs on, and with its side seam",
                    "common practice"),
            new Follower("placket", "the opening in a seam keeps its length from the waist", "common practice"),
            new Follower(
                    "belt carriers",
                    "keep their shares of the band; the one at the side goes with the side seam",
                    "common practice"));

    /**
     * Everything that follows.
     *
     * @return in the order of work
     */
    public static List<Follower> all() {
        return ALL;
    }
}
