package trueseam.fitting.plan;

import java.util.Optional;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.work.EarlierRounds;
import trueseam.garment.body.Body;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.size.SizeRow;

/**
 * A fit in the hand: it can be worked again with other choices, picture after picture, for what was drawn and learned in working it is kept.
 * Pieces that the other choices leave as they are are not drawn anew, and the corrections begin where those of this fit came to.
 *
 * <p>Laws: (1) {@link #with} depends on this fit and the choices alone, not on what it was asked before; (2) it measures what a fit from the
 * beginning measures, within what corrections leave (0.02 mm a measure). Safe for use by several threads.
 */
public final class HeldFit {

    private final Pattern pattern;
    private final FitResult fit;
    private final EarlierRounds rounds;
    private final Corrections corrections;

    private HeldFit(Pattern pattern, FitResult fit, EarlierRounds rounds, Corrections corrections) {
        this.pattern = pattern;
        this.fit = fit;
        this.rounds = rounds;
        this.corrections = corrections;
    }

    /**
     * Fits a pattern and keeps the fit in the hand.
     *
     * @param pattern the pattern in the chosen size
     * @param body the body
     * @param size the row of the size table that the pattern was taken in, if known
     * @param choices what the dressmaker chose
     * @return the fit that {@link Fitting#fit} makes of them
     * @throws IllegalArgumentException of this room or the tissue's if the pattern cannot take a change at all
     */
    public static HeldFit of(Pattern pattern, Body body, Optional<SizeRow> size, FitChoices choices) {
        Fitting fitting = new Fitting(pattern, body, size, Optional.empty(), choices, Optional.empty());
        FitResult result = fitting.result();
        return new HeldFit(pattern, result, fitting.rounds(), fitting.corrections());
    }

    /**
     * The fit.
     *
     * @return as it was worked
     */
    public FitResult fit() {
        return fit;
    }

    /**
     * The same body and pattern with other choices.
     *
     * @param choices what she chooses now
     * @return the whole fit, proven or marked as failing
     * @throws IllegalArgumentException of this room or the tissue's if the pattern cannot take a change at all
     */
    public FitResult with(FitChoices choices) {
        return new Fitting(pattern, fit.body(), fit.size(), Optional.empty(), choices, Optional.of(this)).result();
    }

    EarlierRounds rounds() {
        return rounds;
    }

    Corrections corrections() {
        return corrections;
    }
}
