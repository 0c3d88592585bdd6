package trueseam.fitting.trial;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import trueseam.fitting.repertoire.Family;

/**
 * Something seen on a trial garment.
 *
 * @param number its number; 1 to 43 are those of the trade's list
 * @param places where it may be seen
 * @param directions which way its folds lie
 * @param tensions whether the cloth is slack or strains there
 * @param moments when it is seen
 * @param seen what is seen, a sentence without a capital and a stop
 * @param tried what is seen when it is pinned, let out or pulled
 * @param causes what it may come from, the likeliest first
 * @param source codes of docs/sources.md; CP is common practice
 */
public record Symptom(
        int number,
        Set<GarmentPlace> places,
        Set<FoldDirection> directions,
        Set<Tension> tensions,
        Set<Moment> moments,
        String seen,
        String tried,
        List<Cause> causes,
        String source) {

    // Immutable, and complete.
    public Symptom {
        places = Set.copyOf(places);
        directions = Set.copyOf(directions);
        tensions = Set.copyOf(tensions);
        moments = Set.copyOf(moments);
        causes = List.copyOf(causes);
        if (places.isEmpty()
                || directions.isEmpty()
                || tensions.isEmpty()
                || moments.isEmpty()
                || causes.isEmpty()
                || seen.isBlank()
                || tried.isBlank()
                || source.isBlank()) {
            throw new IllegalArgumentException("the symptom " + number + " does not say everything");
        }
    }

    /**
     * The parts of the garment that it is seen on.
     *
     * @return one or more
     */
    public Set<Family> families() {
        return places.stream()
                .map(GarmentPlace::family)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Family.class)));
    }
}
