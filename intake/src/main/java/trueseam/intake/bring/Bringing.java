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
import trueseam.garment.pattern.PatternException;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.naming.Naming;
import trueseam.intake.naming.Outline;
import trueseam.intake.outline.Pieces;
import trueseam.intake.outline.RawPiece;
import trueseam.intake.said.Corrections;
import trueseam.intake.said.Frame;
import trueseam.intake.said.LineTaken;
import trueseam.intake.said.PieceCorrection;

/** Brings a drawing in as a pattern. */
public final class Bringing {

    /** A piece has a title, a size and some hints written in it; a longer text is a page of instructions. */
    private static final int MOST_WORDS = 100;

    private static final int LONGEST_WORDS = 500;

    private final Drawing drawing;
    private final BringChoices choices;
    private final Corrections said;
    private final Naming naming = Naming.usual();
    private final List<Finding> findings = new ArrayList<>();
    private Marks marks = Marks.NONE;

    private Bringing(Drawing drawing, BringChoices choices, Corrections said) {
        this.drawing = drawing;
        this.choices = choices;
        this.said = said;
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
        return new Bringing(drawing, choices, Corrections.NONE).brought();
    }

    /**
     * Brings a drawing in where somebody knows better than what is proposed. What is said goes before what is proposed; what is said as
     * it is proposed anyway is no correction; what does not fit the drawing is told and not used.
     *
     * @param drawing the drawing at true scale
     * @param choices what whoever knows it says of the whole
     * @param said what she says of its pieces, edges and seams
     * @return the pattern, and what was guessed
     * @throws DrawingException if there is no piece in it
     */
    public static Brought of(Drawing drawing, BringChoices choices, Corrections said) {
        Brought proposed = of(drawing, choices);
        if (said.isEmpty()) {
            return proposed;
        }
        SaidAnew anew = SaidAnew.of(said, proposed);
        if (anew.corrections().isEmpty() && anew.findings().isEmpty()) {
            return proposed;
        }
        return corrected(drawing, choices, anew);
    }

    /**
     * Brings a drawing in where somebody said one thing after the other before the screen: what she said stands, as proposed or not.
     *
     * @param drawing the drawing at true scale
     * @param choices what whoever knows it says of the whole
     * @param said what she says of its pieces, edges and seams
     * @return the pattern, and what was guessed
     * @throws DrawingException if there is no piece in it
     */
    public static Brought confirmed(Drawing drawing, BringChoices choices, Corrections said) {
        Brought proposed = of(drawing, choices);
        return said.isEmpty() ? proposed : corrected(drawing, choices, SaidAnew.inFull(said, proposed));
    }

    private static Brought corrected(Drawing drawing, BringChoices choices, SaidAnew anew) {
        Bringing bringing = new Bringing(drawing, choices, anew.corrections());
        bringing.findings.addAll(anew.findings());
        return bringing.brought();
    }

    /** What geometry or the laws of a piece refuse on the way is said of the file, so that its user knows where to look. */
    private Brought brought() {
        try {
            return made();
        } catch (GeometryException | PatternException e) {
            throw new DrawingException(
                    drawing.file(),
                    "",
                    "Its lines cannot be made pieces; look at them in a vector editor: " + e.getMessage());
        }
    }

    private Brought made() {
        findings.addAll(drawing.findings());
        if (choices.layer().isEmpty() && !drawing.apparel().pieces().isEmpty()) {
            return told(ToldPieces.wanted(drawing, choices.size()));
        }
        Pieces found = Pieces.of(wanted());
        findings.addAll(found.findings());
        if (found.pieces().isEmpty()) {
            throw new DrawingException(
                    drawing.file(),
                    "",
                    "There is no closed outline of the size of a pattern piece in it; close the outlines in a vector editor, or"
                            + " name another layer.");
        }
        List<BroughtPiece> pieces = new ArrayList<>();
        marks = Marks.of(found);
        Map<String, Integer> names = new HashMap<>();
        for (int i = 0; i < found.pieces().size(); i++) {
            pieces.add(piece(found.pieces().get(i), Optional.empty(), i + 1, names));
        }
        String name = drawing.file().replaceAll("\\.[A-Za-z]+$", "");
        return brought(name, choices.size(), pieces);
    }

