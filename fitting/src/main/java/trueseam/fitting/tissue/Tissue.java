package trueseam.fitting.tissue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.OutOfReachException;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Carries out steps on a sheet of tissue. Its state is where the pattern lies now, a rigid motion for each part that it was cut
 * into; beside it lie the marks made, the pin and the lines drawn so far. Used by one thread, for one piece.
 */
public final class Tissue implements StepReader<Void> {

    private final Piece piece;
    private final Map<String, Point> marks = new LinkedHashMap<>();
    private final List<Traced> traced = new ArrayList<>();
    private final List<Step.Join> joins = new ArrayList<>();
    private final List<Step.TraceOver> over = new ArrayList<>();
    private final List<String> straightened = new ArrayList<>();
    private final Inner inner;
    private final Parts parts;
    private Optional<Place> pin = Optional.empty();

    /** A stretch that was traced and where the pattern lay. */
    record Traced(Stretch stretch, Motion motion) {}

    private Tissue(Piece piece) {
        this.piece = piece;
        this.parts = new Parts(piece);
        this.inner = new Inner(piece, parts);
    }

    /**
     * Carries out steps on a piece.
     *
     * @param piece the piece as it lies on the tissue
     * @param steps a finished list
     * @return the piece that was drawn
     * @throws TissueException if a step cannot be carried out or the lines drawn leave a gap
     */
    public static Worked work(Piece piece, List<Step> steps) {
        return worked(piece, steps).worked();
    }

    private static Assembly worked(Piece piece, List<Step> steps) {
        Tissue tissue = new Tissue(piece);
        for (Step step : steps) {
            step.read(tissue);
        }
        return new Assembly(piece, tissue.traced, tissue.joins, tissue.over, tissue.straightened, tissue.inner);
    }

    /**
     * Carries out steps one by one and tells after each what the table looks like.
     *
     * @param piece the piece as it lies on the tissue
     * @param steps a finished list
     * @return a picture after each step, as many as there are steps
     * @throws TissueException if a step cannot be carried out
     */
    public static List<Frame> play(Piece piece, List<Step> steps) {
        Tissue tissue = new Tissue(piece);
        Assembly whole = worked(piece, steps);
        List<Frame> frames = new ArrayList<>(steps.size());
        for (Step step : steps) {
            Motion before = tissue.parts.pose();
            step.read(tissue);
            // A part that was just cut loose lies where it lay before: cutting moves nothing.
            frames.add(tissue.frame(step, step instanceof Step.Cut ? tissue.parts.pose() : before, whole));
        }
        return List.copyOf(frames);
    }

    private Frame frame(Step step, Motion before, Assembly whole) {
        List<Frame.Drawn> drawn = new ArrayList<>();
        for (Traced t : traced) {
            if (t.stretch().lengthMm() > 0) {
                drawn.add(new Frame.Drawn(
                        piece.edge(t.stretch().edge())
                                .path()
                                .part(t.stretch().fromMm(), t.stretch().toMm())
                                .moved(t.motion()),
                        t.motion().isNone(1e-9) ? Frame.Kind.KEPT : Frame.Kind.CARRIED));
            }
        }
        for (Step.Join join : joins) {
            whole.drawnFor(join).ifPresent(path -> drawn.add(new Frame.Drawn(path, Frame.Kind.JOINED)));
        }
        for (Step.TraceOver line : over) {
            drawn.add(new Frame.Drawn(line.path(), Frame.Kind.CARRIED));
        }
        for (String edge : straightened) {
            whole.ruled(edge).ifPresent(path -> drawn.add(new Frame.Drawn(path, Frame.Kind.JOINED)));
        }
        Optional<Point> pinned = pin.map(place -> parts.pose().apply(place.on(piece)));
        return new Frame(step, before, parts.pose(), parts.lying(), pinned, marks, drawn);
    }

    @Override
    public Void mark(Step.Mark step) {
        Point at = step.from().on(piece).plus(new Vec(step.acrossMm(), step.alongMm()));
        if (marks.putIfAbsent(step.name(), at) != null) {
            throw new TissueException(
                    piece.name(), step.name(), "a mark of this name was made before; names must differ.");
        }
        return null;
    }

    @Override
    public Void pin(Step.Pin step) {
        pin = Optional.of(step.at());
        return null;
    }

