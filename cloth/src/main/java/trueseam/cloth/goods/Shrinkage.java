package trueseam.cloth.goods;

/** By what part cloth shrinks, as it is typed. */
public final class Shrinkage {

    private Shrinkage() {}

    /**
     * Reads a percentage.
     *
     * @param text such as {@code 5}, {@code 5%} or {@code 2.5 %}
     * @return the part, such as 0.05
     * @throws IllegalArgumentException with a sentence if it is no percentage
     */
    public static double part(String text) {
        try {
            return Double.parseDouble(
                            text.strip().replaceFirst("%$", "").strip().replace(',', '.'))
                    / 100;
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    "Shrinkage is a percentage such as 5 or 5%, and not \"" + text.strip() + "\".", e);
        }
    }
}
