package trueseam.drafting;

/** For whose build a figure is completed and drafted. */
public enum Build {
    /** Women: shaped over the bust by a dart. */
    WOMEN,
    /** Men: a chest girth, and no bust dart. */
    MEN
}
