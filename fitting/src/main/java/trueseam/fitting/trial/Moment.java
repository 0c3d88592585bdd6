package trueseam.fitting.trial;

import java.util.Locale;

/** When something is seen on the trial garment. */
public enum Moment {
    /** Standing still, arms hanging. */
    STANDING("standing still, with the arms hanging"),
    /** Reaching forward. */
    ARMS_FORWARD("when the arms reach forward"),
    /** Bending the arm. */
    ARM_BENT("when the arm bends"),
    /** Sitting. */
    SITTING("on sitting"),
    /** Walking. */
    WALKING("in walking"),
    /** Changing when the skirt is pulled down. */
    PULLED_DOWN("it changes when skirt or trousers are pulled down");

    private final String words;

    Moment(String words) {
        this.words = words;
    }

    /**
     * What it is called.
     *
     * @return a few words
     */
    public String words() {
        return words;
    }

    /**
     * What an answer calls it.
     *
     * @return for example {@code arms-forward}
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
