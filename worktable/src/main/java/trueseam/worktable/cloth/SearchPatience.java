package trueseam.worktable.cloth;

import java.util.Arrays;

/** How long she lets it search, in rounds: the same seed after the same rounds gives the same layout on every machine. */
enum SearchPatience {
    QUICK("quick", "quick, some seconds", 10),
    USUAL("usual", "usual, about 20 seconds", 40),
    LONG("long", "long, about 2 minutes", 240),
    LONGEST("longest", "longest, about 10 minutes", 1200);

    private final String word;
    private final String label;
    private final int rounds;

    SearchPatience(String word, String label, int rounds) {
        this.word = word;
        this.label = label;
        this.rounds = rounds;
    }

    static SearchPatience ofWord(String word) {
        return Arrays.stream(values())
                .filter(p -> p.word.equals(word))
                .findFirst()
                .orElse(USUAL);
    }

    String word() {
        return word;
    }

    String label() {
        return label;
    }

    int rounds() {
        return rounds;
    }
}
