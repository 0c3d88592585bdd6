package trueseam.output.dxf;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/** Writes a pattern, altered or not, as DXF by the apparel convention. */
public final class ApparelDxf {

    private static final double APART_MM = 50;
    private static final double LETTERS_MM = 6;

    private ApparelDxf() {}

    /**
     * Writes a pattern in one size.
     *
     * <p>Of each piece: cutting line (layer 1) with turn points (2) and curve points (3), notches (4), mirror line at a fold (6), grain (7),
     * darts, levels, landmarks and markings as internal lines (8), stitching line (14), texts. Chords lie within 0.02 mm of a curve, numbers
     * have five decimals. Drill holes are not written: no cloth is pierced that nobody asked to pierce.
     *
     * @param pattern the pattern
     * @return the text of a DXF file, release 12, 7-bit ASCII, mm
     * @throws CrossingOutlineException if the outline of a piece crosses itself
     */
    public static String write(Pattern pattern) {
        DxfText dxf = new DxfText();
        dxf.group(0, "SECTION").group(2, "HEADER").group(0, "ENDSEC");
        dxf.group(0, "SECTION").group(2, "BLOCKS");
        Map<String, Point> places = new LinkedHashMap<>();
        Set<String> names = new HashSet<>();
        double right = 0;
        for (Piece piece : pattern.pieces()) {
            Path cutting = CuttingLine.find(piece).orElseThrow(() -> new CrossingOutlineException(piece.name()));
            String name = blockName(piece.name(), pattern.size(), names);
            dxf.group(0, "BLOCK")
                    .group(8, "1")
                    .group(2, name)
                    .group(70, "64")
                    .at(10, Point.ORIGIN)
                    .group(3, name);
            PieceBlock.write(dxf, pattern, piece, cutting);
            dxf.group(0, "ENDBLK").group(8, "1");
            Bounds box = cutting.bounds();
            places.put(name, new Point(right - box.minX(), -box.minY()));
            right += box.width() + APART_MM;
        }
        dxf.group(0, "ENDSEC").group(0, "SECTION").group(2, "ENTITIES");
        style(dxf, pattern);
        places.forEach((name, at) ->
                dxf.group(0, "INSERT").group(8, "1").group(2, name).at(10, at));
        return dxf.group(0, "ENDSEC").group(0, "EOF").toString();
    }

    /** What is said of the whole style, below the pieces. The first line from memory: it tells readers the convention. */
    private static void style(DxfText dxf, Pattern pattern) {
        String[] lines = {
            "ASTM/D13Proposal 1 Version: D 6673-04",
            "Style Name: " + pattern.name(),
            "Sample Size: " + pattern.size(),
            "Units: METRIC",
            String.format(Locale.ROOT, "Curve Tolerance: %.2f", CutLine.TOLERANCE_MM)
        };
        for (int i = 0; i < lines.length; i++) {
            dxf.words(1, new Point(0, -20 - 2 * LETTERS_MM * i), LETTERS_MM, lines[i]);
        }
    }

    /** Letters, digits and hyphens only; an underscore before the size, as files in use have it. */
    private static String blockName(String piece, String size, Set<String> taken) {
        String base = plain(piece) + (size.isBlank() ? "" : "_" + plain(size));
        String name = base;
        for (int i = 2; !taken.add(name); i++) {
            name = base + "-" + i;
        }
        return name;
    }

    private static String plain(String words) {
        return DxfText.ascii(words)
                .toUpperCase(Locale.ROOT)
                .replaceAll("[^A-Z0-9]+", "-")
                .replaceAll("^-|-$", "");
    }
}
