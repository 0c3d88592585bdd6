package trueseam.geometry.convert;

import trueseam.geometry.GeometryException;

/** Path data that cannot be read. */
public class PathDataException extends GeometryException {

    private static final long serialVersionUID = 1L;

    private final int character;

    /**
     * Says what was wrong and where.
     *
     * @param what what was found and what was expected
     * @param character place in the text, the first character being 1
     */
    public PathDataException(String what, int character) {
        super("Path data, character " + character + ": " + what);
        this.character = character;
    }

    /**
     * Where it was.
     *
     * @return place in the text, the first character being 1
     */
    public int character() {
        return character;
    }
}
