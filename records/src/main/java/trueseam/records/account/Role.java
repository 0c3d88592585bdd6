package trueseam.records.account;

import java.util.Locale;

/** What an account may do beside its own fittings. */
public enum Role {
    /** Makes and closes accounts, and may lead classes; does not see what others fit. */
    OWNER,
    /** Leads classes, and sees what their students share. */
    TEACHER,
    /** Fits, and shares with the teachers of her classes what she likes. */
    STUDENT;

    /**
     * Its word.
     *
     * @return in small letters
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Whether it leads classes.
     *
     * @return true but for a student
     */
    public boolean leads() {
        return this != STUDENT;
    }
}
