package trueseam.worktable.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.EdgeRef;
import trueseam.intake.bring.Brought;
import trueseam.intake.bring.BroughtSeam;
import trueseam.worktable.project.DrawingPart;
import trueseam.worktable.work.BroughtDrawing;
import trueseam.worktable.work.Outcome;
import trueseam.worktable.work.Workings;

/**
 * A drawing that is being confirmed.
 *
 * @param part what was brought, and what she says
 * @param sentence why it cannot be shown; empty if it can
 * @param problem what was wrong with the last correction; empty if nothing
 * @param sizes the sizes drawn in it; none if there is one only
 * @param pieces its pieces
 * @param seams its seams
 * @param edges all edges, as seams name them
 * @param scale what is said about its scale
 * @param doubts what is doubtful
 * @param notes what is good to know
 * @param again whether an earlier state of it is the project's pattern
 */
public record DrawingView(
        DrawingPart part,
        String sentence,
        String problem,
        List<String> sizes,
        List<PieceCard> pieces,
        List<SeamRow> seams,
        List<EdgeRef> edges,
        List<Finding> scale,
        List<Finding> doubts,
        List<Finding> notes,
        boolean again) {

    /** Where what is said about its scale stands. */
    private static final Set<String> SCALE = Set.of("test square", "printed dimensions");

    /** Does not change. */
    public DrawingView {
        sizes = List.copyOf(sizes);
        pieces = List.copyOf(pieces);
        seams = List.copyOf(seams);
        edges = List.copyOf(edges);
        scale = List.copyOf(scale);
        doubts = List.copyOf(doubts);
        notes = List.copyOf(notes);
    }

    /**
     * A seam.
     *
     * @param name what it is called
     * @param first one side
     * @param second the other side
     * @param lengths both lengths
     * @param difference how they differ, and by how much they are meant to
     * @param sure how sure it is
     * @param reason why it is proposed
     */
    public record SeamRow(
            String name, String first, String second, String lengths, String difference, String sure, String reason) {}

    static DrawingView of(Workings workings, String problem) {
        DrawingPart part = workings.project().pattern().drawing();
        Outcome<BroughtDrawing> outcome = workings.brought();
        boolean again =
                !part.confirmed() && !workings.project().pattern().file().isEmpty();
        List<String> sizes = outcome.value().map(BroughtDrawing::sizes).orElse(List.of());
        if (outcome.value().flatMap(BroughtDrawing::brought).isEmpty()) {
            String sentence = outcome.isThere() ? "" : part.file().isEmpty() ? "" : outcome.sentence();
            return new DrawingView(
                    part,
                    sentence,
                    problem,
                    sizes,
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    outcome.value().map(BroughtDrawing::findings).orElse(List.of()),
                    List.of(),
                    again);
        }
        Brought brought = outcome.get().brought().orElseThrow();
        LengthFormat show = workings.project().person().format();
        List<EdgeRef> edges = new ArrayList<>();
        brought.pattern().pieces().forEach(p -> p.edges().forEach(e -> edges.add(new EdgeRef(p.name(), e.name()))));
        return new DrawingView(
                part,
                "",
                problem,
                sizes,
                brought.pieces().stream().map(PieceCard::of).toList(),
                brought.seams().stream().map(s -> row(s, show)).toList(),
                edges,
                brought.findings().stream()
                        .filter(f -> SCALE.contains(f.place()))
                        .map(f -> new Finding(f.severity(), f.place(), onScreen(f.sentence())))
                        .toList(),
                Stream.concat(outcome.get().findings().stream(), findings(brought, false))
                        .toList(),
                findings(brought, true).toList(),
                again);
    }

    /** Those that tell how to answer on the command line are answered on this very screen, where they are marked. */
    private static Stream<Finding> findings(Brought brought, boolean notes) {
        return brought.findings().stream()
                .filter(f -> (f.severity() == Severity.NOTE) == notes && !SCALE.contains(f.place()))
                .filter(f -> !f.sentence().contains(" --"));
    }

    /** Here a field is filled in where the command line has an option. */
    private static String onScreen(String sentence) {
        return sentence.replaceAll("say --test-square (\"[^\"]+\")", "write $1 into the field for the test square")
                .replace("say what with --test-square", "write what into the field for the test square");
    }

    private static SeamRow row(BroughtSeam seam, LengthFormat show) {
        double ease = seam.seam().value().easeMm();
        double off = seam.secondMm() - seam.firstMm();
        return new SeamRow(
                seam.seam().value().name(),
                side(seam.seam().value().first()),
                side(seam.seam().value().second()),
                String.format(
                        Locale.ROOT,
                        "%.1f and %.1f mm (%s, %s)",
                        seam.firstMm(),
                        seam.secondMm(),
                        show.show(seam.firstMm()),
                        show.show(seam.secondMm())),
                String.format(
                        Locale.ROOT,
                        "%+.1f mm, meant: %+.1f mm%s",
                        off + 0.0,
                        ease + 0.0,
                        Math.abs(off - ease) > 0.1 ? "; they do not walk" : ""),
                seam.seam().sureness().word(),
                seam.reason());
    }

    private static String side(List<EdgeRef> side) {
        return side.stream().map(EdgeRef::toString).collect(Collectors.joining(" and "));
    }

    /**
     * From which sizes it is drawn across.
     *
     * @return as it was typed; empty where one size is taken
     */
    public String across() {
        boolean one = part.size().isEmpty() || part.size().equals(DrawingPart.ONE_SIZE) || sizes.contains(part.size());
        return one ? "" : part.size();
    }

    /**
     * What only she can tell.
     *
     * @return the pieces that a question is open about
     */
    public List<PieceCard> asked() {
        return pieces.stream().filter(p -> !p.of().ask().isEmpty()).toList();
    }

    /**
     * How much of it is doubtful.
     *
     * @return a sentence
     */
    public String toCheck() {
        long edgesToCheck = pieces.stream()
                .flatMap(p -> p.edges().stream())
                .filter(e -> e.of().name().sureness() == trueseam.intake.bring.Sureness.CHECK)
                .count();
        long kindsToCheck = pieces.stream()
                .filter(p -> !p.leftOut() && p.of().kind().sureness() == trueseam.intake.bring.Sureness.CHECK)
                .count();
        return edgesToCheck + kindsToCheck == 0
                ? "Nothing is marked to be checked; look it over all the same."
                : "Please check " + kindsToCheck + (kindsToCheck == 1 ? " piece and " : " pieces and ") + edgesToCheck
                        + (edgesToCheck == 1 ? " edge" : " edges") + "; they are marked below.";
    }
}
