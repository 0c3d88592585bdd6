package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Look;

/**
 * What is printed at the same place of many pages and belongs to the paper, not to the pattern: frames, marks, lines to cut along, a title.
 */
final class Furniture {

    /** At the same place of so many of the pages. */
    private static final double MANY = 0.4;

    private static final double MOST = 0.6;

    /** Places are told apart to this, mm. */
    private static final double PLACE_MM = 0.2;

    /** A mark is not larger, mm. */
    private static final double LARGEST_MARK_MM = 30;

    private record Place(long left, long low, long right, long high, int strokes, Look look) {}

    private record Said(String text, long left, long low) {}

    private final Map<Place, Set<Integer>> pagesOf = new HashMap<>();
    private final Map<Place, Inked> example = new HashMap<>();
    private final Map<Said, Set<Integer>> saidOn = new HashMap<>();
    private final Map<String, Set<Integer>> texts = new HashMap<>();
    private final Set<Place> fixed = new HashSet<>();
    private final List<Page> pages;
    private final double least;

    private Furniture(List<Page> pages) {
        this.pages = pages;
        this.least = Math.max(2, MANY * pages.size());
    }

    static Furniture of(List<Page> pages) {
        Furniture furniture = new Furniture(pages);
        for (Page page : pages) {
            for (Inked line : page.lines()) {
                if (line.isSeen()) {
                    Place place = place(line);
                    furniture
                            .pagesOf
                            .computeIfAbsent(place, p -> new HashSet<>())
                            .add(page.number());
                    furniture.example.putIfAbsent(place, line);
                }
            }
            for (Caption caption : page.captions()) {
                furniture
                        .saidOn
                        .computeIfAbsent(said(caption), s -> new HashSet<>())
                        .add(page.number());
                furniture
                        .texts
                        .computeIfAbsent(caption.text(), s -> new HashSet<>())
                        .add(page.number());
            }
        }
        furniture.decide();
        return furniture;
    }

    private static Place place(Inked line) {
        Bounds seen = line.seen();
        return new Place(
                Math.round(seen.minX() / PLACE_MM),
                Math.round(seen.minY() / PLACE_MM),
                Math.round(seen.maxX() / PLACE_MM),
                Math.round(seen.maxY() / PLACE_MM),
                line.stroke().path().segments().size(),
                line.stroke().look());
    }

    private static Said said(Caption caption) {
        return new Said(
                caption.text(),
                Math.round(caption.at().x() / PLACE_MM),
                Math.round(caption.at().y() / PLACE_MM));
    }

    /** A fold that runs down a whole row of pages lies at the same place of each, and is drawn like the pattern's other lines. */
    private void decide() {
        Set<Look> patterns = new HashSet<>();
        for (Page page : pages) {
            for (Inked line : page.lines()) {
                if (line.isSeen()
                        && pagesOf.get(place(line)).size() < least
                        && !isStraight(line)
                        && line.stroke().path().length() > 100) {
                    patterns.add(line.stroke().look());
                }
            }
        }
        pagesOf.forEach((place, on) -> {
            Inked line = example.get(place);
            boolean patternLike = isStraight(line)
                    && line.stroke().path().length() > LARGEST_MARK_MM
                    && patterns.contains(place.look);
            if (on.size() >= least && !patternLike) {
                fixed.add(place);
            }
        });
    }

    private static boolean isStraight(Inked line) {
        Path path = line.stroke().path();
        return !path.isClosed() && path.length() < 1.0001 * path.start().distanceTo(path.end());
    }

    boolean holds(Inked line) {
        return fixed.contains(place(line));
    }

    /** At the same place of many pages, or anywhere on most: a title stands where it finds room. */
    boolean holds(Caption caption) {
        return saidOn.getOrDefault(said(caption), Set.of()).size() >= least
                || texts.getOrDefault(caption.text(), Set.of()).size() >= Math.max(3, MOST * pages.size());
    }

    boolean isOn(Page page) {
        return fixed.stream().anyMatch(place -> pagesOf.get(place).contains(page.number()));
    }

    boolean isEmpty() {
        return fixed.isEmpty();
    }

    /** Rectangles that hold most of the page, drawn in one stroke or four, the outermost first. */
    List<Bounds> frames() {
        double wide = pages.get(0).widthMm();
        double high = pages.get(0).heightMm();
        List<Bounds> frames = new ArrayList<>();
        List<Double> upright = new ArrayList<>();
        List<Double> level = new ArrayList<>();
        for (Place place : fixed) {
            Bounds box = example.get(place).seen();
            if (box.width() > 0.6 * wide && box.height() > 0.6 * high) {
                frames.add(box);
            } else if (box.width() > 0.6 * wide && box.height() < PLACE_MM) {
                level.add(box.centre().y());
            } else if (box.height() > 0.6 * high && box.width() < PLACE_MM) {
                upright.add(box.centre().x());
            }
        }
        upright.sort(null);
        level.sort(null);
        if (upright.size() >= 2 && level.size() >= 2) {
            frames.add(new Bounds(
                    upright.get(0), level.get(0), upright.get(upright.size() - 1), level.get(level.size() - 1)));
        }
        frames.sort(java.util.Comparator.comparingDouble((Bounds b) -> -b.width()));
        return frames;
    }

    /** Small things that repeat at the edges. */
    List<Inked> marks() {
        return fixed.stream()
                .map(example::get)
                .filter(line ->
                        line.seen().width() <= LARGEST_MARK_MM && line.seen().height() <= LARGEST_MARK_MM)
                .limit(60)
                .toList();
    }
}
