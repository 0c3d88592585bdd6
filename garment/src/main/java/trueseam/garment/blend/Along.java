package trueseam.garment.blend;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;

/**
 * An edge that runs from level to level, such as a side seam, in all the sizes wanted, looked at from its upper end.
 *
 * @param name the edge's name
 * @param bySize how it runs in each size
 * @param down whether the outline runs down along it
 * @param stops where it must be a size's own line, from the top: at its ends, at levels that are named, and along darts
 */
record Along(String name, Map<String, OneSize> bySize, boolean down, List<Stop> stops) {

    /**
     * The edge in one size.
     *
     * @param piece the piece of that size
     * @param edge the edge in it
     * @param path its line from the top
     */
    record OneSize(Piece piece, Edge edge, Path path) {

        /** A dart's legs from the upper end of the edge. */
        Span span(Dart.EdgeDart dart, boolean down) {
            double whole = path.length();
            return down ? new Span(dart.fromMm(), dart.toMm()) : new Span(whole - dart.toMm(), whole - dart.fromMm());
        }

        /** How much of the edge above a place is sewn: without dart mouths. */
        double sewn(double alongMm, boolean down) {
            double sewn = alongMm;
            for (Dart.EdgeDart dart : piece.dartsOn(edge.name())) {
                Span mouth = span(dart, down);
                sewn -= Math.max(0, Math.min(alongMm, mouth.to) - mouth.from);
            }
            return sewn;
        }

        /** The place above which so much is sewn; at a dart its lower or its upper leg. */
        double place(double sewnMm, boolean down, boolean belowDart) {
            double along = sewnMm;
            List<Dart.EdgeDart> darts = new ArrayList<>(piece.dartsOn(edge.name()));
            darts.sort(java.util.Comparator.comparingDouble(d -> span(d, down).from));
            for (Dart.EdgeDart dart : darts) {
                Span mouth = span(dart, down);
                boolean beyond = belowDart ? along >= mouth.from - NEAR_MM : along > mouth.from + NEAR_MM;
                along += beyond ? mouth.to - mouth.from : 0;
            }
            return Math.min(Math.max(0, along), path.length());
        }
    }

    /**
     * A stretch from the upper end.
     *
     * @param from its beginning, mm
     * @param to its end, mm
     */
    record Span(double from, double to) {

        Span with(Span other) {
            return new Span(Math.min(from, other.from), Math.max(to, other.to));
        }
    }

    /**
     * A place where the line is one size's own.
     *
     * @param level which level
     * @param size whose line it is
     * @param spans the stretch in each size's own line that corresponds to it
     */
    record Stop(BlendLevel level, String size, Map<String, Span> spans) {}

    /** Places along an edge nearer than this are one. */
    private static final double NEAR_MM = 1e-6;

    /** A level is drawn with a pencil line's width of the size's own line on either side. */
    private static final double HELD_MM = 0.5;

    /** No line goes over from one size to another in less. */
    private static final double ROOM_MM = 5;

    /**
     * The edge with its stops.
     *
     * @param name its name
     * @param pieces the piece in each size
     * @param wanted the sizes by level
     * @param top the level of its upper corner
     * @param bottom the level of its lower corner
     * @param down whether the outline runs down along it
     */
    static Along of(
            String name,
            Map<String, Piece> pieces,
            SizesByLevel wanted,
            BlendLevel top,
            BlendLevel bottom,
            boolean down) {
        Map<String, OneSize> bySize = new LinkedHashMap<>();
        pieces.forEach((size, piece) -> {
            Edge edge = piece.edge(name);
            bySize.put(
                    size,
                    new OneSize(piece, edge, down ? edge.path() : edge.path().reversed()));
        });
        Along along = new Along(name, bySize, down, List.of());
        List<Stop> stops = new ArrayList<>();
        stops.add(new Stop(top, wanted.at(top), along.each(one -> new Span(0, 0))));
        for (BlendLevel level : List.of(BlendLevel.BUST, BlendLevel.WAIST, BlendLevel.HIP, BlendLevel.KNEE)) {
            // Its ends' own levels too: a crotch seam has the hip's width at the hip line already, above its point.
            boolean within = top.compareTo(level) <= 0 && level.compareTo(bottom) <= 0;
            if (within) {
                along.stop(level, wanted).ifPresent(stops::add);
            }
        }
        stops.add(
                new Stop(bottom, wanted.at(bottom), along.each(one -> new Span(one.path.length(), one.path.length()))));
        return new Along(name, bySize, down, along.inOrder(stops));
    }

