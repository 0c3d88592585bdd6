package trueseam.output.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.output.drawing.Shapes;

class LayoutPartsTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void boxesOnShelvesKeepToTheirSheetAndApart(long seed) {
        Random random = new Random(seed);
        List<Shelves.Box> boxes = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            boxes.add(new Shelves.Box("box " + i, 1 + 99 * random.nextDouble(), 1 + 199 * random.nextDouble()));
        }
        List<Shelves.Spot> spots = Shelves.pack(boxes, 250, 400);
        assertThat(spots).hasSize(boxes.size());
        for (Shelves.Spot a : spots) {
            assertThat(a.right() + a.box().width()).isLessThanOrEqualTo(250);
            assertThat(a.down() + a.box().height()).isLessThanOrEqualTo(400);
            for (Shelves.Spot b : spots) {
                boolean apart = a.equals(b)
                        || a.sheet() != b.sheet()
                        || a.right() + a.box().width() <= b.right() + 1e-9
                        || b.right() + b.box().width() <= a.right() + 1e-9
                        || a.down() + a.box().height() <= b.down() + 1e-9
                        || b.down() + b.box().height() <= a.down() + 1e-9;
                assertThat(apart).as(seed + ": " + a + " and " + b).isTrue();
            }
        }
    }

    @Test
    void boxesThatFillASheetAreCountedExactly() {
        // Eight quarters fill two sheets: worked by hand.
        List<Shelves.Box> quarters = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            quarters.add(new Shelves.Box("q" + i, 50, 50));
        }
        assertThat(Shelves.pack(quarters, 100, 100).stream()
                        .mapToInt(Shelves.Spot::sheet)
                        .max())
                .hasValue(1);
    }

    @Test
    void whatLiesApartIsFoundAndWhatFallsTogetherIsNot() {
        Path straight = Path.through(new Point(0, 0), new Point(100, 0));
        Path bent =
                Path.through(new Point(0, 0), new Point(40, 0), new Point(50, 10), new Point(60, 0), new Point(100, 0));
        List<Path> apart = Apart.parts(straight, bent);
        assertThat(apart).hasSize(1);
        // From 40 to 60, seen every 2 mm.
        assertThat(apart.get(0).start().x()).isCloseTo(40, within(2.5));
        assertThat(apart.get(0).end().x()).isCloseTo(60, within(2.5));
        assertThat(Apart.parts(straight, straight.reversed())).isEmpty();
        assertThat(Apart.parts(bent, bent)).isEmpty();
    }

    @Test
    void aFootprintKnowsWhatItMeetsAndWhatItHolds() {
        Footprint ring = new Footprint(List.of(Shapes.circle(new Point(0, 0), 100)));
        assertThat(ring.meets(new Bounds(-10, -10, 10, 10))).isTrue();
        assertThat(ring.holds(new Bounds(-10, -10, 10, 10))).isTrue();
        assertThat(ring.holds(new Bounds(-80, -80, 80, 80))).isFalse();
        assertThat(ring.meets(new Bounds(-500, -500, 500, 500))).isTrue();
        assertThat(ring.meets(new Bounds(72, 72, 200, 200))).isFalse(); // 72 root 2 = 101.8
        assertThat(ring.meets(new Bounds(70, 70, 200, 200))).isTrue(); // 70 root 2 = 99.0
    }

    @Test
    void wordsFindRoomOffTheMarks() {
        FreeRoom room = new FreeRoom(new Footprint(List.of(Shapes.rectangle(new Bounds(0, 0, 100, 100)))));
        room.keep(Path.through(new Point(50, 0), new Point(50, 100)));
        Bounds first = room.take(30, 10, new Point(50, 50)).orElseThrow();
        assertThat(first.maxX() < 50 || first.minX() > 50).isTrue();
        Bounds second = room.take(30, 10, new Point(50, 50)).orElseThrow();
        assertThat(first.meets(second, 0)).isFalse();
        assertThat(room.take(120, 10, new Point(50, 50))).isEmpty();
    }
}
