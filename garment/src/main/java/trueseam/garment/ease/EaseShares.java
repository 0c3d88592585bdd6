package trueseam.garment.ease;

import java.util.List;

/**
 * How the ease at the bust is divided between back, armhole and front. The part of the armhole lies between the across lines of back and
 * front, where the arm moves.
 *
 * @param back the part in the width across the back, 0 to 1
 * @param armhole the part between back and front
 * @param front the part in the width across the front
 */
public record EaseShares(double back, double armhole, double front) {

    /** Rounding of three numbers that were typed. */
    private static final double ROUNDING = 1e-9;

    /** One drafting school's shares: a fifth at the back, four fifths at the armhole, none in front. Source: web:easeshare. */
    public static final EaseShares DRAFTING_SCHOOL = new EaseShares(0.2, 0.8, 0);

    /**
     * Checks that all of it is shared out.
     *
     * @param back as of the record
     * @param armhole as of the record
     * @param front as of the record
     * @throws IllegalArgumentException when a share is below zero or they do not make one whole
     */
    public EaseShares {
        if (!(back >= 0 && armhole >= 0 && front >= 0 && Math.abs(back + armhole + front - 1) <= ROUNDING)) {
            throw new IllegalArgumentException("shares of " + 100 * back + ", " + 100 * armhole + " and " + 100 * front
                    + " do not make 100; write such as 20/80/0");
        }
    }

    /**
     * Reads three shares.
     *
     * @param text hundredths of back, armhole and front, such as {@code 20/80/0}
     * @return the shares
     * @throws IllegalArgumentException when they cannot be read or do not make a hundred
     */
    public static EaseShares parse(String text) {
        String[] parts = text.strip().split("/", -1);
        if (parts.length != 3) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is not three shares; write back, armhole and front such as 20/80/0");
        }
        try {
            List<Double> shares = List.of(parts).stream()
                    .map(part -> Double.parseDouble(part.strip()) / 100)
                    .toList();
            return new EaseShares(shares.get(0), shares.get(1), shares.get(2));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" has something that is no number; write such as 20/80/0", e);
        }
    }

    /**
     * What each part of the half garment gets.
     *
     * @param easeMm the ease round the whole bust, mm
     * @return mm in the half back width, at one armhole, in the half front width; together half the ease
     */
    public List<Double> onTheHalf(double easeMm) {
        double half = easeMm / 2;
        return List.of(back * half, armhole * half, front * half);
    }
}
