package trueseam.fitting.tissue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/** Puts the traced and joined lines of a sheet of tissue together to a piece, edge by edge in the order of the outline. */
final class Assembly {

    /** Two traced lines that meet: rounding of a chain of motions, not a gap. */
    private static final double MEET_MM = 1e-6;

    /** A gentle line that is so near to the wanted length needs no search. */
    private static final double LENGTH_MM = 1e-9;

    private final Piece piece;
    private final List<Item> items = new ArrayList<>();
    private final Inner inner;

    /** A traced stretch, or a gap with the line that closes it. */
    private static final class Item {
        final Stretch stretch;
        final Optional<Motion> motion;
        final Optional<Step.Join> join;
        Optional<Path> path = Optional.empty();

        Item(Stretch stretch, Optional<Motion> motion, Optional<Step.Join> join) {
            this.stretch = stretch;
            this.motion = motion;
            this.join = join;
        }
    }

    Assembly(
            Piece piece,
            List<Tissue.Traced> traced,
            List<Step.Join> joins,
            List<Step.TraceOver> over,
            List<String> straightened,
            Inner inner) {
        this.piece = piece;
        this.inner = inner;
        for (Edge edge : piece.edges()) {
            collect(edge, traced, joins, over);
        }
        drawJoins();
        straightened.forEach(this::straighten);
    }

    private void collect(Edge edge, List<Tissue.Traced> traced, List<Step.Join> joins, List<Step.TraceOver> over) {
        List<Item> here = new ArrayList<>();
        for (Tissue.Traced t : traced) {
            if (t.stretch().edge().equals(edge.name()) && t.stretch().lengthMm() > 0) {
                Item item = new Item(t.stretch(), Optional.of(t.motion()), Optional.empty());
                Path part = edge.path().part(t.stretch().fromMm(), t.stretch().toMm());
                item.path = Optional.of(t.motion().equals(Motion.NONE) ? part : part.moved(t.motion()));
                here.add(item);
            }
        }
        for (Step.Join join : joins) {
            if (join.gap().edge().equals(edge.name())) {
                here.add(new Item(join.gap(), Optional.empty(), Optional.of(join)));
            }
        }
        for (Step.TraceOver line : over) {
            if (line.stretch().edge().equals(edge.name())) {
                Item item = new Item(line.stretch(), Optional.empty(), Optional.of(RULED));
                item.path = Optional.of(line.path());
                here.add(item);
            }
        }
        here.sort(
                Comparator.comparingDouble((Item i) -> i.stretch.fromMm()).thenComparingDouble(i -> i.stretch.toMm()));
        double reached = 0;
        for (Item item : here) {
            if (Math.abs(item.stretch.fromMm() - reached) > MEET_MM) {
                throw new TissueException(
                        piece.name(),
                        edge.name(),
                        "the edge is " + (item.stretch.fromMm() > reached ? "not drawn" : "drawn twice") + " between "
                                + Math.min(reached, item.stretch.fromMm()) + " and "
                                + Math.max(reached, item.stretch.fromMm()) + " mm; trace or join every part once.");
            }
            reached = item.stretch.toMm();
        }
        if (Math.abs(edge.length() - reached) > MEET_MM) {
            throw new TissueException(
                    piece.name(), edge.name(), "the edge is not drawn from " + reached + " mm to its end.");
        }
        items.addAll(here);
    }

    private void drawJoins() {
        for (int i = 0; i < items.size(); i++) {
            Item item = items.get(i);
            if (item.join.isPresent() && item.path.isEmpty()) {
                Item before = items.get((i + items.size() - 1) % items.size());
                Item after = items.get((i + 1) % items.size());
                item.path = Optional.of(draw(item, before, after));
            }
        }
    }

    /** From the pattern, or over from another piece. */
    private static boolean isTraced(Item item) {
        return item.motion.isPresent() || item.join.equals(Optional.of(RULED));
    }

