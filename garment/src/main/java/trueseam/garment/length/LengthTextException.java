package trueseam.garment.length;

/** Text that was to be a length cannot be read as one. */
public final class LengthTextException extends RuntimeException {
    private final String text;
    private final String reason;

    LengthTextException(String text, String reason) {
        super("\"" + text + "\" is not a length: " + reason + ". Write for example 37 1/2 in, 5/8\" or 95.2 cm.");
        this.text = text;
        this.reason = reason;
    }

    /**
     * What was written.
     *
     * @return the text as it was given
     */
    public String text() {
        return text;
    }

    /**
     * Why it cannot be read.
     *
     * @return the reason, without a full stop
     */
    public String reason() {
        return reason;
    }
}
