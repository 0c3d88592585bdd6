package trueseam.output.words;

import trueseam.garment.pattern.LevelName;

/** How the lines across the grain of a piece are called in sentences. */
public final class LineWords {

    private LineWords() {}

    /**
     * The line of a name.
     *
     * @param level which line
     * @return without an article, for example {@code bodice length line}, {@code line above the knee}, {@code hip level}
     */
    public static String of(LevelName level) {
        return switch (level) {
            case ABOVE_KNEE -> "line above the knee";
            case BELOW_KNEE -> "line below the knee";
            case ABOVE_ELBOW -> "line above the elbow";
            case BELOW_ELBOW -> "line below the elbow";
            case BODICE_LENGTH, SKIRT_LENGTH, CROTCH_DEPTH -> level.word() + " line";
            case ACROSS, BUST, WAIST, HIP, CROTCH, KNEE, BICEP, ELBOW -> level.word() + " level";
        };
    }
}
