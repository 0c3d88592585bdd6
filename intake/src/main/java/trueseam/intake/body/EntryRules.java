package trueseam.intake.body;

import trueseam.garment.body.Plausibility;
import trueseam.garment.body.Population;
import trueseam.garment.length.LengthUnit;

/**
 * How the entries of a body file are taken.
 *
 * @param bareUnit the unit meant where none is written
 * @param plausibility what is impossible and what is rare
 * @param population whose usual measures count
 */
public record EntryRules(LengthUnit bareUnit, Plausibility plausibility, Population population) {

    /**
     * The usual rules: bare numbers are inches, limits of the surveyed population of both sexes.
     *
     * @return those rules
     */
    public static EntryRules usual() {
        return new EntryRules(LengthUnit.INCH, SurveyLimits.read(), Population.ALL);
    }

    /**
     * The same rules with another unit for bare numbers.
     *
     * @param unit the unit
     * @return the new rules
     */
    public EntryRules withBareUnit(LengthUnit unit) {
        return new EntryRules(unit, plausibility, population);
    }

    /**
     * The same rules for another population.
     *
     * @param whose whose usual measures count
     * @return the new rules
     */
    public EntryRules withPopulation(Population whose) {
        return new EntryRules(bareUnit, plausibility, whose);
    }
}
