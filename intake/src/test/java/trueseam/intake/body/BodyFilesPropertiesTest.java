package trueseam.intake.body;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.garment.body.Body;
import trueseam.garment.body.Origin;
import trueseam.garment.body.Plausibility;
import trueseam.garment.body.Population;
import trueseam.garment.body.Reading;
import trueseam.garment.body.Side;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.intake.sheet.SheetException;

/** Whatever a body holds, writing and reading it gives it back to the last bit; the seed is the test's argument. */
class BodyFilesPropertiesTest {
    private static final EntryRules NO_LIMITS =
            new EntryRules(LengthUnit.CENTIMETRE, new Plausibility(List.of()), Population.ALL);
    private static final String[] NOTES = {
        "", "over a jumper", "comma, semicolon; and \"quotes\"", " blanks ", "two\nlines", "# not a remark", "½ ″ é"
    };

    static Stream<Long> seeds() {
        return LongStream.rangeClosed(1, 300).boxed();
    }

    private static <T> T any(List<T> choices, Random random) {
        return choices.get(random.nextInt(choices.size()));
    }

    private static Body body(Random random) {
        List<Reading> readings = new ArrayList<>();
        int count = random.nextInt(20);
        for (int i = 0; i < count; i++) {
            Measure measure = any(List.of(Measure.values()), random);
            double mm =
                    switch (random.nextInt(3)) {
                        case 0 -> 100 + random.nextDouble() * 1000;
                        case 1 -> (100 + random.nextInt(900)) * 25.4 / 16;
                        default -> 100 + random.nextInt(1000);
                    };
            readings.add(new Reading(
                    measure,
                    measure.sidesMayDiffer() ? any(List.of(Side.values()), random) : Side.BOTH,
                    mm,
                    random.nextBoolean()
                            ? Optional.empty()
                            : Optional.of(LocalDate.of(2026, 1, 1).plusDays(random.nextInt(700))),
                    any(List.of(Origin.values()), random),
                    NOTES[random.nextInt(NOTES.length)]));
        }
        return new Body(random.nextBoolean() ? "Ann" : "Mrs \"B\", the tall: one", readings);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void csvIsLossless(long seed) {
        Random random = new Random(seed);
        Body body = body(random);
        for (LengthUnit unit : LengthUnit.values()) {
            BodyFile read = BodyCsv.read("ann.csv", BodyCsv.write(body, unit), NO_LIMITS);
            assertThat(read.findings()).isEmpty();
            assertThat(read.body()).isEqualTo(body);
        }
    }

    /** A body file with letters changed, taken out and doubled: read with findings, or refused as a whole, never worse. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aSpoiltFileIsReadWithFindingsOrRefusedInWords(long seed) {
        Random random = new Random(seed);
        Body body = body(random);
        String csv = spoil(BodyCsv.write(body, LengthUnit.INCH), random);
        String json = spoil(BodyJson.write(body, LengthUnit.INCH), random);
        try {
            assertThat(BodyCsv.read("ann.csv", csv, EntryRules.usual()).body().label())
                    .isNotBlank();
        } catch (SheetException e) {
            assertThat(e.what()).isNotBlank();
        }
        try {
            assertThat(BodyJson.read("ann.json", json, EntryRules.usual())
                            .body()
                            .label())
                    .isNotBlank();
        } catch (SheetException e) {
            assertThat(e.what()).isNotBlank();
        }
    }

    private static String spoil(String text, Random random) {
        StringBuilder spoilt = new StringBuilder(text);
        int slips = 1 + random.nextInt(6);
        for (int i = 0; i < slips && spoilt.length() > 1; i++) {
            int at = random.nextInt(spoilt.length());
            switch (random.nextInt(3)) {
                case 0 -> spoilt.deleteCharAt(at);
                case 1 -> spoilt.insert(at, spoilt.charAt(at));
                default -> spoilt.setCharAt(at, (char) (random.nextInt(96) + 31));
            }
        }
        return spoilt.toString();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void jsonIsLossless(long seed) {
        Random random = new Random(seed);
        Body body = body(random);
        for (LengthUnit unit : LengthUnit.values()) {
            BodyFile read = BodyJson.read("ann.json", BodyJson.write(body, unit), NO_LIMITS);
            assertThat(read.findings()).isEmpty();
            assertThat(read.body()).isEqualTo(body);
        }
    }
}
