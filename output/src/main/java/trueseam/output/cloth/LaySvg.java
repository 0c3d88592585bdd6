package trueseam.output.cloth;

import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.lay.LaidPiece;
import trueseam.cloth.lay.Lay;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.convert.PathData;
import trueseam.output.svg.Svg;

/** A layout as an SVG drawing at true scale, one user unit a millimetre. */
public final class LaySvg {

    /** How wide a letter of a label is, about, mm. */
    private static final double LETTER_MM = 15;

    private LaySvg() {}

    /**
     * Draws it.
     *
     * @param title what is laid
     * @param lay the layout
     * @return SVG
     */
    public static String of(String title, Lay lay) {
        Cloth cloth = lay.cloth();
        double selvage = cloth.selvageMm();
        double lower = cloth.layers() == Layers.LENGTHWISE ? 0 : selvage;
        double width = cloth.usableMm() + selvage + lower;
        Svg svg = new Svg();
        svg.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "width",
                Svg.number(lay.usedMm()) + "mm",
                "height",
                Svg.number(width) + "mm",
                "viewBox",
                "0 0 " + Svg.number(lay.usedMm()) + " " + Svg.number(width));
        svg.element("title", title);
        svg.empty("rect", "width", lay.usedMm(), "height", width, "fill", "#fff", "stroke", "#444", "stroke-width", 2);
        double top = cloth.usableMm() + selvage;
        // Lines are written with y down, from the fold or the lower free line.
        svg.open("g", "transform", "translate(0 " + Svg.number(top) + ")");
        edges(svg, lay);
        lay.pieces().forEach(piece -> draw(svg, piece));
        svg.close();
        svg.open("g", "font-family", "sans-serif", "font-size", 28, "text-anchor", "middle", "fill", "#111");
        int number = 0;
        for (LaidPiece piece : lay.pieces()) {
            Point at = piece.cutting().bounds().centre();
            svg.element("text", label(++number, piece), "x", at.x(), "y", top - at.y() - 8);
        }
        return svg.close().close().text() + "\n";
    }

    /** The number alone where the name would run over the neighbours. */
    private static String label(int number, LaidPiece piece) {
        String named = number + " " + piece.part().piece().name();
        return named.length() * LETTER_MM <= piece.cutting().bounds().width() ? named : String.valueOf(number);
    }

    /** The lines beside the selvages, and the fold. */
    private static void edges(Svg svg, Lay lay) {
        boolean fold = lay.cloth().layers() == Layers.LENGTHWISE;
        edge(svg, lay.usedMm(), -lay.cloth().usableMm(), 1, "none");
        edge(svg, lay.usedMm(), 0, fold ? 6 : 1, fold ? "40 10 6 10" : "none");
    }

    private static void edge(Svg svg, double length, double y, double wide, String dashes) {
        svg.empty(
                "line",
                "x1",
                0,
                "y1",
                y,
                "x2",
                length,
                "y2",
                y,
                "stroke",
                "#888",
                "stroke-width",
                wide,
                "stroke-dasharray",
                dashes);
    }

    private static void draw(Svg svg, LaidPiece piece) {
        svg.empty(
                "path",
                "data-piece",
                piece.part().piece().name(),
                "d",
                PathData.drawn(piece.cutting()),
                "fill",
                piece.placed().way().mirrored() ? "#b9c2cc" : "#dfe5ea",
                "fill-opacity",
                0.6,
                "stroke",
                "#111",
                "stroke-width",
                1.5);
        String grain = PathData.drawn(Path.through(piece.grainFrom(), piece.grainTo()));
        svg.empty("path", "d", grain, "stroke", "#111", "stroke-width", 1.5, "fill", "none");
    }
}
