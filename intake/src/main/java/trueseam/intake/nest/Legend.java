package trueseam.intake.nest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.Stroke;

/** What is written in a drawing of which lines are which size. */
final class Legend {

    /** A sample of a line is drawn so near to its size, beside it. */
    private static final double BESIDE_MM = 30;

    private static final double SAMPLE_MM = 120;

    /** How much a kind of evidence counts: a sample says it outright, a number near a line may be near by chance. */
    private static final double SAMPLE = 6;

    private static final double SAME_COLOUR = 3;
    private static final double SAME_LAYER = 3;
    private static final double NEAR = 1;

    private final List<Caption> sizes = new ArrayList<>();
    private final List<List<SizeWord>> rows = new ArrayList<>();
    private final Set<Stroke> samples = new HashSet<>();

    /**
     * What names a size.
     *
     * @param word the size
     * @param how what says so
     * @param outright whether it is said by more than a number lying near
     */
    record Named(SizeWord word, String how, boolean outright) {}

    Legend(Drawing drawing) {
        for (Caption caption : drawing.captions()) {
            SizeWord.of(caption.text()).ifPresent(w -> sizes.add(caption));
            List<SizeWord> row = SizeWord.row(caption.text());
            if (!row.isEmpty()) {
                rows.add(row);
            }
        }
    }

    /** Lines that are samples of the legend, and no part of a piece; known once {@link #names} was asked. */
    Set<Stroke> samples() {
        return samples;
    }

    boolean isSizeWord(Caption caption) {
        return sizes.contains(caption);
    }

    private record Vote(int size, SizeWord word, double weight, String how) {}

    /**
     * The names of the sizes.
     *
     * @param lines each size's lines, the smallest size first
     * @return a name for each, or nothing where not every one could be named
     */
    Optional<List<Named>> names(List<List<Stroke>> lines) {
        List<Vote> votes = new ArrayList<>();
        for (Caption caption : sizes) {
            SizeWord word = SizeWord.of(caption.text()).orElseThrow();
            sample(lines, caption).ifPresent(i -> votes.add(new Vote(i, word, SAMPLE, "a sample beside its name")));
            only(
                            lines,
                            s -> s.look().colour().equals(caption.colour())
                                    && !caption.colour().equals("#000000"))
                    .ifPresent(i -> votes.add(new Vote(i, word, SAME_COLOUR, "its name in the same colour")));
            only(lines, s -> s.layer().equals(caption.layer()) && !s.layer().isEmpty())
                    .ifPresent(i -> votes.add(new Vote(i, word, SAME_LAYER, "its name in the same layer")));
            near(lines, caption).ifPresent(i -> votes.add(new Vote(i, word, NEAR, "its name beside its lines")));
        }
        Optional<List<Named>> voted = elected(lines.size(), votes);
        return voted.isPresent() ? voted : byRow(lines.size());
    }

    /** The one size of which any line is so. */
    private static Optional<Integer> only(List<List<Stroke>> lines, java.util.function.Predicate<Stroke> so) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).stream().anyMatch(so)) {
                found.add(i);
            }
        }
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /** A short straight line in the row of a word, beside it. */
    private Optional<Integer> sample(List<List<Stroke>> lines, Caption caption) {
        int best = -1;
        Stroke sample = null;
        double nearest = BESIDE_MM + caption.heightMm() * 2;
        double middle = caption.at().y() + 0.35 * caption.heightMm();
        double end =
                caption.at().x() + 0.6 * caption.heightMm() * caption.text().length();
        for (int i = 0; i < lines.size(); i++) {
            for (Stroke stroke : lines.get(i)) {
                Path path = stroke.path();
                Point a = path.start();
                Point b = path.end();
                boolean level = Math.abs(a.y() - b.y()) < 1
                        && path.length() < SAMPLE_MM
                        && path.length() < 1.01 * a.distanceTo(b)
                        && Math.abs(a.y() - middle) < Math.max(2, caption.heightMm());
                double left = Math.min(a.x(), b.x());
                double right = Math.max(a.x(), b.x());
                double apart = Math.max(0, Math.max(left - end, caption.at().x() - right));
                if (level && apart < nearest) {
                    nearest = apart;
                    best = i;
                    sample = stroke;
                }
            }
        }
        if (best >= 0) {
            samples.add(sample);
        }
        return best < 0 ? Optional.empty() : Optional.of(best);
    }

    /** The size whose lines run nearest to a word, clearly nearer than any other's. */
    private static Optional<Integer> near(List<List<Stroke>> lines, Caption caption) {
        Point middle = new Point(
                caption.at().x() + 0.3 * caption.heightMm() * caption.text().length(),
                caption.at().y() + 0.35 * caption.heightMm());
        int best = -1;
        double nearest = 1.5 * caption.heightMm() + 2;
        double next = Double.POSITIVE_INFINITY;
        for (int i = 0; i < lines.size(); i++) {
            double apart = lines.get(i).stream()
                    .filter(s -> s.path().bounds().grown(20).meets(trueseam.geometry.Bounds.of(middle, middle), 0))
                    .mapToDouble(s -> s.path().nearest(middle).point().distanceTo(middle))
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
            if (apart < nearest) {
                next = best < 0 ? next : nearest;
                nearest = apart;
                best = i;
            } else {
                next = Math.min(next, apart);
            }
        }
        return best < 0 || next < 1.3 * nearest ? Optional.empty() : Optional.of(best);
    }

    /** Each size takes the word with the most votes; all must be named, and no two alike. */
    private static Optional<List<Named>> elected(int count, List<Vote> votes) {
        Map<Integer, Map<String, Double>> weights = new HashMap<>();
        for (Vote vote : votes) {
            weights.computeIfAbsent(vote.size, k -> new HashMap<>()).merge(vote.word.label(), vote.weight, Double::sum);
        }
        List<Named> named = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (int i = 0; i < count; i++) {
            Optional<String> best = weights.getOrDefault(i, Map.of()).entrySet().stream()
                    .max(Map.Entry.comparingByValue())
                    .map(Map.Entry::getKey);
            if (best.isEmpty() || !taken.add(best.get())) {
                return Optional.empty();
            }
            int size = i;
            Vote strongest = votes.stream()
                    .filter(v -> v.size == size && v.word.label().equals(best.get()))
                    .max(java.util.Comparator.comparingDouble(Vote::weight))
                    .orElseThrow();
            named.add(new Named(strongest.word, strongest.how, strongest.weight > NEAR));
        }
        return Optional.of(named);
    }

    /** As many sizes written in rising order as there are: the smallest first. */
    private Optional<List<Named>> byRow(int count) {
        for (List<SizeWord> row : rows) {
            if (row.size() == count) {
                return Optional.of(row.stream()
                        .map(w -> new Named(w, "the row of sizes that is written, from the smallest", true))
                        .toList());
            }
        }
        List<SizeWord> alone = sizes.stream()
                .map(c -> SizeWord.of(c.text()).orElseThrow())
                .filter(distinct())
                .sorted(java.util.Comparator.comparingDouble(SizeWord::rank))
                .toList();
        return alone.size() == count
                ? Optional.of(alone.stream()
                        .map(w -> new Named(w, "as many sizes are written, from the smallest", false))
                        .toList())
                : Optional.empty();
    }

    private static java.util.function.Predicate<SizeWord> distinct() {
        Set<String> seen = new HashSet<>();
        return w -> seen.add(w.label());
    }
}
