package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;
import trueseam.geometry.offset.Offset;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.naming.Naming;
import trueseam.intake.naming.Outline;
import trueseam.intake.naming.Proposal;
import trueseam.intake.outline.Pieces;
import trueseam.intake.outline.RawPiece;

/** Brings a drawing in as a pattern. */
public final class Bringing {

    /** A piece that is more unlike every known kind than this is kept under its own name and not altered. */
    private static final double STRANGE = 1.2;

    /** An inset is checked by offsetting it back: the lines agree within this. */
    private static final double INSET_MM = 0.1;

    private static final double DRAWN_MM = 0.01;

    private final Drawing drawing;
    private final BringChoices choices;
    private final Naming naming = Naming.usual();
    private final List<Finding> findings = new ArrayList<>();
    private Marks marks = Marks.NONE;

    private Bringing(Drawing drawing, BringChoices choices) {
        this.drawing = drawing;
        this.choices = choices;
    }

    /**
     * Brings a drawing in.
     *
     * @param drawing the drawing at true scale
     * @param choices what whoever knows it says
     * @return the pattern, and what was guessed
     * @throws DrawingException if there is no piece in it
     */
    public static Brought of(Drawing drawing, BringChoices choices) {
        return new Bringing(drawing, choices).brought();
    }

    private Brought brought() {
        findings.addAll(drawing.findings());
        Pieces found = Pieces.of(wanted());
        findings.addAll(found.findings());
        for (double square : found.squares()) {
            findings.add(Finding.note(
                    "test square",
                    String.format(
                            Locale.ROOT,
                            "A square of %.2f mm (%.3f in) is drawn; if what is written at it says another size, the drawing is"
                                    + " not at true scale.",
                            square,
                            square / 25.4)));
        }
        if (found.pieces().isEmpty()) {
            throw new DrawingException(
                    drawing.file(),
                    "",
                    "There is no closed outline of the size of a pattern piece in it; close the outlines in a vector editor, or"
                            + " name another layer.");
        }
        List<Piece> pieces = new ArrayList<>();
        marks = Marks.of(found);
        Map<String, Integer> names = new HashMap<>();
        for (int i = 0; i < found.pieces().size(); i++) {
            pieces.add(piece(found.pieces().get(i), i + 1, names));
        }
        List<Seam> seams = new ArrayList<>(SeamPartners.of(pieces, findings));
        seams.addAll(marks.seams(pieces, findings));
        String name = choices.name().isBlank() ? drawing.file().replaceAll("\\.[A-Za-z]+$", "") : choices.name();
        Pattern pattern = new Pattern(
                name, choices.size(), choices.table(), "brought in from " + drawing.file(), pieces, seams, Map.of());
        return new Brought(pattern, findings);
    }

    private Drawing wanted() {
        if (choices.layer().isEmpty()) {
            return drawing;
        }
        String layer = choices.layer().get().toLowerCase(Locale.ROOT);
        List<Stroke> strokes = drawing.strokes().stream()
                .filter(s -> s.layer().toLowerCase(Locale.ROOT).contains(layer))
                .toList();
        if (strokes.isEmpty()) {
            throw new DrawingException(
                    drawing.file(),
                    "",
                    "No line lies in a layer named \"" + choices.layer().get() + "\"; its layers are "
                            + drawing.strokes().stream()
                                    .map(Stroke::layer)
                                    .distinct()
                                    .sorted()
                                    .limit(20)
                                    .map(l -> l.isEmpty() ? "(none)" : l)
                                    .collect(Collectors.joining(", "))
                            + ".");
        }
        return new Drawing(drawing.file(), strokes, drawing.captions(), List.of());
    }

