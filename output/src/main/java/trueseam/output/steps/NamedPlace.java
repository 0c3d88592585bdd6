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
        return until.read(new Until.Reader<Optional<Place>>() {
            @Override
            public Optional<Place> meetsAcross(Until.MeetsAcross across) {
                return Optional.of(across.place());
            }

            @Override
            public Optional<Place> meetsAlong(Until.MeetsAlong along) {
                return Optional.of(along.place());
            }

            @Override
            public Optional<Place> grainUpright(Until.GrainUpright upright) {
                return Optional.empty();
            }

            @Override
            public Optional<Place> movesAcross(Until.MovesAcross across) {
                return Optional.empty();
            }

            @Override
            public Optional<Place> movesAlong(Until.MovesAlong along) {
                return Optional.empty();
            }
        });
    }

    /** The mark that a step brings a place level with, so that its line lies across the grain; none where it is upright. */
    static Optional<String> levelMark(Step step) {
        return step instanceof Step.Pivot pivot ? levelMark(pivot.until()) : Optional.empty();
    }

    static Optional<String> levelMark(Until until) {
        return until.read(new Until.Reader<Optional<String>>() {
            @Override
            public Optional<String> meetsAcross(Until.MeetsAcross across) {
                return Optional.empty();
            }

            @Override
            public Optional<String> meetsAlong(Until.MeetsAlong along) {
                return Optional.of(along.mark());
            }

            @Override
            public Optional<String> grainUpright(Until.GrainUpright upright) {
                return Optional.empty();
            }

            @Override
            public Optional<String> movesAcross(Until.MovesAcross across) {
                return Optional.empty();
            }

            @Override
            public Optional<String> movesAlong(Until.MovesAlong along) {
                return Optional.empty();
            }
        });
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

    @Override
    public Optional<Place> cut(Step.Cut step) {
        return Optional.of(step.from());
    }

    @Override
    public Optional<Place> spread(Step.Spread step) {
        return met(step.until());
    }

    @Override
    public Optional<Place> remark(Step.Remark step) {
        return Optional.empty();
    }

    @Override
    public Optional<Place> newDart(Step.NewDart step) {
        return Optional.empty();
    }

    @Override
    public Optional<Place> straighten(Step.Straighten step) {
        return Optional.empty();
    }

    @Override
    public Optional<Place> unfold(Step.Unfold step) {
        return Optional.empty();
    }

    @Override
    public Optional<Place> traceOver(Step.TraceOver step) {
        return Optional.empty();
    }
}