    /** The pieces that the file names itself, with its own name and size unless others are said. */
    private Brought told(List<ApparelPiece> wanted) {
        List<BroughtPiece> pieces = new ArrayList<>();
        Map<String, Integer> names = new HashMap<>();
        for (ApparelPiece piece : wanted) {
            pieces.add(piece(ToldPieces.raw(piece), Optional.of(piece), pieces.size() + 1, names));
        }
        String style = drawing.apparel().style().getOrDefault("Style Name", "");
        String size = wanted.stream()
                .map(ApparelPiece::size)
                .filter(s -> !s.isBlank())
                .findFirst()
                .orElse("");
        return brought(
                style.isBlank() ? drawing.file().replaceAll("\\.[A-Za-z]+$", "") : style,
                choices.size().isBlank() ? size : choices.size(),
                pieces);
    }

    private Brought brought(String usualName, String size, List<BroughtPiece> brought) {
        List<Piece> pieces = brought.stream().flatMap(p -> p.piece().stream()).toList();
        if (pieces.isEmpty()) {
            throw new DrawingException(drawing.file(), "", "Every piece of it is left out; take one in again.");
        }
        List<BroughtSeam> proposed = new ArrayList<>(SeamPartners.of(pieces, findings));
        proposed.addAll(marks.seams(brought, findings));
        List<BroughtSeam> seams = SaidSeams.of(proposed, said, pieces, findings);
        String name = choices.name().isBlank() ? usualName : choices.name();
        Pattern pattern = new Pattern(
                name,
                size,
                choices.table(),
                "brought in from " + drawing.file(),
                pieces,
                seams.stream().map(s -> s.seam().value()).toList(),
                Map.of());
        return new Brought(pattern, brought, seams, said, findings);
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

    private BroughtPiece piece(RawPiece raw, Optional<ApparelPiece> told, int number, Map<String, Integer> names) {
        PieceCorrection of = said.piece(number);
        if (of.leftOut()) {
            return leftOut(raw, number);
        }
        Stitching sewn = Stitching.of(drawing.file(), raw, told, choices, of, place(told, number), findings);
        Path stitching = marks.outline(number - 1, sewn.line());
        List<String> words = new ArrayList<>(raw.captions().stream()
                .map(Caption::text)
                .filter(text -> text.length() <= LONGEST_WORDS)
                .limit(MOST_WORDS)
                .toList());
        words.add(raw.label());
        List<Path> inside =
                new ArrayList<>(raw.inside().stream().map(Stroke::path).toList());
        told.map(ToldPieces::grainLine).ifPresent(inside::add);
        Outline outline = new Outline(stitching, inside, words, sewn.corners());
        Named is = new PieceNaming(naming, choices, findings).name(outline, raw, told, of.kind(), number);
        told.flatMap(ToldPieces::remark).ifPresent(sentence -> findings.add(Finding.note(raw.label(), sentence)));
        String plain = PieceCorrection.plainName(of.name().orElse(is.name()));
        String name = named(plain.isEmpty() ? "piece " + number : plain, names);
        return new PieceMaking(naming, raw, told, is, sewn, of, findings)
                .make(number, name, outline, marks.on(number - 1));
    }

    private static BroughtPiece leftOut(RawPiece raw, int number) {
        boolean hasInner = raw.inner().isPresent();
        return new BroughtPiece(
                number,
                Frame.of(raw.outer().path()),
                raw.outer().path(),
                Optional.empty(),
                Sure.said(PieceKind.OTHER),
                List.of(),
                "",
                Sure.proposed(hasInner ? LineTaken.INNER : LineTaken.STITCHING, 0),
                hasInner,
                0,
                List.of(),
                Sure.proposed("", 0),
                Sure.proposed(1, 0),
                List.of(),
                Upright.AS_DRAWN);
    }

    private static String place(Optional<ApparelPiece> told, int number) {
        return told.map(piece -> "piece " + number + " (" + piece.name() + ")").orElse("piece " + number);
    }

    private static String named(String name, Map<String, Integer> names) {
        int count = names.merge(name, 1, Integer::sum);
        return count == 1 ? name : name + " " + count;
    }
}
