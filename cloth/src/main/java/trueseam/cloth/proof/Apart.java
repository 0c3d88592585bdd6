package trueseam.cloth.proof;

import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * How two shapes that ought to lie apart do not.
 *
 * @param overlapping whether they lie on each other
 * @param amount the area that they share, or else the distance between them
 */
record Apart(boolean overlapping, double amount) {

    /**
     * What is wrong between two shapes.
     *
     * @param one the one
     * @param other the other
     * @param gap how far apart they are to lie
     * @param bound by how much that may be missed
     * @return what is wrong, if anything
     */
    static Optional<Apart> fault(Geometry one, Geometry other, double gap, double bound) {
        if (one.getEnvelopeInternal().distance(other.getEnvelopeInternal()) > gap) {
            return Optional.empty();
        }
        if (PreparedGeometryFactory.prepare(one).intersects(other)) {
            Geometry common = OverlayNGRobust.overlay(one, other, OverlayNG.INTERSECTION);
            // Of shapes that only touch nothing is left when what they share is shaved by half the bound on either
            // side.
            if (!common.buffer(-bound / 2).isEmpty()) {
                return Optional.of(new Apart(true, common.getArea()));
            }
        }
        double distance = IndexedFacetDistance.distance(one, other);
        return distance < gap - bound ? Optional.of(new Apart(false, distance)) : Optional.empty();
    }

    String words(double gap) {
        return overlapping
                ? String.format(Locale.ROOT, "lie on each other with %.4g of their areas", amount)
                : String.format(Locale.ROOT, "lie %.2f apart, less than %.2f", amount, gap);
    }
}
