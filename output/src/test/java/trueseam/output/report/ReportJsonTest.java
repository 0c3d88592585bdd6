package trueseam.output.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.proof.Proof;
import trueseam.fitting.work.Chapter;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.output.Fits;
import trueseam.output.chart.ChartLine;
import trueseam.output.chart.FittingChart;

class ReportJsonTest {

    private static final LengthFormat INCHES = LengthFormat.inches(8);

    private static JsonNode read(FittingChart chart) throws IOException {
        return new ObjectMapper().readTree(ReportJson.text(chart, Occasion.UNKNOWN));
    }

    @Test
    void everyProofIsInTheFileWithItsValueInFull() throws IOException {
        FittingChart chart = Fits.chart(Fits.fit(INCHES));
        JsonNode proofs = read(chart).get("proofs");
        assertThat(proofs).hasSameSizeAs(chart.fit().report().proofs());
        for (int i = 0; i < proofs.size(); i++) {
            Proof proof = chart.fit().report().proofs().get(i);
            assertThat(proofs.get(i).get("where").asText()).isEqualTo(proof.where());
            assertThat(proofs.get(i).get("value").asDouble()).isEqualTo(proof.value());
            assertThat(proofs.get(i).get("bound").asDouble()).isEqualTo(proof.bound());
            assertThat(proofs.get(i).get("holds").asBoolean()).isEqualTo(proof.holds());
        }
        assertThat(read(Fits.chart(Fits.failing(Fits.fit(INCHES)))).get("holds").asBoolean())
                .isFalse();
    }

    @Test
    void everyNeedIsInTheFileAndWhatIsUnknownIsNull() throws IOException {
        FittingChart chart = Fits.chart(Fits.fit(INCHES));
        JsonNode needs = read(chart).get("needs");
        assertThat(needs).hasSameSizeAs(chart.lines());
        int unknown = 0;
        for (int i = 0; i < needs.size(); i++) {
            ChartLine line = chart.lines().get(i);
            JsonNode need = needs.get(i);
            assertThat(need.get("measure").asText())
                    .isEqualTo(line.need().measure().term());
            assertThat(need.get("needMm").asDouble()).isEqualTo(line.need().needMm());
            assertThat(need.get("afterMm").asDouble()).isEqualTo(line.afterMm().orElseThrow());
            assertThat(need.get("tableMm").isNull())
                    .isEqualTo(line.need().tableMm().isEmpty());
            unknown += need.get("tableMm").isNull() ? 1 : 0;
        }
        assertThat(unknown).isPositive();
    }

    @Test
    void stepsAreInTheFileAsDataAndInWords() throws IOException {
        FitResult fit = Fits.fit(INCHES);
        JsonNode chapters = read(Fits.chart(fit)).get("chapters");
        assertThat(chapters).hasSameSizeAs(fit.worked().chapters());
        List<String> kinds = new ArrayList<>();
        for (int i = 0; i < chapters.size(); i++) {
            Chapter chapter = fit.worked().chapters().get(i);
            assertThat(chapters.get(i).get("steps")).hasSameSizeAs(chapter.steps());
            for (JsonNode step : chapters.get(i).get("steps")) {
                kinds.add(step.get("step").asText());
                assertThat(step.get("words").asText()).endsWith(".");
                assertThat(step.get("pose").get("turnDegrees").isNumber()).isTrue();
            }
        }
        assertThat(kinds).contains("mark", "pin", "pivot", "slide", "lay back", "trace", "transfer below", "join");
    }

    @Test
    void flatMeasuresCarryTheirWorking() throws IOException {
        FitResult fit = Fits.fit(INCHES);
        JsonNode flat = read(Fits.chart(fit)).get("flat");
        assertThat(flat).hasSameSizeAs(FlatPattern.all(fit.worked().original()));
        for (JsonNode measure : flat) {
            double sum = 0;
            for (JsonNode part : measure.get("after")) {
                sum += part.get("mm").asDouble() * part.get("times").asInt();
            }
            assertThat(sum).isEqualTo(measure.get("afterMm").asDouble());
        }
    }

    @Test
    void keysKeepTheirOrderAndTheSameFitGivesTheSameFile() throws IOException {
        String text = ReportJson.text(Fits.chart(Fits.fit(INCHES)), Occasion.UNKNOWN);
        assertThat(text).isEqualTo(ReportJson.text(Fits.chart(Fits.fit(INCHES)), Occasion.UNKNOWN));
        List<String> keys = new ArrayList<>();
        new ObjectMapper().readTree(text).fieldNames().forEachRemaining(keys::add);
        assertThat(keys)
                .containsExactly(
                        "format",
                        "version",
                        "made",
                        "worn",
                        "pattern",
                        "schematic",
                        "garment",
                        "body",
                        "size",
                        "sizeChoice",
                        "choices",
                        "alterations",
                        "needs",
                        "changes",
                        "amountsUsedMm",
                        "flat",
                        "sleeve",
                        "chapters",
                        "levels",
                        "holds",
                        "proofs",
                        "findings");
    }
}
