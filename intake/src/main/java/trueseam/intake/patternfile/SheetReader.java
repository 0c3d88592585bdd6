package trueseam.intake.patternfile;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.measure.Measure;
import trueseam.garment.measure.UnknownMeasureException;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;

/** Reads a whole pattern: its pieces, and what the root and its metadata say of it. Used once. */
final class SheetReader {

    private final SvgNode root;
    private final Reading reading;
    private final Placing placing;

    SheetReader(SvgNode root, Reading reading) {
        this.root = root;
        this.reading = reading;
        this.placing = new Placing(reading);
    }

    Pattern read() {
        checkFormat();
        SheetScale.check(root, reading);
        List<Piece> pieces = new ArrayList<>();
        collect(root, pieces);
        if (pieces.isEmpty()) {
            throw reading.refused(
                    root,
                    "",
                    "No piece is named in this drawing; expected a group with " + Words.PIECE
                            + " for each piece; name them as docs/pattern-file.md says.");
        }
        String name = root.attribute(Words.PATTERN).orElseGet(() -> {
            reading.note(
                    root, "drawing", "It has no " + Words.PATTERN + "; the file's name is taken for the pattern's.");
            return reading.file();
        });
        Map<Measure, Double> ease = ease();
        try {
            // Checked once without seams, so that one bad seam does not lose the pattern.
            Pattern unsewn = new Pattern(
                    name, text(Words.SIZE), text(Words.SIZE_TABLE), text(Words.SOURCE), pieces, List.of(), ease);
            return new Pattern(name, unsewn.size(), unsewn.sizeTable(), unsewn.source(), pieces, seams(unsewn), ease);
        } catch (IllegalArgumentException e) {
            throw reading.refused(root, "", e.getMessage() + " Correct it in the file.");
        }
    }

    private String text(String attribute) {
        return root.attribute(attribute).orElse("");
    }

    private void checkFormat() {
        Optional<String> format = root.attribute(Words.FORMAT);
        if (format.isPresent() && !format.get().strip().equals(Words.FORMAT_NOW)) {
            throw reading.refused(
                    root,
                    "",
                    Words.FORMAT + " is \"" + NumberText.shortened(format.get()) + "\"; this program reads "
                            + Words.FORMAT_NOW + "; read it with the program that wrote it.");
        }
    }

    private void collect(SvgNode from, List<Piece> pieces) {
        for (SvgNode child : from.children()) {
            if (child.has(Words.PIECE)) {
                // Where a piece lies on the sheet says nothing of the piece; that it is not stretched does.
                placing.of(
                        child,
                        "piece \"" + NumberText.shortened(child.attributes().get(Words.PIECE)) + "\"");
                pieces.add(new PieceReader(child, reading).read());
            } else if (child.isGroup()) {
                int before = pieces.size();
                collect(child, pieces);
                if (pieces.size() > before) {
                    placing.of(child, "a group around pieces");
                }
            }
        }
    }

    private List<Seam> seams(Pattern unsewn) {
        List<Seam> seams = new ArrayList<>();
        for (SvgNode node : SvgTree.all(root, SvgTree.OWN + "seam")) {
            String name = node.attribute(Words.SEAM).orElse("");
            String what = "seam \"" + NumberText.shortened(name) + "\"";
            try {
                Optional<Double> ease = reading.number(node, Words.EASE, what);
                if (ease.isEmpty()) {
                    reading.note(node, what, "It has no " + Words.EASE + "; 0 mm is taken.");
                }
                Seam seam = new Seam(name, side(node, "first"), side(node, "second"), ease.orElse(0.0));
                for (List<EdgeRef> side : List.of(seam.first(), seam.second())) {
                    side.forEach(ref -> unsewn.piece(ref.piece()).edge(ref.edge()));
                }
                seams.add(seam);
            } catch (PatternFileException e) {
                reading.fail(node, what, e.what() + " It was left out.");
            } catch (IllegalArgumentException e) {
                reading.fail(node, what, e.getMessage() + " It was left out.");
            }
        }
        return seams;
    }

    private static List<EdgeRef> side(SvgNode seam, String side) {
        List<EdgeRef> edges = new ArrayList<>();
        for (SvgNode child : seam.children()) {
            if (child.name().equals(SvgTree.OWN + side)) {
                edges.add(new EdgeRef(
                        child.attribute(Words.PIECE).orElse(""),
                        child.attribute(Words.EDGE).orElse("")));
            }
        }
        return edges;
    }

    private Map<Measure, Double> ease() {
        Map<Measure, Double> ease = new EnumMap<>(Measure.class);
        for (SvgNode node : SvgTree.all(root, SvgTree.OWN + "ease")) {
            String what = "ease at \""
                    + NumberText.shortened(node.attribute(Words.MEASURE).orElse("")) + "\"";
            try {
                Measure measure = Measure.named(node.attribute(Words.MEASURE).orElse(""));
                Optional<Double> mm = reading.number(node, Words.EASE, what);
                if (mm.isEmpty()) {
                    reading.fail(node, what, "It has no " + Words.EASE + ", in mm. It was left out.");
                }
                mm.ifPresent(value -> ease.put(measure, value));
            } catch (UnknownMeasureException | PatternFileException e) {
                reading.fail(node, what, e.getMessage() + " It was left out.");
            }
        }
        return ease;
    }
}