    private Path draw(Item item, Item previous, Item next) {
        if (!isTraced(previous) || !isTraced(next)) {
            throw new TissueException(
                    piece.name(),
                    item.stretch.edge(),
                    "a joined line needs a traced line at both ends; two joined lines meet here.");
        }
        Point a = previous.path.orElseThrow().end();
        Point b = next.path.orElseThrow().start();
        return item.join.orElseThrow().form().read(new JoinForm.Reader<Path>() {
            @Override
            public Path straight(JoinForm.Straight form) {
                return Path.of(new Line(a, b));
            }

            @Override
            public Path curve(JoinForm.Curve form) {
                return a.isNear(b, MEET_MM)
                        ? Path.of(new Line(a, b))
                        : Path.of(Assembly.this.curve(
                                item,
                                form,
                                a,
                                previous.motion.orElse(Motion.NONE),
                                b,
                                next.motion.orElse(Motion.NONE)));
            }

            @Override
            public Path refit(JoinForm.Refit form) {
                Path edge = piece.edge(item.stretch.edge()).path();
                return Refitting.between(edge.part(item.stretch.fromMm(), item.stretch.toMm()), a, b);
            }
        });
    }

    private Segment curve(Item item, JoinForm.Curve form, Point a, Motion atStart, Point b, Motion atEnd) {
        Path edge = piece.edge(item.stretch.edge()).path();
        Optional<Vec> start = direction(form.start(), edge, item.stretch.fromMm(), true, atStart);
        Optional<Vec> end = direction(form.end(), edge, item.stretch.toMm(), false, atEnd);
        if (start.isEmpty() && end.isEmpty()) {
            return new Line(a, b);
        }
        Cubic gentle = start.isEmpty()
                ? Joining.tangentToEnd(a, b, end.get())
                : end.isEmpty()
                        ? Joining.tangentFromStart(a, start.get(), b)
                        : Joining.smooth(a, start.get(), b, end.get());
        if (form.lengthMm().isEmpty()
                || Math.abs(gentle.length() - form.lengthMm().getAsDouble()) <= LENGTH_MM) {
            return gentle;
        }
        return Joining.smoothOfLength(
                a, gentle.tangent(0), b, gentle.tangent(1), form.lengthMm().getAsDouble());
    }

    private static Optional<Vec> direction(
            Direction wanted, Path edge, double alongMm, boolean leaving, Motion beside) {
        return wanted.read(new Direction.Reader<Optional<Vec>>() {
            @Override
            public Optional<Vec> asDrawn(Direction.AsDrawn drawn) {
                Vec tangent = leaving ? leavingTangent(edge, alongMm) : arrivingTangent(edge, alongMm);
                return Optional.of(beside.apply(tangent));
            }

            @Override
            public Optional<Vec> free(Direction.Free free) {
                return Optional.empty();
            }

            @Override
            public Optional<Vec> towards(Direction.Towards towards) {
                return Optional.of(towards.tangent());
            }
        });
    }

    private static Vec leavingTangent(Path edge, double alongMm) {
        return alongMm >= edge.length() - MEET_MM ? edge.endTangent() : edge.tangentAt(alongMm);
    }

    /** At a corner inside an edge the direction of arrival is that of the stroke before it. */
    private static Vec arrivingTangent(Path edge, double alongMm) {
        return alongMm <= MEET_MM ? edge.startTangent() : edge.part(0, alongMm).endTangent();
    }

