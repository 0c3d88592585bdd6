package trueseam.intake.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import trueseam.intake.drawing.Damage;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;

/** Files damaged on the way or made to do harm end in one sentence or a drawing, soon. */
@Timeout(120)
class HostileDxfTest {

    private static Drawing drawing(byte[] bytes) {
        return Dxf.read("x.dxf", bytes, Optional.empty()).drawing();
    }

    /** A little of everything. */
    private static String everything() {
        Written w = new Written()
                .section("HEADER")
                .group(9, "$INSUNITS")
                .group(70, 4)
                .group(9, "$LTSCALE")
                .group(40, 1.5)
                .end()
                .section("TABLES")
                .group(0, "TABLE")
                .group(2, "LTYPE")
                .group(0, "LTYPE")
                .group(2, "DASHED")
                .group(49, 6)
                .group(49, -3)
                .group(0, "LAYER")
                .group(2, "8")
                .group(62, 5)
                .group(6, "DASHED")
                .group(0, "ENDTAB")
                .end()
                .section("BLOCKS");
        w.block("FRONT_M").polyline(1, true, 0, 0, 300, 0, 290, 200, 300, 400, 0, 400);
        for (double[] p : new double[][] {{0, 0}, {300, 0}, {300, 400}, {0, 400}}) {
            w.point(2, p[0], p[1]);
        }
        w.point(3, 290, 200).point(4, 150, 0).line(7, 50, 50, 50, 300).line(6, 0, 0, 0, 400);
        w.words(1, 10, 10, "Piece Name: Front")
                .words(1, 10, 20, "Quantity: 1,1")
                .words(15, 10, 10, "# 3");
        w.polyline(14, true, 10, 10, 290, 10, 290, 390, 10, 390).endBlock();
        w.block("PAIR")
                .insert("FRONT_M", 10, 10)
                .group(50, 30)
                .group(41, -1)
                .group(42, 1)
                .endBlock()
                .end();
        w.section("ENTITIES")
                .insert("PAIR", 0, 0)
                .insert("FRONT_M", 500, 0)
                .group(70, 2)
                .group(44, 400);
        w.group(0, "ARC")
                .group(8, 8)
                .group(10, 5)
                .group(20, 5)
                .group(40, 70)
                .group(50, 350)
                .group(51, 80);
        w.group(0, "CIRCLE").group(8, 8).group(10, 5).group(20, 5).group(40, 70);
        w.group(0, "ELLIPSE")
                .group(8, 8)
                .group(10, 5)
                .group(20, 5)
                .group(11, 60)
                .group(21, 9)
                .group(40, 0.4);
        w.group(41, 0.5).group(42, 3);
        for (int degree : new int[] {3, 4}) {
            w.group(0, "SPLINE").group(8, 8).group(71, degree);
            for (int i = 0; i < degree + 7; i++) {
                w.group(40, Math.max(0, Math.min(i - degree, 6 - degree + 1)));
            }
            for (int i = 0; i < 6; i++) {
                w.group(10, 50 * i).group(20, 40 * (i % 3));
            }
        }
        w.group(0, "LWPOLYLINE").group(8, 8).group(90, 3).group(70, 1);
        for (int i = 0; i < 3; i++) {
            w.group(10, 90 * i).group(20, 40 * (i % 2)).group(42, 0.4 * i);
        }
        w.group(0, "MTEXT").group(8, 8).group(10, 3).group(20, 3).group(40, 5).group(1, "one\\P{\\fx;two}");
        return w.end().toString();
    }

    @Test
    void aLittleOfEverythingIsReadWhole() {
        DxfReading read = Written.read(everything());
        assertThat(read.drawing().strokes()).hasSize(3 * 6 + 6);
        assertThat(read.apparel().pieces()).hasSize(1);
    }

