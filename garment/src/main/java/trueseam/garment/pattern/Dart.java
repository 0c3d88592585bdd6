package trueseam.garment.pattern;

import java.util.List;
import trueseam.geometry.Motion;
import trueseam.geometry.Point;

/** Cloth taken away by a fold that is sewn to a point. */
public sealed interface Dart {

    /**
     * Its name, unique in the piece.
     *
     * @return for example {@code bust dart}
     */
    String name();

    /**
     * A dart sewn into an edge. It rides on the edge: its mouth is the part of the edge between its legs.
     *
     * @param name unique in the piece
     * @param edge the edge it is sewn into
     * @param fromMm place of its first leg along the edge, mm
     * @param toMm place of its second leg along the edge, mm
     * @param apex where it ends
     */
    record EdgeDart(String name, String edge, double fromMm, double toMm, Point apex) implements Dart {

        // Legs in the order of the edge, so that the mouth is one part of it.
        public EdgeDart {
            if (!(0 <= fromMm && fromMm < toMm)) {
                throw new IllegalArgumentException("Dart \"" + name + "\": its legs at " + fromMm + " and " + toMm
                        + " mm must lie in the order of the edge, at 0 mm or after.");
            }
            fromMm = fromMm + 0.0; // -0.0 and 0.0 are one place
        }

        /**
         * The length of the mouth along the edge, over the cap.
         *
         * @return mm
         */
        public double mouthMm() {
            return toMm - fromMm;
        }
    }

    /**
     * A dart inside the piece, pointed at both ends, as at the waist of a dress.
     *
     * @param name unique in the piece
     * @param top upper point
     * @param bottom lower point
     * @param left widest place towards the left
     * @param right widest place towards the right
     */
    record DiamondDart(String name, Point top, Point bottom, Point left, Point right) implements Dart {

        /**
         * The intake at its widest.
         *
         * @return mm
         */
        public double intakeMm() {
            return left.distanceTo(right);
        }

        /**
         * Its corners in order, anticlockwise from the top.
         *
         * @return top, left, bottom, right
         */
        public List<Point> corners() {
            return List.of(top, left, bottom, right);
        }

        /**
         * The dart after a motion of the paper.
         *
         * @param m the motion
         * @return a congruent dart
         */
        public DiamondDart moved(Motion m) {
            return new DiamondDart(name, m.apply(top), m.apply(bottom), m.apply(left), m.apply(right));
        }
    }
}
