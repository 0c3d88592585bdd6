package trueseam.worktable.project;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The cloth that the pieces are cut from: what was typed of it, and where the pieces were laid. Fashion cloth, lining and interfacing each have
 * their own.
 *
 * @param shown the word of the one that is looked at, such as {@code fashion}
 * @param cloths each by its word
 */
public record ClothPart(String shown, Map<String, OneCloth> cloths) {

    /**
     * One cloth.
     *
     * @param choices as typed, by name, such as {@code width}; a missing one is the usual
     * @param pieces the names of the pieces that are cut from it; empty: the usual ones
     * @param seams the names of the seams at which stripes match, where {@code seams} is among the choices; else all
     * @param flaws as typed
     * @param laid where every piece lies; empty: not laid yet
     * @param task the mark of the task that it was laid for: of another one only what lies there by hand counts
     * @param rounds after how many rounds of the search it was found; 0: it was not, or was moved by hand since
     * @param lengths how much is needed; empty until it was worked out
     */
    public record OneCloth(
            Map<String, String> choices,
            List<String> pieces,
            List<String> seams,
            List<TypedFlaw> flaws,
            List<Place> laid,
            String task,
            int rounds,
            Lengths lengths) {

        /** What is not there is empty. */
        public OneCloth {
            choices = choices == null ? Map.of() : Collections.unmodifiableMap(new TreeMap<>(choices));
            pieces = pieces == null ? List.of() : List.copyOf(pieces);
            seams = seams == null ? List.of() : List.copyOf(seams);
            flaws = flaws == null ? List.of() : List.copyOf(flaws);
            laid = laid == null ? List.of() : List.copyOf(laid);
            task = task == null ? "" : task;
            lengths = lengths == null ? Lengths.unknown() : lengths;
        }

        static OneCloth usual() {
            return new OneCloth(Map.of(), List.of(), List.of(), List.of(), List.of(), "", 0, Lengths.unknown());
        }

        /**
         * The same with other choices.
         *
         * @param other by name
         * @param itsPieces the pieces; empty: the usual ones
         * @param itsSeams the seams
         * @param itsFlaws the flaws
         * @return the cloth, what lies on it as before
         */
        public OneCloth chosen(
                Map<String, String> other, List<String> itsPieces, List<String> itsSeams, List<TypedFlaw> itsFlaws) {
            return new OneCloth(other, itsPieces, itsSeams, itsFlaws, laid, task, rounds, lengths);
        }

        /**
         * The same with the pieces laid.
         *
         * @param places where
         * @param ofTask the mark of the task
         * @param found after how many rounds of the search; 0: by hand
         * @return the cloth
         */
        public OneCloth laid(List<Place> places, String ofTask, int found) {
            return new OneCloth(choices, pieces, seams, flaws, places, ofTask, found, lengths);
        }

        /**
         * The same with the lengths worked out.
         *
         * @param known how much is needed
         * @return the cloth
         */
        public OneCloth with(Lengths known) {
            return new OneCloth(choices, pieces, seams, flaws, laid, task, rounds, known);
        }
    }

    /**
     * A flaw as it was typed.
     *
     * @param from where it begins along the cloth
     * @param to where it ends
     * @param low where it begins across
     * @param high where it ends across
     */
    public record TypedFlaw(String from, String to, String low, String high) {}

    /**
     * Where a piece lies.
     *
     * @param piece its name
     * @param turn by how much it is turned, degrees
     * @param faceDown whether it lies on its face
     * @param along where the lower end of its grainline lies along the cloth, mm
     * @param across and across it, mm
     * @param byHand whether it was put there by hand
     */
    public record Place(String piece, double turn, boolean faceDown, double along, double across, boolean byHand) {}

    /**
     * What other widths need, and what the original pieces need beside the altered ones, all searched equally long.
     *
     * @param task the mark of the task that they are of
     * @param widths the widths
     * @param original the original pieces, at most one
     * @param altered the altered ones, at most one
     */
    public record Lengths(String task, List<Width> widths, List<Width> original, List<Width> altered) {

        /** What is not there is empty. */
        public Lengths {
            task = task == null ? "" : task;
            widths = widths == null ? List.of() : List.copyOf(widths);
            original = original == null ? List.of() : List.copyOf(original);
            altered = altered == null ? List.of() : List.copyOf(altered);
        }

        static Lengths unknown() {
            return new Lengths("", List.of(), List.of(), List.of());
        }
    }

    /**
     * How much cloth of one width is needed.
     *
     * @param width its width, mm
     * @param needed the length of washed cloth, mm
     * @param toBuy the length before it shrinks, mm
     * @param density which part becomes garment
     * @param why why a piece does not fit; empty where all do
     */
    public record Width(double width, double needed, double toBuy, double density, String why) {}

    /** What is not there is empty. */
    public ClothPart {
        shown = shown == null ? "" : shown;
        cloths = cloths == null ? Map.of() : Collections.unmodifiableMap(new TreeMap<>(cloths));
    }

    /**
     * Nothing chosen yet.
     *
     * @return the usual
     */
    public static ClothPart empty() {
        return new ClothPart("", Map.of());
    }

    /**
     * One of the cloths.
     *
     * @param stuff its word
     * @return what was chosen and laid, the usual if nothing was
     */
    public OneCloth of(String stuff) {
        return cloths.getOrDefault(stuff, OneCloth.usual());
    }

    /**
     * The same with one cloth changed.
     *
     * @param stuff its word
     * @param one the cloth now
     * @return the part
     */
    public ClothPart with(String stuff, OneCloth one) {
        Map<String, OneCloth> changed = new TreeMap<>(cloths);
        changed.put(stuff, one);
        return new ClothPart(shown, changed);
    }

    /**
     * The same with another one looked at.
     *
     * @param stuff its word
     * @return the part
     */
    public ClothPart showing(String stuff) {
        return new ClothPart(stuff, cloths);
    }
}
