package trueseam.intake.patternfile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.geometry.convert.Affine;

/** Reads one piece. Used once. */
final class PieceReader {

    private final SvgNode node;
    private final String name;
    private final String what;
    private final Reading reading;
    private final Placing placing;

    private final List<Drawn> edges = new ArrayList<>();
    private final List<Drawn> riders = new ArrayList<>();

    PieceReader(SvgNode node, Reading reading) {
        this.node = node;
        this.name = node.attributes().get(Words.PIECE);
        this.what = "piece \"" + NumberText.shortened(name) + "\"";
        this.reading = reading;
        this.placing = new Placing(reading);
    }

    Piece read() {
        collect(node, Affine.NONE);
        OutlineReader outline = new OutlineReader(node, what, reading);
        List<Edge> inOrder = outline.read(edges);
        PieceBuilder piece = new PieceBuilder(name, kind()).cut(cutCount()).edges(inOrder);
        outline.fold(edges).ifPresent(piece::onFold);
        RiderReader on = new RiderReader(piece, inOrder, reading);
        riders.forEach(on::read);
        try {
            return piece.grain(on.grain().orElseGet(() -> uprightGrain(inOrder)))
                    .build();
        } catch (IllegalArgumentException e) {
            throw reading.refused(node, what, e.getMessage() + " Correct it in the file.");
        }
    }

    /** Sorts what is drawn in the piece; what says nothing of ours is for the eye only. */
    private void collect(SvgNode group, Affine toPiece) {
        for (SvgNode child : group.children()) {
            String line = child.attribute(Words.LINE).orElse("");
            if (line.equals(Words.CUTTING) || line.equals(Words.ORIGINAL)) {
                continue;
            }
            if (child.has(Words.PIECE)) {
                throw reading.refused(
                        child, what, "Another piece lies within it; expected pieces side by side; ungroup them.");
            }
            String part = part(child, line);
            if (!part.isEmpty()) {
                String named = part + " of " + what;
                Drawn drawn = new Drawn(child, placing.of(child, named).then(toPiece), named);
                (part.startsWith("edge ") ? edges : riders).add(drawn);
            } else if (child.isGroup()) {
                collect(child, placing.of(child, "a group in " + what).then(toPiece));
            }
        }
    }

    /** What an element is, in words; empty if it is none of ours. */
    private String part(SvgNode child, String line) {
        for (String attribute : List.of(Words.DART, Words.NOTCH, Words.LANDMARK, Words.LEVEL, Words.EDGE)) {
            Optional<String> value = child.attribute(attribute);
            if (value.isPresent()) {
                return attribute.substring("data-".length()) + " \"" + NumberText.shortened(value.get()) + "\"";
            }
        }
        return switch (line) {
            case "" -> "";
            case Words.GRAIN -> "grainline";
            case Words.INTERNAL ->
                "line \"" + NumberText.shortened(child.attribute(Words.NAME).orElse("")) + "\"";
            case Words.STITCHING, Words.FOLD ->
                throw reading.refused(
                        child, what, "A " + line + " line has no " + Words.EDGE + "; expected the name of the edge.");
            default -> {
                reading.warn(
                        child,
                        what,
                        Words.LINE + " \"" + NumberText.shortened(line)
                                + "\" is not known, and the line was left out; expected stitching, fold, grain,"
                                + " internal, cutting or original.");
                yield "";
            }
        };
    }

    private PieceKind kind() {
        Optional<String> word = node.attribute(Words.KIND);
        if (word.isEmpty()) {
            Optional<PieceKind> told = PieceKind.ofWord(name);
            if (told.isEmpty()) {
                reading.warn(
                        node,
                        what,
                        "It has no " + Words.KIND + " and its name tells none, so it is kept as it is and not altered;"
                                + " write one of " + kinds() + ".");
            }
            return told.orElse(PieceKind.OTHER);
        }
        return PieceKind.ofWord(word.get())
                .orElseThrow(() -> reading.refused(
                        node,
                        what,
                        Words.KIND + " \"" + NumberText.shortened(word.get()) + "\" is not known; expected one of "
                                + kinds() + "; correct it, or write other."));
    }

    private static String kinds() {
        return String.join(
                ", ", Arrays.stream(PieceKind.values()).map(PieceKind::word).toList());
    }

    private int cutCount() {
        Optional<String> text = node.attribute(Words.CUT);
        if (text.isEmpty()) {
            reading.note(node, what, "It has no " + Words.CUT + ", how many to cut; 1 is taken.");
            return 1;
        }
        String digits = text.get().strip();
        if (!digits.matches("[1-9]\\d{0,8}")) {
            throw reading.refused(
                    node,
                    what,
                    Words.CUT + " is \"" + NumberText.shortened(digits)
                            + "\"; expected how many to cut, 1 or more; correct it.");
        }
        return Integer.parseInt(digits);
    }

    private Grain uprightGrain(List<Edge> outline) {
        Bounds bounds = outline.get(0).path().bounds();
        for (Edge edge : outline) {
            bounds = bounds.with(edge.path().bounds());
        }
        reading.warn(
                node,
                what,
                "It has no grainline; one straight up its middle is taken; draw a line with " + Words.LINE + "=\""
                        + Words.GRAIN + "\".");
        double fifth = bounds.height() / 5;
        double x = bounds.centre().x();
        return new Grain(new Point(x, bounds.minY() + fifth), new Point(x, bounds.maxY() - fifth));
    }
}