    private Map<String, Span> each(java.util.function.Function<OneSize, Span> span) {
        Map<String, Span> spans = new LinkedHashMap<>();
        bySize.forEach((size, one) -> spans.put(size, span.apply(one)));
        return spans;
    }

    /** A level that is named, and one at which a dart is sewn into the edge, whether or not it is named. */
    private Optional<Stop> stop(BlendLevel level, SizesByLevel wanted) {
        Map<String, Span> spans = new LinkedHashMap<>();
        boolean darts = false;
        for (Map.Entry<String, OneSize> entry : bySize.entrySet()) {
            Optional<Span> span = wanted.isNamed(level) ? crossing(entry.getValue(), level) : Optional.empty();
            if (level == BlendLevel.BUST && entry.getValue().edge().role() == EdgeRole.SIDE) {
                for (Dart.EdgeDart dart : entry.getValue().piece().dartsOn(name)) {
                    Span mouth = entry.getValue().span(dart, down);
                    span = Optional.of(span.map(s -> s.with(mouth)).orElse(mouth));
                    darts = true;
                }
            }
            span.ifPresent(s -> spans.put(entry.getKey(), s));
        }
        boolean everywhere = spans.size() == bySize.size();
        return everywhere && (darts || wanted.isNamed(level))
                ? Optional.of(new Stop(level, wanted.at(level), spans))
                : Optional.empty();
    }

    private Optional<Span> crossing(OneSize one, BlendLevel level) {
        LevelName line =
                switch (level) {
                    case BUST -> LevelName.BUST;
                    case WAIST -> LevelName.WAIST;
                    case HIP -> LevelName.HIP;
                    case KNEE -> LevelName.KNEE;
                    case FRAME, HEM, BICEP, WRIST ->
                        throw new IllegalArgumentException("no line at the " + level.word());
                };
        var y = one.piece.level(line);
        if (y.isEmpty()) {
            return Optional.empty();
        }
        return one.path
                .atLevel(y.getAsDouble())
                .map(PathPlace::alongMm)
                .map(mm -> new Span(Math.max(0, mm - HELD_MM), Math.min(one.path.length(), mm + HELD_MM)));
    }

    /** Stops that do not come one after the other in every size are left out: a level that a size has beyond the end of the edge. */
    private List<Stop> inOrder(List<Stop> stops) {
        List<Stop> kept = new ArrayList<>(List.of(stops.get(0)));
        Stop last = stops.get(stops.size() - 1);
        for (Stop stop : stops.subList(1, stops.size() - 1)) {
            Stop before = kept.get(kept.size() - 1);
            boolean follows = follows(before, stop) && follows(stop, last);
            if (follows) {
                kept.add(stop);
            }
        }
        kept.add(last);
        return kept;
    }

    private static boolean follows(Stop above, Stop below) {
        double room = above.size.equals(below.size) ? 0 : ROOM_MM;
        return above.spans.keySet().stream()
                .allMatch(size -> above.spans.get(size).to + room <= below.spans.get(size).from);
    }

    /**
     * The same edge with stops as long as the partner's in a seam, so that both go over at the same places and walk.
     *
     * @param partner what it is sewn to
     */
    Along inStepWith(Along partner) {
        List<Stop> stops = new ArrayList<>();
        for (Stop stop : this.stops) {
            Optional<Stop> same =
                    partner.stops.stream().filter(s -> s.level == stop.level).findFirst();
            boolean end = stop.equals(this.stops.get(0)) || stop.equals(this.stops.get(this.stops.size() - 1));
            stops.add(same.isEmpty() || end ? stop : widened(stop, same.get(), partner));
        }
        List<Stop> inOrder = inOrder(stops);
        return inOrder.size() == stops.size() ? new Along(name, bySize, down, stops) : this;
    }

    private Stop widened(Stop stop, Stop theirs, Along partner) {
        Map<String, Span> spans = new LinkedHashMap<>();
        stop.spans.forEach((size, own) -> {
            OneSize one = bySize.get(size);
            OneSize other = partner.bySize.get(size);
            Span their = theirs.spans.get(size);
            double from = Math.min(one.sewn(own.from, down), other.sewn(their.from, partner.down));
            double to = Math.max(one.sewn(own.to, down), other.sewn(their.to, partner.down));
            spans.put(size, own.with(new Span(one.place(from, down, false), one.place(to, down, true))));
        });
        return new Stop(stop.level, stop.size, spans);
    }
}