    private Piece piece(RawPiece raw, int number, Map<String, Integer> names) {
        Path stitching = marks.outline(number - 1, stitching(raw, number));
        List<String> words =
                new ArrayList<>(raw.captions().stream().map(Caption::text).toList());
        words.add(raw.label());
        Outline outline =
                new Outline(stitching, raw.inside().stream().map(Stroke::path).toList(), words);
        Optional<PieceKind> said = Optional.ofNullable(choices.kinds().get(number));
        Optional<Proposal> proposal = said.isPresent() ? naming.propose(outline, said.get()) : naming.propose(outline);
        boolean known =
                proposal.filter(p -> said.isPresent() || p.unlike() < STRANGE).isPresent();
        PieceKind kind = known ? proposal.orElseThrow().kind() : said.orElse(PieceKind.OTHER);
        String name = named(known ? kind.word() : label(raw, number), names);
        if (known && said.isEmpty()) {
            Proposal p = proposal.orElseThrow();
            String others = p.others().isEmpty()
                    ? ""
                    : "; else "
                            + p.others().stream().limit(3).map(PieceKind::word).collect(Collectors.joining(", "));
            findings.add(new Finding(
                    p.confidence() < 0.7
                            ? trueseam.garment.finding.Severity.WARNING
                            : trueseam.garment.finding.Severity.NOTE,
                    name,
                    String.format(
                            Locale.ROOT,
                            "Piece %d of the drawing is taken for a %s (%.0f in 100 sure%s); say --piece \"%d=...\" if it is"
                                    + " not.",
                            number,
                            kind.word(),
                            100 * p.confidence(),
                            others,
                            number)));
        } else if (!known) {
            findings.add(Finding.warning(
                    name,
                    "Piece " + number + " of the drawing is like no piece that is known by its shape"
                            + proposal.map(p -> " (the most like a " + p.kind().word() + ")")
                                    .orElse("")
                            + "; it is kept and printed, and not altered. Say what it is with --piece \"" + number
                            + "=...\"."));
        }
        return new PieceMaking(raw, known ? proposal : Optional.empty(), choices, findings)
                .make(name, kind, stitching, marks.on(number - 1));
    }

    private static String label(RawPiece raw, int number) {
        return raw.captions().stream()
                .max(java.util.Comparator.comparingDouble(Caption::heightMm))
                .map(Caption::text)
                .filter(t -> t.length() <= 40)
                .orElse("piece " + number);
    }

    private static String named(String name, Map<String, Integer> names) {
        int count = names.merge(name, 1, Integer::sum);
        return count == 1 ? name : name + " " + count;
    }

    private Path stitching(RawPiece raw, int number) {
        if (raw.inner().isPresent()) {
            RawPiece.Beside beside = raw.inner().get();
            findings.add(Finding.note(
                    "piece " + number,
                    String.format(
                            Locale.ROOT,
                            "A second line runs %.1f to %.1f mm inside the first: the inner one is taken for the stitching"
                                    + " line.",
                            beside.leastMm(),
                            beside.mostMm())));
            return beside.line();
        }
        Path outer = raw.outer().path();
        if (choices.cutAllowanceMm().isEmpty()) {
            findings.add(Finding.warning(
                    "piece " + number,
                    "It has one line only, taken for the stitching line; if it is the cutting line, say --cutting-lines with"
                            + " the seam allowance that it has."));
            return outer;
        }
        return inset(outer, choices.cutAllowanceMm().getAsDouble(), number);
    }

    private Path inset(Path outer, double mm, int number) {
        Path line = outer.signedArea() < 0 ? outer.reversed() : outer;
        try {
            Path inner = Offset.of(line, -mm, DRAWN_MM);
            Path back = Offset.of(inner, mm, DRAWN_MM);
            double worst = 0;
            for (int i = 0; i < 200; i++) {
                var p = back.pointAt(i * back.length() / 200);
                worst = Math.max(worst, line.nearest(p).point().distanceTo(p));
            }
            if (worst > INSET_MM) {
                findings.add(Finding.warning(
                        "piece " + number,
                        String.format(
                                Locale.ROOT,
                                "Its stitching line, %.1f mm inside, does not give the drawn line back everywhere (%.1f mm off at"
                                        + " the worst place): its corners are not mitred, or its allowances differ.",
                                mm,
                                worst)));
            }
            return inner;
        } catch (GeometryException e) {
            throw new DrawingException(
                    drawing.file(),
                    "piece " + number,
                    String.format(Locale.ROOT, "No line lies %.1f mm inside it: %s", mm, e.getMessage()));
        }
    }
}
