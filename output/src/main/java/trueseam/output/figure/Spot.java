package trueseam.output.figure;

/**
 * A place on the body.
 *
 * @param x to the wearer's left, mm
 * @param y over the floor, mm
 * @param z forward of the plane through both sides, mm
 * @param facing how far the skin there looks forward: 1 in the middle of the front, 0 at a side, -1 in the middle of the back
 */
record Spot(double x, double y, double z, double facing) {

    /** The same place on the other side of the body. */
    Spot mirrored() {
        return new Spot(-x, y, z, facing);
    }

    /** A share of the way to another place, straight through the air. */
    Spot towards(Spot other, double share) {
        return new Spot(
                x + share * (other.x - x),
                y + share * (other.y - y),
                z + share * (other.z - z),
                facing + share * (other.facing - facing));
    }
}
