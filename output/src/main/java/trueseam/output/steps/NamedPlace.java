package trueseam.output.steps;

import java.util.Optional;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepReader;
import trueseam.fitting.tissue.Until;

/** The place of the pattern that a step itself names, if it names one. */
final class NamedPlace implements StepReader<Optional<Place>> {

    static final NamedPlace READER = new NamedPlace();

    private NamedPlace() {}

    @Override
    public Optional<Place> mark(Step.Mark step) {
        return Optional.of(step.from());
    }

    @Override
    public Optional<Place> pin(Step.Pin step) {
        return Optional.of(step.at());
    }

    @Override
    public Optional<Place> pivot(Step.Pivot step) {
        return met(step.until());
    }

    /** The place that a pivot brings to a mark. */
    static Optional<Place> met(Until until) {
        if (until instanceof Until.MeetsAcross across) {
            return Optional.of(across.place());
        }
        return until instanceof Until.MeetsAlong along ? Optional.of(along.place()) : Optional.empty();
    }

    @Override
    public Optional<Place> slide(Step.Slide step) {
        return Optional.empty();
    }

    @Override
    public Optional<Place> layBack(Step.LayBack step) {
        return Optional.empty();
    }

    @Override
    public Optional<Place> trace(Step.Trace step) {
        return Optional.empty();
    }

    @Override
    public Optional<Place> transferBelow(Step.TransferBelow step) {
        return Optional.empty();
    }

    @Override
    public Optional<Place> join(Step.Join step) {
        return Optional.empty();
    }
}
