package trueseam.output.print;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** A printed page as an eye sees it: darkness by place, in mm from the lower left corner of the paper. */
public final class Scan {

    private final BufferedImage image;
    private final double perMm;
    private final Point corner;

    /** A picture of a page or part of one; its lower left pixel corner lies at the given point. */
    public Scan(BufferedImage image, double dpi, Point corner) {
        this.image = image;
        this.perMm = dpi / 25.4;
        this.corner = corner;
    }

    /** Renders a page, counted from 0. */
    public static Scan of(PDDocument document, int page, double dpi) throws IOException {
        return new Scan(
                new PDFRenderer(document).renderImageWithDPI(page, (float) dpi, ImageType.GRAY), dpi, Point.ORIGIN);
    }

    /** Renders a part of a page, counted from 0. */
    public static Scan of(PDDocument document, int page, Bounds part, double dpi) throws IOException {
        PDPage p = document.getPage(page);
        PDRectangle whole = p.getCropBox();
        float mm = 72 / 25.4f;
        // On whole points, so that the picture begins where it is said to.
        PDRectangle crop = new PDRectangle(
                (float) Math.floor(part.minX() * mm),
                (float) Math.floor(part.minY() * mm),
                (float) Math.ceil(part.width() * mm),
                (float) Math.ceil(part.height() * mm));
        p.setCropBox(crop);
        BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page, (float) dpi, ImageType.GRAY);
        p.setCropBox(whole);
        return new Scan(image, dpi, new Point(crop.getLowerLeftX() / 72 * 25.4, crop.getLowerLeftY() / 72 * 25.4));
    }

    /** Darkness of the pixel at a place, 0 to 1; outside the picture 0. */
    public double darkness(Point at) {
        int x = (int) Math.floor((at.x() - corner.x()) * perMm);
        int y = image.getHeight() - 1 - (int) Math.floor((at.y() - corner.y()) * perMm);
        if (x < 0 || y < 0 || x >= image.getWidth() || y >= image.getHeight()) {
            return 0;
        }
        return 1 - image.getRaster().getSample(x, y, 0) / 255.0;
    }

    /** A dark stretch found along a straight line: where its middle is, and how long it is. */
    public record Dark(double middleMm, double lengthMm) {}

    /** Dark stretches along a straight line, each with the middle of its darkness. */
    public List<Dark> along(Point from, Vec direction, double lengthMm) {
        double step = 0.25 / perMm;
        List<Dark> found = new ArrayList<>();
        double weight = 0;
        double moment = 0;
        double begun = -1;
        for (double s = 0; s <= lengthMm + step; s += step) {
            double d = s <= lengthMm ? darkness(from.plus(direction.times(s))) : 0;
            if (d > 0.08) {
                begun = begun < 0 ? s : begun;
                weight += d;
                moment += d * s;
            } else if (begun >= 0) {
                found.add(new Dark(moment / weight, s - begun));
                begun = -1;
                weight = 0;
                moment = 0;
            }
        }
        return found;
    }

    /** The first upright or level line met from a point, seen from several places beside it: the median of their distances. */
    public double firstLine(Point from, Vec direction, double reachMm) {
        List<Double> distances = new ArrayList<>();
        for (int i = -20; i <= 20; i++) {
            Point start = from.plus(direction.left().times(i * 0.37));
            List<Dark> dark = along(start, direction, reachMm);
            distances.add(dark.isEmpty() ? Double.NaN : dark.get(0).middleMm());
        }
        distances.sort(null);
        return distances.get(distances.size() / 2);
    }

    /** Middles of the black spots in which a square of 2 mm has room: lines and letters are thinner, diamonds are not. */
    public List<Point> spots() {
        int w = image.getWidth();
        int h = image.getHeight();
        int[][] sums = new int[h + 1][w + 1];
        for (int y = 0; y < h; y++) {
            int row = 0;
            for (int x = 0; x < w; x++) {
                row += image.getRaster().getSample(x, y, 0) < 128 ? 1 : 0;
                sums[y + 1][x + 1] = sums[y][x + 1] + row;
            }
        }
        int r = (int) Math.round(perMm);
        List<double[]> spots = new ArrayList<>(); // sum of x, sum of y, number
        for (int y = r; y < h - r; y++) {
            for (int x = r; x < w - r; x++) {
                int side = 2 * r + 1;
                int dark = sums[y + r + 1][x + r + 1]
                        - sums[y - r][x + r + 1]
                        - sums[y + r + 1][x - r]
                        + sums[y - r][x - r];
                if (dark == side * side) {
                    add(spots, x, y);
                }
            }
        }
        List<Point> middles = new ArrayList<>();
        for (double[] s : spots) {
            double x = (s[0] / s[2] + 0.5) / perMm;
            double y = (h - s[1] / s[2] - 0.5) / perMm;
            middles.add(corner.plus(new Vec(x, y)));
        }
        return middles;
    }

    private void add(List<double[]> spots, int x, int y) {
        for (double[] s : spots) {
            if (Math.hypot(s[0] / s[2] - x, s[1] / s[2] - y) < 3 * perMm) {
                s[0] += x;
                s[1] += y;
                s[2]++;
                return;
            }
        }
        spots.add(new double[] {x, y, 1});
    }
}
