package trueseam.records.archive;

/** A file that is worked out of a project and put into an archive for reading and printing. It is not brought back: it can be made again. */
public final class Made {

    private final String name;
    private final byte[] content;

    /**
     * A file that was made.
     *
     * @param name what it is called, such as {@code steps.pdf}; small letters, digits, hyphens and points
     * @param content what is in it
     */
    public Made(String name, byte[] content) {
        this.name = name;
        this.content = content.clone();
    }

    /**
     * What it is called.
     *
     * @return the name, without a folder
     */
    public String name() {
        return name;
    }

    /**
     * What is in it.
     *
     * @return a copy
     */
    public byte[] content() {
        return content.clone();
    }
}
