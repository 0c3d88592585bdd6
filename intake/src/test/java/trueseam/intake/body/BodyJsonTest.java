package trueseam.intake.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.body.Side;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.intake.sheet.SheetException;

class BodyJsonTest {
    private static final EntryRules RULES = EntryRules.usual();

    @Test
    void readsReadings() {
        BodyFile file = BodyJson.read("ann.json", """
                {"label": "Ann", "readings": [
                  {"measure": "bust girth", "value": "38 1/2 in"},
                  {"measure": "hip", "value": 40},
                  {"measure": "shoulder length", "value": "5 in", "side": "left", "date": "2026-03-09"}]}
                """, RULES);
        assertThat(file.findings()).isEmpty();
        assertThat(file.body().label()).isEqualTo("Ann");
        assertThat(file.body().readings())
                .containsExactly(
                        Reading.taped(Measure.BUST_GIRTH, 977.9),
                        Reading.taped(Measure.HIP_GIRTH, 1016),
                        Reading.taped(Measure.SHOULDER_LENGTH, Side.LEFT, 127).on(LocalDate.of(2026, 3, 9)));
    }

    @Test
    void badReadingsAreNamedAndTheRestIsKept() {
        BodyFile file = BodyJson.read("ann.json", """
                {"readings": [{"measure": "bust girth"}, 7, {"measure": "hip", "value": "104 cm"}]}
                """, RULES);
        assertThat(file.body().label()).isEqualTo("ann.json");
        assertThat(file.body().readings()).containsExactly(Reading.taped(Measure.HIP_GIRTH, 1040));
        assertThat(file.findings())
                .extracting(Finding::place)
                .containsExactly("ann.json, reading 1", "ann.json, reading 2");
    }

    @Test
    void whatIsNoBodyIsRefusedWithItsLine() {
        assertThatThrownBy(() -> BodyJson.read("ann.json", "{\"label\": \"Ann\",\n oops}", RULES))
                .isInstanceOfSatisfying(
                        SheetException.class, e -> assertThat(e.line()).isEqualTo(2));
        for (String text : new String[] {"", "[]", "{}", "3", "{\"readings\": 3}"}) {
            assertThatThrownBy(() -> BodyJson.read("ann.json", text, RULES))
                    .as(text)
                    .isInstanceOf(SheetException.class)
                    .hasMessageContaining("\"readings\" is missing");
        }
    }

    @Test
    void aLabelIsOneLineOfText() {
        for (String label : new String[] {"\"\"", "{}", "null", "\"  \""}) {
            assertThat(BodyJson.read("ann.json", "{\"label\":" + label + ",\"readings\":[]}", RULES)
                            .body()
                            .label())
                    .as(label)
                    .isEqualTo("ann.json");
        }
        assertThat(BodyJson.read("x", "{\"label\":\"Ann\\nB\",\"readings\":[]}", RULES)
                        .body()
                        .label())
                .isEqualTo("Ann B");
    }

    @Test
    void writesOneObjectAReading() {
        assertThat(BodyJson.write(
                        Body.named("Ann").with(Reading.taped(Measure.BUST_GIRTH, 952)), LengthUnit.CENTIMETRE))
                .isEqualToIgnoringWhitespace(
                        "{\"label\":\"Ann\",\"readings\":[{\"measure\":\"bust girth\",\"value\":\"95.2 cm\"}]}");
    }
}
