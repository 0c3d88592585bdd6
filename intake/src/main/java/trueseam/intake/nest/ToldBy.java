package trueseam.intake.nest;

/** What tells the sizes of a nest apart. */
public enum ToldBy {
    /** Layers or groups that are named by their sizes. */
    LAYERS("layers named by size"),
    /** Layers or groups, one a size, of other names. */
    OTHER_LAYERS("layers"),
    /** The colour of the lines. */
    COLOUR("colour"),
    /** The dashes of the lines. */
    DASHES("dashes"),
    /** The width of the lines. */
    WIDTH("line width"),
    /** Colour, dashes and width together. */
    LOOK("colour and dashes together"),
    /** The file itself says the size of every piece, as the apparel convention of DXF files does. */
    BLOCKS("what the file says of each piece"),
    /** Nothing but that each outline lies round the next. */
    NESTING("nothing but that each outline lies round the next"),
    /** There is one size only. */
    NOTHING("nothing: there is one size");

    private final String word;

    ToldBy(String word) {
        this.word = word;
    }

    /**
     * In words.
     *
     * @return what follows "told apart by"
     */
    public String word() {
        return word;
    }
}