    /** Replaces an edge by its own straight line, and brings its neighbours to that line. */
    private void straighten(String name) {
        Path was = piece.edge(name).path();
        Vec along = was.end().minus(was.start()).unit();
        int first = 0;
        while (!items.get(first).stretch.edge().equals(name)) {
            first++;
        }
        int last = first;
        while (last + 1 < items.size() && items.get(last + 1).stretch.edge().equals(name)) {
            last++;
        }
        int n = items.size();
        List<Item> before = toLine(items.get((first + n - 1) % n), was.start(), along, false);
        List<Item> after = toLine(items.get((last + 1) % n), was.start(), along, true);
        Item ruled = new Item(new Stretch(name, 0, was.length()), Optional.empty(), Optional.of(RULED));
        ruled.path = Optional.of(Path.of(new Line(
                /* start= */ before.get(before.size() - 1).path.orElseThrow().end(),
                /* end= */ after.get(0).path.orElseThrow().start())));
        List<Item> all = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            if (i == (first + n - 1) % n) {
                all.addAll(before);
            } else if (i == (last + 1) % n) {
                all.addAll(after);
            } else if (i == first) {
                all.add(ruled);
            } else if (i < first || i > last) {
                all.add(items.get(i));
            }
        }
        items.clear();
        items.addAll(all);
    }

    /** What stands for a ruled line among the joins. */
    private static final Step.Join RULED = new Step.Join(new Stretch("", 0, 0), JoinForm.STRAIGHT);

    /** A neighbour of a ruled line, trimmed where it stands over it, or filled square across where it falls short. */
    private List<Item> toLine(Item item, Point on, Vec along, boolean atItsStart) {
        Path path = item.path.orElseThrow();
        List<PathPlace> crossings = path.crossings(on, along);
        Point end = atItsStart ? path.start() : path.end();
        double off = end.minus(on).cross(along);
        if (Math.abs(off) <= MEET_MM) {
            return List.of(item);
        }
        double length = path.length();
        PathPlace nearest = null;
        for (PathPlace crossing : crossings) {
            double from = atItsStart ? crossing.alongMm() : length - crossing.alongMm();
            boolean nearer = nearest == null || from < (atItsStart ? nearest.alongMm() : length - nearest.alongMm());
            nearest = nearer ? crossing : nearest;
        }
        if (nearest != null && nearest.alongMm() > MEET_MM && nearest.alongMm() < length - MEET_MM) {
            return List.of(trimmed(item, path, nearest.alongMm(), atItsStart));
        }
        Point foot = on.plus(along.times(end.minus(on).dot(along)));
        double at = atItsStart ? item.stretch.fromMm() : item.stretch.toMm();
        Item fill = new Item(new Stretch(item.stretch.edge(), at, at), Optional.empty(), Optional.of(RULED));
        fill.path = Optional.of(Path.of(atItsStart ? new Line(foot, end) : new Line(end, foot)));
        return atItsStart ? List.of(fill, item) : List.of(item, fill);
    }

    private static Item trimmed(Item item, Path path, double at, boolean atItsStart) {
        Stretch was = item.stretch;
        boolean traced = item.motion.isPresent();
        double from = atItsStart && traced ? was.fromMm() + at : was.fromMm();
        double to = atItsStart || !traced ? was.toMm() : was.fromMm() + at;
        Item trimmed = new Item(new Stretch(was.edge(), from, to), item.motion, item.join);
        trimmed.path = Optional.of(atItsStart ? path.part(at, path.length()) : path.part(0, at));
        return trimmed;
    }

    Optional<Path> ruled(String edge) {
        return items.stream()
                .filter(item -> item.stretch.edge().equals(edge) && item.join.equals(Optional.of(RULED)))
                .max(Comparator.comparingDouble(item -> item.stretch.lengthMm()))
                .flatMap(item -> item.path);
    }

    Optional<Path> drawnFor(Step.Join join) {
        for (Item item : items) {
            if (item.join.isPresent() && item.join.get().equals(join)) {
                return item.path.filter(path -> path.length() > MEET_MM);
            }
        }
        return Optional.empty();
    }

    Worked worked() {
        List<Edge> edges = new ArrayList<>();
        List<Run> runs = new ArrayList<>();
        List<Riders.Carried> carried = new ArrayList<>();
        Item last = items.get(items.size() - 1);
        for (Edge edge : piece.edges()) {
            Path drawn = null;
            double along = 0;
            for (Item item : items) {
                if (!item.stretch.edge().equals(edge.name())) {
                    continue;
                }
                Path path = item.path.orElseThrow();
                checkMeets(last, item);
                last = item;
                double mm = path.length();
                if (mm <= MEET_MM && item.join.isPresent()) {
                    continue;
                }
                drawn = drawn == null ? path : drawn.then(path);
                runs.add(new Run(
                        edge.name(),
                        along,
                        along + mm,
                        item.motion.map(motion -> new Run.Origin(item.stretch, motion))));
                carried.add(new Riders.Carried(item.stretch, item.motion, along, mm));
                along += mm;
            }
            if (drawn == null) {
                throw new TissueException(piece.name(), edge.name(), "nothing of this edge is left.");
            }
            edges.add(edge.withPath(drawn));
        }
        return new Worked(new Riders(piece, carried, inner).ridingOn(edges), runs);
    }

    private void checkMeets(Item before, Item item) {
        double gap = before.path
                .orElseThrow()
                .end()
                .distanceTo(item.path.orElseThrow().start());
        if (gap > MEET_MM) {
            throw new TissueException(
                    piece.name(),
                    item.stretch.edge(),
                    "a gap of " + gap + " mm is left between the traced lines at " + item.stretch.fromMm()
                            + " mm; join it.");
        }
    }
}
