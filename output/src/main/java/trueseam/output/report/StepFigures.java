package trueseam.output.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.Frame;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepReader;
import trueseam.fitting.tissue.Stretch;
import trueseam.fitting.tissue.Until;
import trueseam.geometry.Motion;

/** Every kind of step as data: the arguments of the step, and where the pattern lies after it. */
final class StepFigures implements StepReader<StepFigures.Figure> {

    /** A step in the file; what differs by kind has its own record. */
    sealed interface Figure {
        /** The kind of step, in one word. */
        String step();
    }

    record PlaceFigure(String edge, double alongMm, String word) {
        static PlaceFigure of(Place place) {
            return new PlaceFigure(place.edge(), place.alongMm(), place.word());
        }
    }

    record StretchFigure(String edge, double fromMm, double toMm) {
        static StretchFigure of(Stretch stretch) {
            return new StretchFigure(stretch.edge(), stretch.fromMm(), stretch.toMm());
        }
    }

    record PoseFigure(double turnDegrees, double dxMm, double dyMm) {
        static PoseFigure of(Motion pose) {
            return new PoseFigure(Math.toDegrees(pose.turnRad()), pose.dx(), pose.dy());
        }
    }

    record MarkFigure(
            String step, String words, String name, PlaceFigure from, double acrossMm, double alongMm, PoseFigure pose)
            implements Figure {}

    record PinFigure(String step, String words, PlaceFigure at, PoseFigure pose) implements Figure {}

    record PivotFigure(
            String step,
            String words,
            String until,
            Optional<PlaceFigure> place,
            Optional<String> mark,
            PoseFigure pose)
            implements Figure {}

    record SlideFigure(String step, String words, double acrossMm, double alongMm, PoseFigure pose) implements Figure {}

    record LayBackFigure(String step, String words, PoseFigure pose) implements Figure {}

    record TraceFigure(String step, String words, boolean kept, List<StretchFigure> stretches, PoseFigure pose)
            implements Figure {}

    record TransferFigure(String step, String words, double belowYMm, PoseFigure pose) implements Figure {}

    record JoinFigure(
            String step,
            String words,
            StretchFigure gap,
            String form,
            String start,
            String end,
            OptionalDouble lengthMm,
            PoseFigure pose)
            implements Figure {}

    private final String words;
    private final PoseFigure pose;

    private StepFigures(String words, Motion pose) {
        this.words = words;
        this.pose = PoseFigure.of(pose);
    }

    static List<Figure> of(List<Frame> frames, List<String> words) {
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < frames.size(); i++) {
            figures.add(frames.get(i)
                    .step()
                    .read(new StepFigures(words.get(i), frames.get(i).pose())));
        }
        return List.copyOf(figures);
    }

    @Override
    public Figure mark(Step.Mark step) {
        return new MarkFigure(
                "mark", words, step.name(), PlaceFigure.of(step.from()), step.acrossMm(), step.alongMm(), pose);
    }

    @Override
    public Figure pin(Step.Pin step) {
        return new PinFigure("pin", words, PlaceFigure.of(step.at()), pose);
    }

    @Override
    public Figure pivot(Step.Pivot step) {
        return step.until().read(new Until.Reader<Figure>() {
            @Override
            public Figure meetsAcross(Until.MeetsAcross until) {
                return pivotFigure("meets across", Optional.of(until.place()), Optional.of(until.mark()));
            }

            @Override
            public Figure meetsAlong(Until.MeetsAlong until) {
                return pivotFigure("meets along", Optional.of(until.place()), Optional.of(until.mark()));
            }

            @Override
            public Figure grainUpright(Until.GrainUpright until) {
                return pivotFigure("grain upright", Optional.empty(), Optional.empty());
            }
        });
    }

    private Figure pivotFigure(String until, Optional<Place> place, Optional<String> mark) {
        return new PivotFigure("pivot", words, until, place.map(PlaceFigure::of), mark, pose);
    }

    @Override
    public Figure slide(Step.Slide step) {
        return new SlideFigure("slide", words, step.acrossMm(), step.alongMm(), pose);
    }

    @Override
    public Figure layBack(Step.LayBack step) {
        return new LayBackFigure("lay back", words, pose);
    }

    @Override
    public Figure trace(Step.Trace step) {
        return new TraceFigure(
                "trace",
                words,
                step.kept(),
                step.stretches().stream().map(StretchFigure::of).toList(),
                pose);
    }

    @Override
    public Figure transferBelow(Step.TransferBelow step) {
        return new TransferFigure("transfer below", words, step.levelY(), pose);
    }

    @Override
    public Figure join(Step.Join step) {
        StretchFigure gap = StretchFigure.of(step.gap());
        return step.form().read(new JoinForm.Reader<Figure>() {
            @Override
            public Figure straight(JoinForm.Straight form) {
                return new JoinFigure("join", words, gap, "straight", "free", "free", OptionalDouble.empty(), pose);
            }

            @Override
            public Figure curve(JoinForm.Curve form) {
                return new JoinFigure(
                        "join",
                        words,
                        gap,
                        "curve",
                        direction(form.start()),
                        direction(form.end()),
                        form.lengthMm(),
                        pose);
            }

            @Override
            public Figure refit(JoinForm.Refit form) {
                return new JoinFigure("join", words, gap, "refit", "free", "free", OptionalDouble.empty(), pose);
            }
        });
    }

    private static String direction(Direction direction) {
        return direction.read(new Direction.Reader<String>() {
            @Override
            public String asDrawn(Direction.AsDrawn drawn) {
                return "as drawn";
            }

            @Override
            public String free(Direction.Free free) {
                return "free";
            }

            @Override
            public String towards(Direction.Towards towards) {
                return "towards " + towards.tangent().x() + " "
                        + towards.tangent().y();
            }
        });
    }
}
