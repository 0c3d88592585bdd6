package trueseam.fitting.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;

/** A side of a seam as one way to walk, though its strokes may lie apart: darts are stepped over, and pieces follow one another. */
final class Way {

    /** A shorter stroke than this is rounding. */
    private static final double SLIVER_MM = 1e-6;

    /** A stroke without corners: where it begins on the way, its line, the edge it is on. */
    record Stroke(double fromMm, Path path, Link link) {
        double toMm() {
            return fromMm + path.length();
        }
    }

    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Sheet> sheets = new ArrayList<>();
    private double length;

    private Way() {}

    /** Each piece where it is drawn: for the side that rolls. */
    static Way loose(List<Link> links) {
        Way way = new Way();
        links.forEach(link -> way.add(link, Motion.NONE));
        return way;
    }

    /** Each piece laid so that its edge goes on where the last one ended, in the same direction. */
    static Way laid(List<Link> links) {
        Way way = new Way();
        for (Link link : links) {
            Motion pose = way.onwards(link);
            way.add(link, pose);
            Sheet sheet = link.lying(pose);
            if (!way.sheets.contains(sheet)) {
                way.sheets.add(sheet);
            }
        }
        return way;
    }

    private Motion onwards(Link link) {
        if (strokes.isEmpty()) {
            return Motion.NONE;
        }
        Stroke last = strokes.get(strokes.size() - 1);
        Path next = link.parts().get(0);
        // The next edge of the same paper lies where its paper lies.
        if (last.link.piece().name().equals(link.piece().name()) && last.link.turnedOver() == link.turnedOver()) {
            return sheets.get(sheets.size() - 1).pose();
        }
        return SeamWalk.laid(next.start(), next.startTangent(), last.path.end(), last.path.endTangent());
    }

    private void add(Link link, Motion pose) {
        for (Path part : link.parts()) {
            for (Segment segment : part.moved(pose).segments()) {
                if (segment.length() > SLIVER_MM) {
                    strokes.add(new Stroke(length, Path.of(segment), link));
                    length += segment.length();
                }
            }
        }
    }

    double lengthMm() {
        return length;
    }

    List<Sheet> sheets() {
        return List.copyOf(sheets);
    }

    /** Where strokes end, from the beginning. */
    List<Double> stops() {
        return strokes.stream().map(Stroke::toMm).toList();
    }

    /** A stretch that lies on one stroke. */
    Stroke between(double from, double to) {
        Stroke on = strokeAt((from + to) / 2);
        Path part =
                on.path.part(Math.max(0, from - on.fromMm), Math.min(on.path.length(), Math.max(0, to - on.fromMm)));
        return new Stroke(from, part, on.link);
    }

    private Stroke strokeAt(double mm) {
        Stroke found = strokes.get(0);
        for (Stroke stroke : strokes) {
            if (stroke.fromMm <= mm) {
                found = stroke;
            }
        }
        return found;
    }

    Point pointAt(double mm) {
        Stroke on = strokeAt(mm);
        return on.path.pointAt(Math.min(on.path.length(), Math.max(0, mm - on.fromMm)));
    }

    /** What comes after a place, up to the end of the piece it is on. */
    Optional<Path> lastPart(double from) {
        Path rest = null;
        Link link = strokeAt(from).link;
        for (Stroke stroke : strokes) {
            double start = Math.max(0, from - stroke.fromMm);
            if (stroke.link.equals(link) && stroke.path.length() - start > SLIVER_MM) {
                Path part = stroke.path.part(start, stroke.path.length());
                boolean goesOn = rest != null && rest.end().isNear(part.start(), Path.CHAIN_MM);
                rest = rest == null ? part : goesOn ? rest.then(part) : rest;
            }
        }
        return Optional.ofNullable(rest);
    }
}
