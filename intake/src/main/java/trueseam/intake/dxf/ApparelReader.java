package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import trueseam.garment.finding.Finding;
import trueseam.geometry.GeometryException;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.apparel.ApparelPieces;

/** Gathers the pieces of a file that keeps to the apparel convention: a block with a boundary is a piece. */
final class ApparelReader {

    private ApparelReader() {}

    static ApparelPieces read(String file, List<Placer.Drawn> blocks, List<Mark> sheet, double unitMm, Notes notes) {
        Map<String, String> style = style(sheet);
        double smooth = smoothMm(style, unitMm);
        List<ApparelPiece> pieces = new ArrayList<>();
        List<String> none = new ArrayList<>();
        for (Placer.Drawn drawn : blocks) {
            String place = file + ", block \"" + drawn.block().name() + "\"";
            BlockContents contents = BlockContents.of(drawn.marks());
            if (contents.lines(ApparelLayer.BOUNDARY).isEmpty()) {
                none.add(drawn.block().name());
                continue;
            }
            try {
                pieces.add(new PieceOfBlock(place, drawn.block(), contents, notes, smooth).read());
            } catch (EntityException | GeometryException noPiece) {
                notes.say(Finding.warning(place, "this is no piece: " + noPiece.getMessage() + "."));
            }
        }
        if (!pieces.isEmpty()) {
            tell(pieces, none, notes);
        }
        return new ApparelPieces(style, pieces);
    }

    /** Chords lie within the tolerance that the file names of the curve that was meant; so may a curve of the chords. */
    private static double smoothMm(Map<String, String> style, double unitMm) {
        String said = style.getOrDefault("Curve Tolerance", "");
        if (!said.matches("\\d{0,3}(\\.\\d{1,9})?") || said.isEmpty()) {
            return PieceOfBlock.SMOOTH_MM;
        }
        double mm = Double.parseDouble(said) * unitMm;
        return mm > 0 ? Math.min(mm, PieceOfBlock.SMOOTH_MM) : PieceOfBlock.SMOOTH_MM;
    }

    private static void tell(List<ApparelPiece> pieces, List<String> none, Notes notes) {
        if (!none.isEmpty()) {
            notes.note("blocks without a boundary on layer 1 are no pieces: "
                    + String.join(", ", none.subList(0, Math.min(10, none.size())))
                    + (none.size() > 10 ? " and " + (none.size() - 10) + " more" : "") + ".");
        }
        if (pieces.stream().anyMatch(piece -> piece.sewing().isEmpty())) {
            notes.warn(
                    "pieces without a sew line on layer 14 have a boundary only, and the file does not say whether seam allowance "
                            + "is in it; say it.");
        }
    }

    private static Map<String, String> style(List<Mark> sheet) {
        Map<String, String> style = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        for (Mark mark : sheet) {
            if (mark instanceof Mark.Words words) {
                Optional<Attribute> said = Attribute.of(words.text());
                said.ifPresent(a -> style.putIfAbsent(a.key(), a.value()));
            }
        }
        return style;
    }
}
