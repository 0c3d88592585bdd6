package trueseam.intake.nest;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import trueseam.garment.finding.Finding;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.apparel.ApparelPieces;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.drawing.Stroke;

/**
 * The sizes that a drawing holds.
 *
 * <p>Laws: (1) sizes are in order from the smallest, their names differ; (2) there are none or two and more: a drawing of one size has no
 * nest; (3) the drawing of a size holds its own lines and those that all sizes share, never another size's.
 */
public final class Nest {

    private final Drawing drawing;
    private final ToldBy told;
    private final List<SizeLines> lines;
    private final List<Stroke> shared;
    private final List<Finding> findings;

    Nest(Drawing drawing, ToldBy told, List<SizeLines> lines, List<Stroke> shared, List<Finding> findings) {
        this.drawing = drawing;
        this.told = told;
        this.lines = List.copyOf(lines);
        this.shared = List.copyOf(shared);
        this.findings = List.copyOf(findings);
    }

    /**
     * Looks for sizes.
     *
     * @param drawing the drawing
     * @return its sizes; none where it holds one only
     */
    public static Nest of(Drawing drawing) {
        return new Telling(drawing).nest();
    }

    /**
     * Its sizes.
     *
     * @return from the smallest to the largest; empty where the drawing holds one size only
     */
    public List<NestSize> sizes() {
        return lines.stream().map(SizeLines::size).toList();
    }

    /**
     * What tells them apart.
     *
     * @return layers, colours and so on
     */
    public ToldBy told() {
        return told;
    }

    /**
     * What is doubtful about the sizes.
     *
     * @return none where all is clear
     */
    public List<Finding> findings() {
        return findings;
    }

    /**
     * What to say to somebody who has chosen no size.
     *
     * @return one sentence that names the sizes and how to choose one
     */
    public String question() {
        String some = lines.get(lines.size() / 2).size().name();
        return "It holds " + lines.size() + " sizes, told apart by " + told.word() + ": " + names()
                + "; choose one with --size \"" + some + "\", blend two with --size \"bust " + some + ", hip "
                + lines.get(lines.size() - 1).size().name() + "\", or say --one-size if these are no sizes.";
    }

    private String names() {
        return lines.stream().map(l -> l.size().name()).collect(Collectors.joining(", "));
    }

    /**
     * The size that somebody means.
     *
     * @param text as they write it: the name, one of its parts ({@code 38} for {@code 10 (EU 38)}), {@code smallest}, {@code largest}
     * @return the size
     * @throws DrawingException if there is none, or more than one, of that name
     */
    public NestSize size(String text) {
        String wanted = text.strip().toLowerCase(Locale.ROOT);
        if (!lines.isEmpty() && wanted.equals("smallest")) {
            return lines.get(0).size();
        }
        if (!lines.isEmpty() && wanted.equals("largest")) {
            return lines.get(lines.size() - 1).size();
        }
        for (SizeLines line : lines) {
            if (line.size().name().equalsIgnoreCase(wanted)) {
                return line.size();
            }
        }
        List<NestSize> meant = lines.stream()
                .map(SizeLines::size)
                .filter(s -> new SizeWord(s.name(), false, 0).isMeantBy(wanted))
                .toList();
        if (meant.size() != 1) {
            throw new DrawingException(
                    drawing.file(),
                    "",
                    (meant.isEmpty() ? "It has no size \"" : "More than one of its sizes may be meant by \"")
                            + text.strip() + "\"; its sizes are " + names() + ".");
        }
        return meant.get(0);
    }

    /**
     * The drawing of one size.
     *
     * @param size one of {@link #sizes}
     * @return its lines, what all sizes share, and what is written that names no size
     */
    public Drawing drawing(NestSize size) {
        SizeLines own = lines.stream()
                .filter(l -> l.size().equals(size))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no size of this nest: " + size));
        if (told == ToldBy.BLOCKS) {
            List<ApparelPiece> pieces = drawing.apparel().pieces().stream()
                    .filter(p -> p.size().isBlank() || p.size().equals(size.name()))
                    .toList();
            ApparelPieces apparel = new ApparelPieces(drawing.apparel().style(), pieces);
            return new Drawing(drawing.file(), drawing.strokes(), drawing.captions(), drawing.findings(), apparel);
        }
        List<SizeLines> others = lines.stream().filter(l -> !l.equals(own)).toList();
        List<Stroke> common = shared.stream().filter(s -> own.takes(s, others)).toList();
        List<Caption> words = drawing.captions().stream()
                .filter(c -> SizeWord.of(c.text()).isEmpty()
                        && SizeWord.row(c.text()).isEmpty())
                .filter(c -> others.stream().noneMatch(o -> o.isOnlyIn(c.layer())))
                .toList();
        return new Drawing(drawing.file(), Sharing.with(own.strokes(), common), words, drawing.findings());
    }

    /**
     * The drawing of one size.
     *
     * @param text as for {@link #size}
     * @return its lines, what all sizes share, and what is written that names no size
     * @throws DrawingException if there is none, or more than one, of that name
     */
    public Drawing drawing(String text) {
        return drawing(size(text));
    }
}
