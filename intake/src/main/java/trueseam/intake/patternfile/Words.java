package trueseam.intake.patternfile;

/** The names of our attributes, and the words that may stand in {@code data-line}. Documented in docs/pattern-file.md. */
final class Words {

    static final String FORMAT = "data-format";
    /** The format that is written; readers refuse a later one. */
    static final String FORMAT_NOW = "1";

    static final String PATTERN = "data-pattern";
    static final String SIZE = "data-size";
    static final String SIZE_TABLE = "data-size-table";
    static final String SOURCE = "data-source";

    static final String PIECE = "data-piece";
    static final String KIND = "data-kind";
    static final String CUT = "data-cut";

    static final String EDGE = "data-edge";
    static final String ROLE = "data-role";
    static final String ALLOWANCE = "data-allowance";

    static final String DART = "data-dart";
    static final String FROM = "data-from";
    static final String TO = "data-to";
    static final String NOTCH = "data-notch";
    static final String AT = "data-at";
    static final String LANDMARK = "data-landmark";
    static final String LEVEL = "data-level";
    static final String NAME = "data-name";

    static final String SEAM = "data-seam";
    static final String EASE = "data-ease";
    static final String MEASURE = "data-measure";

    static final String LINE = "data-line";
    static final String STITCHING = "stitching";
    static final String FOLD = "fold";
    static final String GRAIN = "grain";
    static final String INTERNAL = "internal";
    /** Derived from stitching lines and allowances, so not read back. */
    static final String CUTTING = "cutting";
    /** The line before an alteration, for the eye only. */
    static final String ORIGINAL = "original";

    private Words() {}
}
