package trueseam.worktable.work;

import java.util.Map;
import java.util.Optional;
import trueseam.fitting.sizing.SizeChoice;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.size.SizeRow;
import trueseam.garment.size.SizeTable;

/**
 * The pattern as it is taken up: which pieces, in which size.
 *
 * @param pattern the pattern, or schematic pieces for a paper pattern
 * @param kind what garment it makes
 * @param table the size table, if known
 * @param row the size that it is taken in, if known
 * @param choice which size the frame calls for, if that can be said
 * @param typedMm the flat measures of a paper pattern, mm
 * @param notes what came up while reading it
 */
public record Taken(
        Pattern pattern,
        GarmentKind kind,
        Optional<SizeTable> table,
        Optional<SizeRow> row,
        Optional<SizeChoice> choice,
        Optional<Map<Measure, Double>> typedMm,
        java.util.List<String> notes) {

    /** Does not change. */
    public Taken {
        typedMm = typedMm.map(Map::copyOf);
        notes = java.util.List.copyOf(notes);
    }
}
