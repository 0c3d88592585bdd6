package trueseam.intake.plot;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import trueseam.intake.drawing.Damage;
import trueseam.intake.drawing.Drawing;

/** Plots damaged on the way or made to do harm end in one sentence or a drawing, soon. */
@Timeout(120)
class HostilePlotTest {

    private static Drawing drawing(byte[] bytes) {
        return Plot.read("x.plt", bytes);
    }

    private static final String EVERYTHING = "\u001b.(;IN;IP0,0,4000,4000;SC0,100,0,100;SP1;PU10,10;PD20,10,20,30;"
            + "PR5,5,-3,2;PA10,10;SC;AA400,400,90,5;AR200,0,-45;CI300;EA2000,900;ER-50,70;LT2;PD1000,1000;LT;PW0.3;"
            + "BZ0,0,100,100,200,0;BR1,2,3,4,5,6;PM0;PD5,5,9,9;PM2;EP;SI0.2,0.3;LBFront 12\u0003;DT#;LBcut 2#;"
            + "SP2;PA;PU0,0;PD4000,0,4000,4000,0,4000,0,0;PU;VS10;SP0;";

    private static boolean isRead(String plot, String what) {
        return Damage.isRead(plot.getBytes(StandardCharsets.ISO_8859_1), what, HostilePlotTest::drawing);
    }

    @Test
    void twoHundredDamagedPlotsEndInOneSentenceOrADrawing() {
        byte[] whole = EVERYTHING.getBytes(StandardCharsets.ISO_8859_1);
        assertThat(Damage.isRead(whole, "whole", HostilePlotTest::drawing)).isTrue();
        int read = 0;
        for (int seed = 0; seed < 200; seed++) {
            read += Damage.isRead(Damage.of(whole, seed), "seed " + seed, HostilePlotTest::drawing) ? 1 : 0;
        }
        assertThat(read).as("both happen").isBetween(20, 190);
    }

    @Test
    void endlessPlotsAreBounded() {
        assertThat(isRead("PD" + "1,1,2,2,".repeat(600_000), "a million strokes"))
                .isFalse();
        assertThat(isRead("CI9;".repeat(300_000), "circles")).isFalse();
        assertThat(isRead("LBx\u0003".repeat(300_000), "words")).isFalse();
        assertThat(isRead("LB" + "x".repeat(5_000_000), "a long word")).isFalse();
        assertThat(isRead("\u001b%" + "1".repeat(5_000_000), "a long command")).isTrue();
        assertThat(isRead("PA" + "1".repeat(5_000_000), "a long number")).isFalse();
    }
}
