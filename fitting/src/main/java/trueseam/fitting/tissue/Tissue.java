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
 * Carries out steps on a sheet of tissue. Its one piece of state is where the pattern lies now, a rigid motion; beside it
 * lie the marks made, the pin and the lines drawn so far. Used by one thread, for one piece.
 */
public final class Tissue implements StepReader<Void> {

    private final Piece piece;
    private final Map<String, Point> marks = new LinkedHashMap<>();
    private final List<Traced> traced = new ArrayList<>();
    private final List<Step.Join> joins = new ArrayList<>();
    private final List<Transferred> transferred = new ArrayList<>();
    private Motion pose = Motion.NONE;
    private Optional<Place> pin = Optional.empty();

    /** A stretch that was traced and where the pattern lay. */
    record Traced(Stretch stretch, Motion motion) {}

    /** The marks below a level that were copied and where the pattern lay. */
    record Transferred(double belowY, Motion motion) {}

    private Tissue(Piece piece) {
        this.piece = piece;
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
        Tissue tissue = new Tissue(piece);
        for (Step step : steps) {
            step.read(tissue);
        }
        return new Assembly(piece, tissue.traced, tissue.joins, tissue.transferred).worked();
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
        Assembly whole = finishedAssembly(piece, steps);
        List<Frame> frames = new ArrayList<>(steps.size());
        for (Step step : steps) {
            Motion before = tissue.pose;
            step.read(tissue);
            frames.add(tissue.frame(step, before, whole));
        }
        return List.copyOf(frames);
    }

    private static Assembly finishedAssembly(Piece piece, List<Step> steps) {
        Tissue tissue = new Tissue(piece);
        for (Step step : steps) {
            step.read(tissue);
        }
        return new Assembly(piece, tissue.traced, tissue.joins, tissue.transferred);
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
        Optional<Point> pinned = pin.map(place -> pose.apply(place.on(piece)));
        return new Frame(step, before, pose, pinned, marks, drawn);
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
        Point centre = pose.apply(at.on(piece));
        pose = pose.then(turn(step.until(), at, centre));
        return null;
    }

    private Motion turn(Until until, Place at, Point centre) {
        return until.read(new Until.Reader<Motion>() {
            @Override
            public Motion meetsAcross(Until.MeetsAcross across) {
                Point q = pose.apply(across.place().on(piece));
                try {
                    return Motion.pivotAcross(centre, q, markAt(across.mark()).x() - q.x());
                } catch (OutOfReachException e) {
                    throw new BeyondReachException(piece.name(), at, across.place(), e);
                }
            }

            @Override
            public Motion meetsAlong(Until.MeetsAlong along) {
                Point q = pose.apply(along.place().on(piece));
                try {
                    return pivotAlong(centre, q, markAt(along.mark()).y() - q.y());
                } catch (OutOfReachException e) {
                    throw new BeyondReachException(piece.name(), at, along.place(), e);
                }
            }

            @Override
            public Motion grainUpright(Until.GrainUpright upright) {
                return Motion.pivot(centre, -pose.turnRad());
            }
        });
    }

    /** A pivot along the grain is a pivot across it on a table turned by a quarter. */
    private static Motion pivotAlong(Point centre, Point q, double alongMm) {
        Motion quarter = Motion.pivot(Point.ORIGIN, -Math.PI / 2);
        Motion turned = Motion.pivotAcross(quarter.apply(centre), quarter.apply(q), alongMm);
        return Motion.pivot(centre, turned.turnRad());
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
        pose = pose.then(Motion.slide(new Vec(step.acrossMm(), step.alongMm())));
        return null;
    }

    @Override
    public Void layBack(Step.LayBack step) {
        pin = Optional.empty();
        pose = Motion.NONE;
        return null;
    }

    @Override
    public Void trace(Step.Trace step) {
        for (Stretch stretch : step.stretches()) {
            traced.add(new Traced(stretch, pose));
        }
        return null;
    }

    @Override
    public Void transferBelow(Step.TransferBelow step) {
        transferred.add(new Transferred(step.levelY(), pose));
        return null;
    }

    @Override
    public Void join(Step.Join step) {
        joins.add(step);
        return null;
    }
}
