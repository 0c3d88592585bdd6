package trueseam.output.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.Frame;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
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
            Optional<SpotFigure> spot,
            OptionalDouble mm,
            PoseFigure pose)
            implements Figure {}

    /** When a pivot or a spread stops. */
    private record UntilFigure(
            String until,
            Optional<PlaceFigure> place,
            Optional<String> mark,
            Optional<SpotFigure> spot,
            OptionalDouble mm) {

        static UntilFigure of(Until stop) {
            return stop.read(new Until.Reader<UntilFigure>() {
                @Override
                public UntilFigure meetsAcross(Until.MeetsAcross m) {
                    return met("meets across", m.place(), m.mark());
                }

                @Override
                public UntilFigure meetsAlong(Until.MeetsAlong m) {
                    return met("meets along", m.place(), m.mark());
                }

                @Override
                public UntilFigure grainUpright(Until.GrainUpright m) {
                    return new UntilFigure(
                            "grain upright",
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            OptionalDouble.empty());
                }

                @Override
                public UntilFigure movesAcross(Until.MovesAcross m) {
                    return moved("moves across", m.spot(), m.acrossMm());
                }

                @Override
                public UntilFigure movesAlong(Until.MovesAlong m) {
                    return moved("moves along", m.spot(), m.alongMm());
                }
            });
        }

        private static UntilFigure met(String until, Place place, String mark) {
            return new UntilFigure(
                    until,
                    Optional.of(PlaceFigure.of(place)),
                    Optional.of(mark),
                    Optional.empty(),
                    OptionalDouble.empty());
        }

        private static UntilFigure moved(String until, Spot spot, double mm) {
            return new UntilFigure(
                    until, Optional.empty(), Optional.empty(), Optional.of(SpotFigure.of(spot)), OptionalDouble.of(mm));
        }
    }

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

    record SpotFigure(double xMm, double yMm, String word) {
        static SpotFigure of(Spot spot) {
            return new SpotFigure(spot.at().x(), spot.at().y(), spot.word());
        }
    }

    record CutFigure(
            String step,
            String words,
            String part,
            PlaceFigure from,
            List<SpotFigure> through,
            PlaceFigure to,
            PoseFigure pose)
            implements Figure {}

    record SpreadFigure(
            String step,
            String words,
            SpotFigure hinge,
            String until,
            Optional<PlaceFigure> place,
            Optional<String> mark,
            Optional<SpotFigure> spot,
            OptionalDouble mm,
            PoseFigure pose)
            implements Figure {}

    record RemarkFigure(
            String step, String words, String kind, String name, double acrossMm, double alongMm, PoseFigure pose)
            implements Figure {}

    record NewDartFigure(String step, String words, String name, StretchFigure mouth, SpotFigure point, PoseFigure pose)
            implements Figure {}

    record StraightenFigure(String step, String words, String edge, PoseFigure pose) implements Figure {}

    record UnfoldFigure(String step, String words, String edge, double allowanceMm, PoseFigure pose)
            implements Figure {}

    record TraceOverFigure(String step, String words, String from, StretchFigure stretch, PoseFigure pose)
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
        UntilFigure until = UntilFigure.of(step.until());
        return new PivotFigure(
                "pivot", words, until.until(), until.place(), until.mark(), until.spot(), until.mm(), pose);
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

    @Override
    public Figure cut(Step.Cut step) {
        return new CutFigure(
                "cut",
                words,
                step.part(),
                PlaceFigure.of(step.from()),
                step.through().stream().map(SpotFigure::of).toList(),
                PlaceFigure.of(step.to()),
                pose);
    }

    @Override
    public Figure spread(Step.Spread step) {
        UntilFigure until = UntilFigure.of(step.until());
        return new SpreadFigure(
                "spread",
                words,
                SpotFigure.of(step.hinge()),
                until.until(),
                until.place(),
                until.mark(),
                until.spot(),
                until.mm(),
                pose);
    }

    @Override
    public Figure remark(Step.Remark step) {
        return new RemarkFigure(
                "remark",
                words,
                step.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                step.name(),
                step.acrossMm(),
                step.alongMm(),
                pose);
    }

    @Override
    public Figure newDart(Step.NewDart step) {
        return new NewDartFigure(
                "new dart", words, step.name(), StretchFigure.of(step.mouth()), SpotFigure.of(step.point()), pose);
    }

    @Override
    public Figure straighten(Step.Straighten step) {
        return new StraightenFigure("straighten", words, step.edge(), pose);
    }

    @Override
    public Figure unfold(Step.Unfold step) {
        return new UnfoldFigure("unfold", words, step.edge(), step.allowanceMm(), pose);
    }

    @Override
    public Figure traceOver(Step.TraceOver step) {
        return new TraceOverFigure("trace over", words, step.from(), StretchFigure.of(step.stretch()), pose);
    }
}
