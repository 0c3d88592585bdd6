package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trueseam.garment.length.LengthUnit;
import trueseam.geometry.Bounds;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.dxf.DrawingUnit.Basis;

/** Finds how long one unit of a file is: what the user says, else a text, else the header; what was taken unsure is told. */
final class UnitSearch {

    /** The greatest line of a pattern is about so long; a bodice or trouser piece is 200 to 1300 mm (common practice). */
    private static final double SHORT_MM = 100;

    private static final double LONG_MM = 3000;

    private final Sections sections;
    private final Notes notes;

    UnitSearch(Sections sections, Notes notes) {
        this.sections = sections;
        this.notes = notes;
    }

    DrawingUnit find(Optional<LengthUnit> asked) {
        if (asked.isPresent()) {
            LengthUnit unit = asked.get();
            return new DrawingUnit(unit.mm(), word(unit), Basis.ASKED);
        }
        Optional<DrawingUnit> written = written();
        Optional<DrawingUnit> header = number("$INSUNITS").flatMap(UnitSearch::ofNumber);
        if (written.isPresent()) {
            if (header.isPresent() && header.get().mm() != written.get().mm()) {
                notes.warn("a text says " + written.get().name() + " and the header "
                        + header.get().name() + "; the text was taken. Check the length of a piece, or say the unit.");
            }
            return written.get();
        }
        if (header.isPresent()) {
            return header.get();
        }
        Optional<Integer> measurement = number("$MEASUREMENT").filter(n -> n == 0 || n == 1);
        if (measurement.isPresent()) {
            DrawingUnit taken = measurement.get() == 1
                    ? new DrawingUnit(1, "millimetres", Basis.METRIC_OR_ENGLISH)
                    : new DrawingUnit(25.4, "inches", Basis.METRIC_OR_ENGLISH);
            notes.warn("the file says " + (measurement.get() == 1 ? "metric" : "English") + " and not which unit; "
                    + taken.name() + " were taken. Check the length of a piece, or say the unit.");
            return taken;
        }
        notes.warn(
                "the file does not say its unit; millimetres were taken. Check the length of a piece, or say the unit.");
        return new DrawingUnit(1, "millimetres", Basis.ASSUMED);
    }

    private Optional<Integer> number(String variable) {
        Group group = sections.header.get(variable);
        if (group == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(RawEntity.whole(group));
        } catch (EntityException noNumber) {
            notes.warn(variable + " in the header is no number: " + noNumber.getMessage() + ".");
            return Optional.empty();
        }
    }

    /** Source: DXF reference, HEADER, $INSUNITS; units of streets and stars are no units of a pattern. */
    private static Optional<DrawingUnit> ofNumber(int insUnits) {
        return switch (insUnits) {
            case 1 -> Optional.of(new DrawingUnit(25.4, "inches", Basis.HEADER));
            case 2 -> Optional.of(new DrawingUnit(304.8, "feet", Basis.HEADER));
            case 4 -> Optional.of(new DrawingUnit(1, "millimetres", Basis.HEADER));
            case 5 -> Optional.of(new DrawingUnit(10, "centimetres", Basis.HEADER));
            case 6 -> Optional.of(new DrawingUnit(1000, "metres", Basis.HEADER));
            case 9 -> Optional.of(new DrawingUnit(0.0254, "thousandths of an inch", Basis.HEADER));
            case 10 -> Optional.of(new DrawingUnit(914.4, "yards", Basis.HEADER));
            case 13 -> Optional.of(new DrawingUnit(0.001, "micrometres", Basis.HEADER));
            case 14 -> Optional.of(new DrawingUnit(100, "decimetres", Basis.HEADER));
            default -> Optional.empty();
        };
    }

    private Optional<DrawingUnit> written() {
        List<RawEntity> all = new ArrayList<>(sections.entities);
        sections.blocks.forEach(block -> all.addAll(block.entities()));
        for (RawEntity e : all) {
            if (e.type().equals("TEXT") || e.type().equals("MTEXT")) {
                Optional<Attribute> units =
                        Attribute.of(Wording.plain(e.text(1, ""))).filter(a -> a.isNamed("units"));
                if (units.isPresent()) {
                    return ofWord(units.get().value());
                }
            }
        }
        return Optional.empty();
    }

    static Optional<DrawingUnit> ofWord(String word) {
        return switch (word.strip().toUpperCase(Locale.ROOT)) {
            case "METRIC", "MM", "MILLIMETERS", "MILLIMETRES" ->
                Optional.of(new DrawingUnit(1, "millimetres", Basis.WRITTEN));
            case "ENGLISH", "IMPERIAL", "IN", "INCH", "INCHES" ->
                Optional.of(new DrawingUnit(25.4, "inches", Basis.WRITTEN));
            case "CM", "CENTIMETERS", "CENTIMETRES" -> Optional.of(new DrawingUnit(10, "centimetres", Basis.WRITTEN));
            default -> Optional.empty();
        };
    }

    private static String word(LengthUnit unit) {
        return switch (unit) {
            case INCH -> "inches";
            case CENTIMETRE -> "centimetres";
            case MILLIMETRE -> "millimetres";
        };
    }

    /** Says so if the greatest line makes sense in another unit only. */
    void doubt(DrawingUnit taken, List<Stroke> strokes) {
        double greatest = 0;
        for (Stroke stroke : strokes) {
            Bounds box = stroke.path().bounds();
            greatest = Math.max(greatest, Math.max(box.width(), box.height()));
        }
        if (taken.basis() == Basis.ASKED || greatest == 0 || makesSense(greatest)) {
            return;
        }
        for (LengthUnit other : LengthUnit.values()) {
            double then = greatest / taken.mm() * other.mm();
            if (makesSense(then)) {
                notes.warn(String.format(
                        Locale.ROOT,
                        "in %s the greatest line is %.1f mm, in %s it would be %.0f mm, as pattern pieces are; say the unit if that "
                                + "is meant.",
                        taken.name(),
                        greatest,
                        word(other),
                        then));
                return;
            }
        }
    }

    private static boolean makesSense(double mm) {
        return SHORT_MM <= mm && mm <= LONG_MM;
    }
}
