package trueseam.fitting.standing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.body.Side;
import trueseam.garment.earlier.EarlierFit;
import trueseam.garment.earlier.MeasureThen;
import trueseam.garment.earlier.MeasureThen.Settled;
import trueseam.garment.earlier.NamedThen;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;

/** Invented earlier fits of one invented person. */
record Earlier(String size, LocalDate made, boolean worn, List<MeasureThen> measures, List<NamedThen> named) {

    static final LocalDate TODAY = LocalDate.of(2026, 11, 26);

    /** What the half-inch rule leaves, mm. */
    static final double HALF_INCH = 12.7;

    static Earlier bodice(String size, int monthsAgo) {
        return new Earlier(size, TODAY.minusMonths(monthsAgo), false, List.of(), List.of());
    }

    Earlier andWorn() {
        return new Earlier(size, made, true, measures, named);
    }

    Earlier with(Measure measure, double bodyMm, double drawnForMm, double changedMm, Settled settled) {
        List<MeasureThen> all = new ArrayList<>(measures);
        all.add(new MeasureThen(measure, bodyMm, drawnForMm, changedMm, settled, HALF_INCH));
        return new Earlier(size, made, worn, all, named);
    }

    Earlier named(String name, double mm, Side side) {
        List<NamedThen> all = new ArrayList<>(named);
        all.add(new NamedThen(name, "", mm, side, false));
        return new Earlier(size, made, worn, measures, all);
    }

    EarlierFit fit() {
        return new EarlierFit(
                "Ann", Optional.of(made), worn, GarmentKind.BODICE, "blouse", size, "misses", measures, named);
    }
}
