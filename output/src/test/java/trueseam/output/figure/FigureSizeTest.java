package trueseam.output.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trueseam.garment.body.Population;

class FigureSizeTest {
    @Test
    void sizesThatNameAColumnOfTheSurveyAreItsMedians() throws IOException {
        // data/bodies/ansur2-summary.csv: the medians of the ANSUR II survey (US Army, 2012).
        Map<String, Double> medians = new HashMap<>();
        Files.readAllLines(Path.of("..", "data", "bodies", "ansur2-summary.csv")).stream()
                .skip(1)
                .map(line -> line.split(","))
                .forEach(cells -> medians.put(cells[0] + cells[1], Double.valueOf(cells[8])));
        int found = 0;
        for (FigureSize size : FigureSize.values()) {
            if (!size.source().startsWith("drawn")) {
                found++;
                assertThat(size.median(Population.WOMEN))
                        .as(size.name())
                        .isEqualTo(medians.get("Female" + size.source()));
                assertThat(size.median(Population.MEN)).as(size.name()).isEqualTo(medians.get("Male" + size.source()));
            }
        }
        assertThat(found).as("sizes taken from the survey").isGreaterThanOrEqualTo(18);
    }

    @Test
    void theWaistLiesMidwayBetweenTheLowestRibAndTheHipBone() {
        // The standards' level, see shared landmarks; tenthribheight and iliocristaleheight of the survey, medians.
        assertThat(FigureSize.WAIST.median(Population.WOMEN)).isBetween((1054 + 993) / 2.0 - 1, (1054 + 993) / 2.0 + 1);
        assertThat(FigureSize.WAIST.median(Population.MEN)).isEqualTo((1119 + 1061) / 2.0);
    }
}