    @Test
    void twoHundredDamagedFilesEndInOneSentenceOrADrawing() {
        byte[] whole = everything().getBytes(StandardCharsets.ISO_8859_1);
        int read = 0;
        for (int seed = 0; seed < 200; seed++) {
            read += Damage.isRead(Damage.of(whole, seed), "seed " + seed, HostileDxfTest::drawing) ? 1 : 0;
        }
        assertThat(read).as("both happen").isBetween(20, 190);
    }

    @Test
    void blocksInBlocksThatMultiplyAreRefused() {
        Written w =
                new Written().section("BLOCKS").block("B0").line(1, 0, 0, 9, 9).endBlock();
        for (int i = 1; i < 14; i++) {
            w.block("B" + i);
            for (int k = 0; k < 10; k++) {
                w.insert("B" + (i - 1), k, k);
            }
            w.endBlock();
        }
        Written bomb = w.end().section("ENTITIES").insert("B13", 0, 0).end();
        assertThatThrownBy(bomb::read).isInstanceOf(DrawingException.class).hasMessageContaining("that is no pattern");
    }

    @Test
    void emptyBlocksThatMultiplyAreRefusedToo() {
        Written w = new Written().section("BLOCKS").block("B0").endBlock();
        for (int i = 1; i < 14; i++) {
            w.block("B" + i)
                    .insert("B" + (i - 1), 0, 0)
                    .group(70, 30)
                    .group(71, 30)
                    .endBlock();
        }
        Written bomb = w.end().section("ENTITIES").insert("B13", 0, 0).end();
        assertThatThrownBy(bomb::read).isInstanceOf(DrawingException.class).hasMessageContaining("blocks are placed");
    }

    @Test
    void blocksNestedTooDeepAreRefused() {
        Written w =
                new Written().section("BLOCKS").block("B0").line(1, 0, 0, 9, 9).endBlock();
        for (int i = 1; i < 2000; i++) {
            w.block("B" + i).insert("B" + (i - 1), 0, 0).endBlock();
        }
        Written deep = w.end().section("ENTITIES").insert("B1999", 0, 0).end();
        assertThatThrownBy(deep::read).isInstanceOf(DrawingException.class).hasMessageContaining("more than 16 deep");
    }

    @Test
    void hugeCountsAndLongLinesAreBounded() {
        StringBuilder points = new StringBuilder("0\nSECTION\n2\nBLOCKS\n0\nBLOCK\n2\nA\n");
        for (int i = 0; i < 60_000; i++) {
            points.append("0\nLINE\n8\n1\n10\n")
                    .append(i)
                    .append("\n20\n0\n11\n")
                    .append(i)
                    .append("\n21\n5\n");
        }
        points.append("0\nENDBLK\n0\nENDSEC\n0\nEOF\n");
        assertThat(Damage.isRead(
                        points.toString().getBytes(StandardCharsets.ISO_8859_1), "many lines", HostileDxfTest::drawing))
                .isTrue();
        String longLine = "0\nSECTION\n2\nENTITIES\n0\nTEXT\n10\n0\n20\n0\n1\n" + "%%".repeat(2_000_000) + "\n0\nEOF\n";
        assertThat(Damage.isRead(
                        longLine.getBytes(StandardCharsets.ISO_8859_1), "a long line", HostileDxfTest::drawing))
                .isTrue();
        assertThat(Damage.isRead(new byte[20_000_001], "too large", HostileDxfTest::drawing))
                .isFalse();
    }

    @Test
    void manyNotchesOnALongBoundaryAreBounded() {
        Written w = new Written()
                .section("BLOCKS")
                .block("A")
                .group(0, "POLYLINE")
                .group(8, 1)
                .group(70, 1);
        for (int i = 0; i < 10_000; i++) {
            double angle = 2 * Math.PI * i / 10_000;
            w.group(0, "VERTEX").group(10, 400 * Math.cos(angle)).group(20, 400 * Math.sin(angle));
        }
        w.group(0, "SEQEND");
        for (int i = 0; i < 1000; i++) {
            w.point(4, i % 500, i % 400).point(2, i, i);
        }
        DxfReading read = w.endBlock().end().read();
        assertThat(read.apparel().pieces()).hasSize(1);
    }
}