    @Override
    public Void pivot(Step.Pivot step) {
        Place at = pin.orElseThrow(() ->
                new TissueException(piece.name(), "pivot", "there is no pin to turn about; put in the pin first."));
        swing(step.until(), Spot.of(piece, at));
        return null;
    }

    @Override
    public Void spread(Step.Spread step) {
        pin = Optional.empty();
        swing(step.until(), step.hinge());
        return null;
    }

    private void swing(Until until, Spot about) {
        Motion pose = parts.pose();
        Point centre = pose.apply(about.at());
        parts.lie(pose.then(turn(until, pose, about, centre)));
    }

    private Motion turn(Until until, Motion pose, Spot about, Point centre) {
        return until.read(new Until.Reader<Motion>() {
            @Override
            public Motion meetsAcross(Until.MeetsAcross m) {
                Spot spot = Spot.of(piece, m.place());
                double mm = markAt(m.mark()).x() - pose.apply(spot.at()).x();
                return across(centre, about, pose, spot, mm);
            }

            @Override
            public Motion meetsAlong(Until.MeetsAlong m) {
                Spot spot = Spot.of(piece, m.place());
                double mm = markAt(m.mark()).y() - pose.apply(spot.at()).y();
                return along(centre, about, pose, spot, mm);
            }

            @Override
            public Motion grainUpright(Until.GrainUpright m) {
                return Motion.pivot(centre, -pose.turnRad());
            }

            @Override
            public Motion movesAcross(Until.MovesAcross m) {
                return across(centre, about, pose, m.spot(), m.acrossMm());
            }

            @Override
            public Motion movesAlong(Until.MovesAlong m) {
                return along(centre, about, pose, m.spot(), m.alongMm());
            }
        });
    }

    private Motion across(Point centre, Spot about, Motion pose, Spot spot, double acrossMm) {
        try {
            return Motion.pivotAcross(centre, pose.apply(spot.at()), acrossMm);
        } catch (OutOfReachException e) {
            throw new BeyondReachException(piece.name(), about, spot, e);
        }
    }

    /** A pivot along the grain is a pivot across it on a table turned by a quarter. */
    private Motion along(Point centre, Spot about, Motion pose, Spot spot, double alongMm) {
        Motion quarter = Motion.pivot(Point.ORIGIN, -Math.PI / 2);
        try {
            Motion turned = Motion.pivotAcross(quarter.apply(centre), quarter.apply(pose.apply(spot.at())), alongMm);
            return Motion.pivot(centre, turned.turnRad());
        } catch (OutOfReachException e) {
            throw new BeyondReachException(piece.name(), about, spot, e);
        }
    }

    private Point markAt(String name) {
        Point at = marks.get(name);
        if (at == null) {
            throw new TissueException(piece.name(), name, "no mark of this name was made; make the mark first.");
        }
        return at;
    }

    @Override
    public Void slide(Step.Slide step) {
        pin = Optional.empty();
        parts.lie(parts.pose().then(Motion.slide(new Vec(step.acrossMm(), step.alongMm()))));
        return null;
    }

    @Override
    public Void layBack(Step.LayBack step) {
        pin = Optional.empty();
        parts.layBack();
        return null;
    }

    @Override
    public Void trace(Step.Trace step) {
        for (Stretch stretch : step.stretches()) {
            parts.check(stretch);
            traced.add(new Traced(stretch, parts.pose()));
        }
        return null;
    }

    @Override
    public Void transferBelow(Step.TransferBelow step) {
        inner.copiedBelow(step.levelY(), parts.pose());
        return null;
    }

    @Override
    public Void join(Step.Join step) {
        joins.add(step);
        return null;
    }

    @Override
    public Void cut(Step.Cut step) {
        pin = Optional.empty();
        parts.cut(step);
        return null;
    }

    @Override
    public Void remark(Step.Remark step) {
        inner.remarked(step);
        return null;
    }

    @Override
    public Void newDart(Step.NewDart step) {
        inner.newDart(step);
        return null;
    }

    @Override
    public Void straighten(Step.Straighten step) {
        straightened.add(step.edge());
        return null;
    }

    @Override
    public Void unfold(Step.Unfold step) {
        inner.unfolded(step);
        return null;
    }

    @Override
    public Void traceOver(Step.TraceOver step) {
        over.add(step);
        return null;
    }
}
