package trueseam.output.cloth;

import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.lay.LaidPiece;
import trueseam.cloth.lay.Lay;
import trueseam.geometry.Point;
import trueseam.geometry.convert.PathData;
import trueseam.output.svg.Svg;

/** A layout as an SVG drawing at true scale, one user unit a millimetre. */
public final class LaySvg {

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
        // Cloth is drawn with y up.
        double top = cloth.usableMm() + selvage;
        svg.open("g", "transform", "matrix(1 0 0 -1 0 " + Svg.number(top) + ")", "fill-opacity", 0.6);
        lay.pieces().forEach(piece -> draw(svg, piece));
        svg.close();
        svg.open("g", "font-family", "sans-serif", "font-size", 28, "text-anchor", "middle", "fill", "#111");
        int number = 0;
        for (LaidPiece piece : lay.pieces()) {
            Point at = piece.cutting().bounds().centre();
            String name = ++number + " " + piece.part().piece().name();
            svg.element("text", name, "x", at.x(), "y", top - at.y() - 8);
        }
        return svg.close().close().text() + "\n";
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
                "stroke",
                "#111",
                "stroke-width",
                1.5);
        String grain = "M" + point(piece.grainFrom()) + " L" + point(piece.grainTo());
        svg.empty("path", "d", grain, "stroke", "#111", "stroke-width", 1.5, "fill", "none");
    }

    private static String point(Point p) {
        return Svg.number(p.x()) + " " + Svg.number(p.y());
    }
}
