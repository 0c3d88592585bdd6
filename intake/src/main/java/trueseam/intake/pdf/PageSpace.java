package trueseam.intake.pdf;

import java.awt.geom.Rectangle2D;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;

/**
 * From the units of a page to mm from its lower left corner, as it is looked at: its visible box is the paper, and it may be turned by
 * quarters (ISO 32000-1, 7.7.3.3: CropBox, Rotate, UserUnit).
 *
 * @param unitMm length of a unit, mm
 * @param left the box's left side, units
 * @param low its lower side, units
 * @param width its width before turning, mm
 * @param height its height before turning, mm
 * @param quarters quarter turns clockwise, 0 to 3
 */
record PageSpace(double unitMm, double left, double low, double width, double height, int quarters) {

    static PageSpace of(PDPage page) {
        PDRectangle box = page.getCropBox();
        double unit = page.getUserUnit() * 25.4 / 72;
        return new PageSpace(
                unit,
                box.getLowerLeftX(),
                box.getLowerLeftY(),
                box.getWidth() * unit,
                box.getHeight() * unit,
                Math.floorMod(page.getRotation() / 90, 4));
    }

    Point mm(double x, double y) {
        double right = (x - left) * unitMm;
        double up = (y - low) * unitMm;
        return switch (quarters) {
            case 0 -> new Point(right, up);
            case 1 -> new Point(up, width - right);
            case 2 -> new Point(width - right, height - up);
            default -> new Point(height - up, right);
        };
    }

    Bounds mm(Rectangle2D box) {
        return Bounds.of(mm(box.getMinX(), box.getMinY()), mm(box.getMaxX(), box.getMaxY()));
    }

    /** A part of the paper in the units of the page. */
    Rectangle2D units(Bounds mm) {
        double x0 = mm.minX();
        double y0 = mm.minY();
        double w = mm.width();
        double h = mm.height();
        Rectangle2D.Double right =
                switch (quarters) {
                    case 0 -> new Rectangle2D.Double(x0, y0, w, h);
                    case 1 -> new Rectangle2D.Double(width - y0 - h, x0, h, w);
                    case 2 -> new Rectangle2D.Double(width - x0 - w, height - y0 - h, w, h);
                    default -> new Rectangle2D.Double(y0, height - x0 - w, h, w);
                };
        return new Rectangle2D.Double(
                left + right.x / unitMm, low + right.y / unitMm, right.width / unitMm, right.height / unitMm);
    }

    double paperWidth() {
        return quarters % 2 == 0 ? width : height;
    }

    double paperHeight() {
        return quarters % 2 == 0 ? height : width;
    }
}
