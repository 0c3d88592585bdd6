package trueseam.garment.handbook;

/**
 * One way in which a question may be answered.
 *
 * @param word what is typed and kept for it
 * @param label what is done, in a few words
 * @param reason when to do so
 * @param source who says so
 */
public record Answer(String word, String label, String reason, String source) {

    /**
     * The whole answer in a line.
     *
     * @return label, reason and source
     */
    public String whole() {
        return label + ": " + reason + " (" + source + ")";
    }
}
