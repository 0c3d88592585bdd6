package trueseam.output.cloth;

import java.util.Locale;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.lay.LaidPiece;
import trueseam.cloth.lay.Lay;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.geometry.convert.PathData;

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
        StringBuilder svg = new StringBuilder();
        svg.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.2fmm\" height=\"%.2fmm\" viewBox=\"0 0 %.2f %.2f\">%n",
                lay.usedMm(),
                width,
                lay.usedMm(),
                width));
        svg.append("<title>").append(text(title)).append("</title>\n");
        svg.append(String.format(
                Locale.ROOT,
                "<rect width=\"%.2f\" height=\"%.2f\" fill=\"#fff\" stroke=\"#444\" stroke-width=\"2\"/>%n",
                lay.usedMm(),
                width));
        // Cloth is drawn with y up.
        svg.append(String.format(
                Locale.ROOT,
                "<g transform=\"matrix(1 0 0 -1 0 %.4f)\" fill-opacity=\"0.6\">%n",
                cloth.usableMm() + selvage));
        for (LaidPiece piece : lay.pieces()) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<path data-piece=\"%s\" d=\"%s\" fill=\"%s\" stroke=\"#111\" stroke-width=\"1.5\"/>%n",
                    text(piece.part().piece().name()),
                    PathData.drawn(piece.cutting()),
                    piece.placed().way().mirrored() ? "#b9c2cc" : "#dfe5ea"));
            svg.append(String.format(
                    Locale.ROOT,
                    "<path d=\"M%.2f %.2f L%.2f %.2f\" stroke=\"#111\" stroke-width=\"1.5\" fill=\"none\"/>%n",
                    piece.grainFrom().x(),
                    piece.grainFrom().y(),
                    piece.grainTo().x(),
                    piece.grainTo().y()));
        }
        svg.append("</g>\n<g font-family=\"sans-serif\" font-size=\"28\" text-anchor=\"middle\" fill=\"#111\">\n");
        int number = 0;
        for (LaidPiece piece : lay.pieces()) {
            Bounds b = piece.cutting().bounds();
            Point at = b.centre();
            svg.append(String.format(
                    Locale.ROOT,
                    "<text x=\"%.2f\" y=\"%.2f\">%d %s</text>%n",
                    at.x(),
                    cloth.usableMm() + selvage - at.y() - 8,
                    ++number,
                    text(piece.part().piece().name())));
        }
        return svg.append("</g>\n</svg>\n").toString();
    }

    private static String text(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
