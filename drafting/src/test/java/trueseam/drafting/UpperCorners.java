package trueseam.drafting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import trueseam.garment.pattern.Pattern;
import trueseam.geometry.Vec;

/** Where front, back and sleeve meet when sewn, their edges make one smooth line (common practice, truing rules). */
final class UpperCorners {

    private UpperCorners() {}

    static void prove(Pattern p, String name, String bottom) {
        String front = name + " front";
        String back = name + " back";
        straight(SewnCorners.sewn(p, front, "shoulder", "neck", back, "shoulder", "neck"), p, "neck point");
        straight(SewnCorners.sewn(p, front, "armhole", "shoulder", back, "armhole", "shoulder"), p, "shoulder point");
        straight(SewnCorners.sewn(p, front, "side", "armhole", back, "side", "armhole"), p, "underarm");
        straight(SewnCorners.sewn(p, front, bottom, "side", back, bottom, "side"), p, "side at the " + bottom);
        straight(
                SewnCorners.sewn(p, "sleeve", "underarm front", "cap front", "sleeve", "cap back", "underarm back"),
                p,
                "sleeve underarm");
        straight(
                SewnCorners.sewn(p, "sleeve", "wrist", "underarm front", "sleeve", "underarm back", "wrist"),
                p,
                "wrist");
        Vec up = p.piece("sleeve").edge("cap front").path().endTangent();
        Vec down = p.piece("sleeve").edge("cap back").path().startTangent();
        assertThat(Math.toDegrees(up.angleTo(down))).as("crown of " + p.name()).isCloseTo(0, within(1.0));
    }

    private static void straight(double degrees, Pattern p, String where) {
        assertThat(degrees).as(where + " of " + p.name()).isCloseTo(180, within(DraftProof.SMOOTH_DEGREES));
    }
}
