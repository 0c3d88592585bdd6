package trueseam.checks.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.cloth.packing.Patience;
import trueseam.cloth.packing.Placed;
import trueseam.cloth.packing.Strip;
import trueseam.cloth.packing.StripLayout;
import trueseam.cloth.packing.StripSearch;
import trueseam.cloth.proof.StripProof;

/**
 * The search and its proof on the published instances of laying garment pieces, and on the densest layouts known (data/layout: ESICUP data
 * sets; Gardeyn, Vanden Berghe, Wauters, "An open-source heuristic to reboot 2D nesting research", 2025).
 */
class PublishedStripsTest {

    /** The published layouts are in single precision: a thousandth of a unit of the smallest, in proportion of the largest. */
    private static double tolerance(Strip strip) {
        return Math.max(1e-3, strip.width() * 4e-7);
    }

    @Test
    void theDensestLayoutsKnownAreValidAndAsDenseAsTheySay() throws IOException {
        List<String> rows = Files.readAllLines(PublishedStrips.DATA.resolve("instances.csv"));
        SoftAssertions all = new SoftAssertions();
        int looked = 0;
        for (String row : rows.subList(1, rows.size())) {
            String[] cells = row.split(",", -1);
            Strip strip = PublishedStrips.read(cells[0]);
            double length = Double.parseDouble(cells[10]);
            StripLayout layout = PublishedStrips.densestKnown(cells[0], length);
            all.assertThat(StripProof.faults(strip, layout, tolerance(strip)))
                    .as(cells[0])
                    .isEmpty();
            all.assertThat(100 * PublishedStrips.density(strip, length))
                    .as(cells[0])
                    .isCloseTo(Double.parseDouble(cells[9]), org.assertj.core.data.Offset.offset(0.05));
            looked++;
        }
        all.assertAll();
        assertThat(looked).isEqualTo(16);
    }

    @Test
    void aPieceMovedOntoAnotherIsFound() throws IOException {
        Strip strip = PublishedStrips.read("shirts");
        StripLayout known = PublishedStrips.densestKnown("shirts", 59.392952);
        for (int i = 0; i < known.placed().size(); i += 7) {
            List<Placed> moved = new ArrayList<>(known.placed());
            Placed p = moved.get(i);
            moved.set(i, new Placed(p.part(), p.way(), p.x() + (p.x() > 30 ? -0.7 : 0.7), p.y()));
            assertThat(StripProof.faults(strip, new StripLayout(known.length(), moved), 1e-3))
                    .as("copy %d moved", i)
                    .isNotEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "shirts",
                "trousers",
                "swim",
                "albano",
                "dagli",
                "mao",
                "marques",
                "gardeyn0",
                "gardeyn1",
                "gardeyn2",
                "gardeyn3",
                "fu",
                "jakobs1",
                "jakobs2",
                "shapes0",
                "shapes1"
            })
    void everyLayoutOnTheWayIsValid(String name) throws IOException {
        Strip strip = PublishedStrips.read(name);
        List<StripLayout> found = new ArrayList<>();
        StripSearch.run(strip, 5, 2, Patience.rounds(3), p -> found.add(p.layout()));
        assertThat(found).hasSizeGreaterThan(1);
        for (int i = 0; i < found.size(); i++) {
            assertThat(StripProof.faults(strip, found.get(i), 1e-5 * strip.width()))
                    .as("%s, layout %d", name, i)
                    .isEmpty();
            if (i > 0) {
                assertThat(found.get(i).length()).isLessThan(found.get(i - 1).length());
            }
        }
        assertThat(PublishedStrips.density(strip, found.get(found.size() - 1).length()))
                .isBetween(0.4, 1.0);
    }

    @Test
    void theSameSeedAndRoundsGiveTheSameLayout() throws IOException {
        Strip strip = PublishedStrips.read("albano");
        StripLayout one = StripSearch.run(strip, 9, 2, Patience.rounds(7), p -> {});
        StripLayout two = StripSearch.run(strip, 9, 2, Patience.rounds(7), p -> {});
        StripLayout other = StripSearch.run(strip, 10, 2, Patience.rounds(7), p -> {});
        assertThat(two).isEqualTo(one);
        assertThat(other).isNotEqualTo(one);
    }
}
