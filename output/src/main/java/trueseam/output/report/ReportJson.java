package trueseam.output.report;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.output.chart.FittingChart;

/**
 * report.json: every figure of a fit. Lengths in mm in full precision; a figure that is not known is {@code null}; keys keep the
 * order of the file's description.
 */
public final class ReportJson {

    private static final ObjectWriter JSON = mapper().writerWithDefaultPrettyPrinter();

    private ReportJson() {}

    /**
     * Writes the report.
     *
     * @param chart the fitting chart with its fit
     * @param occasion when the fit was made and whether it was worn
     * @return the file's text, ended by a line feed
     */
    public static String text(FittingChart chart, Occasion occasion) {
        try {
            return JSON.writeValueAsString(Reporting.of(chart, occasion)) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException("The report cannot be written as JSON.", e);
        }
    }

    private static ObjectMapper mapper() {
        SimpleModule absent = new SimpleModule();
        absent.addSerializer(new MaybeNumber());
        absent.addSerializer(new Maybe());
        return JsonMapper.builder().addModule(absent).build();
    }

    /** A number that may be unknown. */
    private static final class MaybeNumber extends StdSerializer<OptionalDouble> {
        MaybeNumber() {
            super(OptionalDouble.class);
        }

        @Override
        public void serialize(OptionalDouble value, JsonGenerator json, SerializerProvider all) throws IOException {
            if (value.isPresent()) {
                json.writeNumber(value.getAsDouble());
            } else {
                json.writeNull();
            }
        }
    }

    /** An object that may be missing. */
    private static final class Maybe extends StdSerializer<Optional<?>> {
        Maybe() {
            super(Optional.class, false);
        }

        @Override
        public void serialize(Optional<?> value, JsonGenerator json, SerializerProvider all) throws IOException {
            if (value.isPresent()) {
                all.defaultSerializeValue(value.get(), json);
            } else {
                json.writeNull();
            }
        }
    }
}
