package trueseam.intake.dxf;

/**
 * How something is drawn, before layers and inserts are looked up.
 *
 * @param layer name of its layer
 * @param colour number of its colour; {@link #BY_LAYER} or {@link #BY_BLOCK}
 * @param trueColour red, green and blue in one number, or -1
 * @param lineType name, BYLAYER or BYBLOCK
 * @param lineTypeScale how much longer its dashes are
 * @param weight hundredths of a millimetre; negative if the layer or the block says it
 * @param line its line in the file
 */
record Trait(String layer, int colour, int trueColour, String lineType, double lineTypeScale, int weight, int line) {

    static final int BY_LAYER = 256;
    static final int BY_BLOCK = 0;

    static Trait of(RawEntity e) {
        return new Trait(
                e.text(8, "0").strip(),
                e.whole(62, BY_LAYER),
                e.whole(420, -1),
                Sections.key(e.text(6, "BYLAYER")),
                e.number(48, 1),
                e.whole(370, -1),
                e.line());
    }
}
