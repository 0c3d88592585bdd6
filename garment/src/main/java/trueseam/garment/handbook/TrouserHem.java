package trueseam.garment.handbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;

/** How deep the hem of trousers is. */
public enum TrouserHem {
    /** As the pattern has it. */
    AS_DRAWN(
            "as-drawn",
            "as the pattern has it",
            "the maker knows how the leg is finished; our own drafts have 1 1/2 in (40 mm)",
            "common practice",
            0),
    /** 1 in. */
    SHALLOW("shallow", "1 in (within 5/8 to 1 1/4)", "for narrow legs and thin cloth", "ASG", 25.4),
    /** 1 3/8 in. */
    USUAL("usual", "1 3/8 in (within 1 1/4 to 1 1/2)", "weight enough for the crease to hang", "web:pantsbook", 34.925),
    /** 2 in. */
    MEN("men", "2 in", "men's trousers, turned by hand", "ASG", 50.8),
    /** 2 1/2 in. */
    SAFE(
            "safe",
            "2 1/2 in",
            "for safety: to be cut shorter when the leg was tried on in the shoes",
            "web:pantsbook",
            63.5);

    private final Answer answer;
    private final double mm;

    TrouserHem(String word, String label, String reason, String source, double mm) {
        this.answer = new Answer(word, label, reason, source);
        this.mm = mm;
    }

    private static final Question QUESTION = new Question(
            "trouser hem",
            "How deep is the hem of trousers?",
            "It is the allowance that is cut below the hem line of each leg; the edge mirrors the leg.",
            Arrays.stream(values()).map(TrouserHem::answer).toList());

    /**
     * The question.
     *
     * @return with all answers
     */
    public static Question question() {
        return QUESTION;
    }

    /**
     * The way of a word.
     *
     * @param word as typed; empty for the usual
     * @return the way
     * @throws HandbookException if there is none of that word
     */
    public static TrouserHem of(String word) {
        return values()[QUESTION.answers().indexOf(QUESTION.answer(word))];
    }

    /**
     * The answer.
     *
     * @return with reason and source
     */
    public Answer answer() {
        return answer;
    }

    /**
     * A pattern with this hem.
     *
     * @param pattern any pattern
     * @return the pattern, its trousers with this allowance at the hem; other garments as they are
     */
    public Pattern on(Pattern pattern) {
        if (this == AS_DRAWN) {
            return pattern;
        }
        List<Piece> changed = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            if (piece.kind().isTrouser()) {
                changed.add(piece.toBuilder()
                        .edges(piece.edges().stream().map(this::hemmed).toList())
                        .build());
            }
        }
        return pattern.withPieces(changed);
    }

    private Edge hemmed(Edge edge) {
        return edge.role() == EdgeRole.HEM ? new Edge(edge.name(), edge.role(), edge.path(), mm) : edge;
    }
}
