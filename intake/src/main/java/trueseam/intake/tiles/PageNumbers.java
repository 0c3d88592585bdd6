package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.List;

/** Pages in words. */
final class PageNumbers {

    private PageNumbers() {}

    /** Such as {@code pages 2 to 7, 9}. */
    static String words(List<Integer> numbers) {
        List<Integer> sorted = numbers.stream().sorted().toList();
        List<String> runs = new ArrayList<>();
        int i = 0;
        while (i < sorted.size()) {
            int j = i;
            while (j + 1 < sorted.size() && sorted.get(j + 1) == sorted.get(j) + 1) {
                j++;
            }
            runs.add(j == i ? "" + sorted.get(i) : sorted.get(i) + " to " + sorted.get(j));
            i = j + 1;
        }
        return (sorted.size() == 1 ? "page " : "pages ") + String.join(", ", runs);
    }
}
