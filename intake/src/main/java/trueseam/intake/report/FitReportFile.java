package trueseam.intake.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.body.Side;
import trueseam.garment.earlier.EarlierFit;
import trueseam.garment.earlier.MeasureThen;
import trueseam.garment.earlier.MeasureThen.Settled;
import trueseam.garment.earlier.NamedThen;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.measure.UnknownMeasureException;
import trueseam.intake.sheet.SheetException;

/** The report of a fit, read back as a fact about the person. */
public final class FitReportFile {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String FORMAT = "trueseam fit report";
    private static final int VERSION = 1;

    private final String file;
    private final JsonNode root;
    private final Map<String, String> decided = new HashMap<>();

    private FitReportFile(String file, JsonNode root) {
        this.file = file;
        this.root = root;
    }

    /**
     * Reads a report.
     *
     * @param file what the user calls the file
     * @param text its content
     * @return the earlier fit
     * @throws SheetException when it is not such a report, or a figure of it is missing
     */
    public static EarlierFit read(String file, String text) {
        try {
            JsonNode root = MAPPER.readTree(text);
            if (!FORMAT.equals(root.path("format").asText())
                    || root.path("version").asInt() != VERSION) {
                throw new SheetException(
                        file, 0, "This is not a report.json of a fit; give the one that fit wrote beside altered.svg.");
            }
            return new FitReportFile(file, root).fit();
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            throw new SheetException(file, line, "This is not JSON: " + e.getOriginalMessage() + ".");
        }
    }

    private EarlierFit fit() {
        JsonNode pattern = root.path("pattern");
        for (JsonNode overrule : root.path("choices").path("overrules")) {
            String how = text(overrule, "decision");
            // Standing words without an amount: the rule decided, and the earlier patterns only agreed.
            boolean words = how.equals("standing") && !overrule.path("mm").isNumber();
            if (!words) {
                decided.put(text(overrule, "measure"), how);
            }
        }
        List<MeasureThen> measures = new ArrayList<>();
        for (JsonNode need : root.path("needs")) {
            measure(need).ifPresent(measures::add);
        }
        List<NamedThen> named = new ArrayList<>();
        for (JsonNode alteration : root.path("alterations")) {
            if (alteration.path("mm").isNumber()) {
                named.add(new NamedThen(
                        text(alteration, "name"),
                        alteration.path("way").asText(""),
                        alteration.path("mm").asDouble(),
                        constant(Side.class, alteration, "side"),
                        alteration.path("standing").asBoolean(false)));
            }
        }
        return new EarlierFit(
                text(root.path("body"), "label"),
                made(),
                root.path("worn").asBoolean(false),
                constant(GarmentKind.class, root, "garment"),
                text(pattern, "name"),
                pattern.path("size").asText(""),
                pattern.path("sizeTable").asText(""),
                measures,
                named);
    }

    private Optional<MeasureThen> measure(JsonNode need) {
        boolean byTable = text(need, "method").equals("table");
        double drawnFor = byTable ? number(need, "tableMm") : number(need, "flatMm") - number(need, "easeMm");
        // What the finished flat pattern measures tells all: the plan, what was asked by name, and what moved along.
        boolean measured =
                need.path("afterMm").isNumber() && need.path("flatMm").isNumber();
        double changed = measured ? number(need, "afterMm") - number(need, "flatMm") : number(need, "amountMm");
        try {
            return Optional.of(new MeasureThen(
                    Measure.named(text(need, "measure")),
                    number(need, "bodyMm"),
                    drawnFor,
                    changed,
                    settled(need),
                    need.path("leaveMm").asDouble(0)));
        } catch (UnknownMeasureException e) {
            throw new SheetException(file, 0, e.getMessage());
        }
    }

    private Settled settled(JsonNode need) {
        String decision = text(need, "decision");
        if (decision.equals("try on")) {
            return Settled.OPEN;
        }
        String own = decided.get(text(need, "measure"));
        if (own != null) {
            return own.equals("standing") ? Settled.STANDING : Settled.DECIDED;
        }
        if (need.path("overruled").asBoolean()) {
            return Settled.OPEN; // another measure decided for it
        }
        return decision.equals("alter") ? Settled.ALTERED : Settled.LEFT;
    }

    private Optional<LocalDate> made() {
        String written = root.path("made").asText("");
        if (written.isEmpty() || root.path("made").isNull()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(written));
        } catch (DateTimeException e) {
            throw new SheetException(file, 0, "\"" + written + "\" is not a date such as 2026-03-09.");
        }
    }

    private String text(JsonNode node, String key) {
        JsonNode value = node.path(key);
        if (!value.isTextual()) {
            throw missing(key);
        }
        return value.asText();
    }

    private double number(JsonNode node, String key) {
        JsonNode value = node.path(key);
        if (!value.isNumber()) {
            throw missing(key);
        }
        return value.asDouble();
    }

    private SheetException missing(String key) {
        return new SheetException(file, 0, "The report has no \"" + key + "\" where one was expected; fit once more.");
    }

    private <E extends Enum<E>> E constant(Class<E> type, JsonNode node, String key) {
        String written = text(node, key);
        for (E constant : type.getEnumConstants()) {
            if (constant.name().toLowerCase(Locale.ROOT).equals(written)) {
                return constant;
            }
        }
        throw new SheetException(file, 0, "\"" + written + "\" is not a " + key + " that is known here.");
    }
}
