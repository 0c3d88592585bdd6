package trueseam.output.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.fitting.tissue.Frame;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepReader;
import trueseam.fitting.tissue.Stretch;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.output.words.RulerLength;

/**
 * What of a step is too small for the picture of the whole piece and is shown beside it, larger.
 *
 * @param step number of the step in its chapter
 * @param from where the movement or the line begins
 * @param to where it ends
 * @param label the amount, written beside it
 * @param moves whether it is a movement, drawn as an arrow
 */
record Detail(int step, Point from, Point to, String label, boolean moves) {

    /** Below this nothing can be seen on paper, however drawn: a pencil's line is as wide. */
    private static final double SEEN_MM = 0.25;

    /** Of two places about as low the outer one is shown. */
    private static final double LEVEL_MM = 10;

    double sizeMm() {
        return from.distanceTo(to);
    }

    Point middle() {
        return from.towards(to, 0.5);
    }

    boolean isSeen() {
        return sizeMm() >= SEEN_MM;
    }

    /** The details of the steps of a picture. */
    static List<Detail> of(StepCell cell, Piece piece, List<Step> steps, RulerLength ruler) {
        List<Detail> details = new ArrayList<>();
        for (int i = 0; i < cell.frames().size(); i++) {
            Frame frame = cell.frames().get(i);
            frame.step()
                    .read(new Reader(cell.first() + i, frame, piece, steps, ruler))
                    .ifPresent(details::add);
        }
        return List.copyOf(details);
    }

    /** Finds the detail of a step, if it has one. */
    private record Reader(int number, Frame frame, Piece piece, List<Step> steps, RulerLength ruler)
            implements StepReader<Optional<Detail>> {

        @Override
        public Optional<Detail> mark(Step.Mark step) {
            if (step.acrossMm() == 0 && step.alongMm() == 0) {
                return Optional.empty();
            }
            Point from = step.from().on(piece);
            boolean across = step.acrossMm() != 0;
            return Optional.of(arrow(from, frame.marks().get(step.name()), step.from(), across));
        }

        private Detail arrow(Point from, Point to, Place place, boolean across) {
            Vec by = to.minus(from);
            String way = across
                    ? ruler.show(by.x()) + " " + Outward.across(by.x(), new Outward(piece).at(place))
                    : ruler.show(by.y()) + " " + Outward.along(by.y());
            return new Detail(number, from, to, way, true);
        }

        @Override
        public Optional<Detail> pin(Step.Pin step) {
            return Optional.empty();
        }

        @Override
        public Optional<Detail> pivot(Step.Pivot step) {
            return pivotTo(step.until());
        }

        private Optional<Detail> pivotTo(Until until) {
            return NamedPlace.met(until).map(place -> {
                Point p = place.on(piece);
                return arrow(
                        frame.before().apply(p),
                        frame.pose().apply(p),
                        place,
                        NamedPlace.levelMark(until).isEmpty());
            });
        }

        @Override
        public Optional<Detail> slide(Step.Slide step) {
            Vec by = new Vec(step.acrossMm(), step.alongMm());
            Point from = frame.before().apply(seenAt());
            String way = step.acrossMm() == 0
                    ? ruler.show(step.alongMm()) + " " + Outward.along(step.alongMm())
                    : ruler.show(step.acrossMm()) + " " + Outward.side(step.acrossMm());
            return Optional.of(new Detail(number, from, from.plus(by), way, true));
        }

        /** A place where the slide is well seen: the lowest end of what is traced next. */
        private Point seenAt() {
            for (Step next : steps.subList(number, steps.size())) {
                if (next instanceof Step.Trace trace) {
                    return lowestOf(trace.stretches());
                }
            }
            return piece.outline().start();
        }

        private Point lowestOf(List<Stretch> stretches) {
            Point best = null;
            for (Stretch stretch : stretches) {
                Path path = piece.edge(stretch.edge()).path();
                for (Point p : List.of(path.pointAt(stretch.fromMm()), path.pointAt(stretch.toMm()))) {
                    boolean level = best != null && Math.abs(p.y() - best.y()) <= LEVEL_MM;
                    boolean farther = best != null && Math.abs(p.x()) > Math.abs(best.x());
                    best = best == null || (level ? farther : p.y() < best.y()) ? p : best;
                }
            }
            return best == null ? piece.outline().start() : best;
        }

        @Override
        public Optional<Detail> layBack(Step.LayBack step) {
            return Optional.empty();
        }

        @Override
        public Optional<Detail> trace(Step.Trace step) {
            return Optional.empty();
        }

        @Override
        public Optional<Detail> transferBelow(Step.TransferBelow step) {
            return Optional.empty();
        }

        @Override
        public Optional<Detail> join(Step.Join step) {
            // The line that this step drew is the last one of the frame.
            List<Frame.Drawn> drawn = frame.drawn();
            Frame.Drawn last = drawn.get(drawn.size() - 1);
            Stretch gap = step.gap();
            if (last.kind() != Frame.Kind.JOINED || last.path().length() > 3 * gap.lengthMm() + 60) {
                return Optional.empty();
            }
            return Optional.of(new Detail(
                    number,
                    last.path().start(),
                    last.path().end(),
                    ruler.show(last.path().length()) + " long",
                    false));
        }

        @Override
        public Optional<Detail> cut(Step.Cut step) {
            return Optional.empty();
        }

        @Override
        public Optional<Detail> spread(Step.Spread step) {
            return step.until().read(new Until.Reader<Optional<Detail>>() {
                @Override
                public Optional<Detail> meetsAcross(Until.MeetsAcross until) {
                    return pivotTo(until);
                }

                @Override
                public Optional<Detail> meetsAlong(Until.MeetsAlong until) {
                    return pivotTo(until);
                }

                @Override
                public Optional<Detail> grainUpright(Until.GrainUpright until) {
                    return Optional.empty();
                }

                @Override
                public Optional<Detail> movesAcross(Until.MovesAcross until) {
                    return Optional.of(opening(until.spot().at(), true));
                }

                @Override
                public Optional<Detail> movesAlong(Until.MovesAlong until) {
                    return Optional.of(opening(until.spot().at(), false));
                }
            });
        }

        private Detail opening(Point p, boolean across) {
            Point from = frame.before().apply(p);
            Point to = frame.pose().apply(p);
            Vec by = to.minus(from);
            String way = across
                    ? ruler.show(by.x()) + " " + Outward.side(by.x())
                    : ruler.show(by.y()) + " " + Outward.along(by.y());
            return new Detail(number, from, to, way, true);
        }

        @Override
        public Optional<Detail> remark(Step.Remark step) {
            return Optional.empty();
        }

        @Override
        public Optional<Detail> newDart(Step.NewDart step) {
            return Optional.empty();
        }

        @Override
        public Optional<Detail> straighten(Step.Straighten step) {
            return Optional.empty();
        }

        @Override
        public Optional<Detail> unfold(Step.Unfold step) {
            return Optional.empty();
        }

        @Override
        public Optional<Detail> traceOver(Step.TraceOver step) {
            return Optional.empty();
        }
    }
}
