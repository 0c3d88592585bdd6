package trueseam.garment.measure;

import java.util.HashMap;
import java.util.Map;
import trueseam.garment.table.ResourceTable;

/** One line of {@code measures.csv}: what is said of a measure. */
record Definition(
        String term,
        String label,
        MeasureKind kind,
        ErrorGroup errorGroup,
        boolean sidesMayDiffer,
        boolean chosen,
        String tapePath,
        String confirmedBy) {
    private static final Map<String, Definition> ALL = all();

    static Definition of(String measureName) {
        Definition definition = ALL.get(measureName);
        if (definition == null) {
            throw new IllegalStateException("measures.csv has no line for " + measureName);
        }
        return definition;
    }

    private static Map<String, Definition> all() {
        Map<String, Definition> all = new HashMap<>();
        for (Map<String, String> row : ResourceTable.read(Definition.class, "measures.csv")) {
            all.put(
                    row.get("name"),
                    new Definition(
                            row.get("term"),
                            row.get("label"),
                            MeasureKind.valueOf(row.get("kind")),
                            ErrorGroup.valueOf(row.get("error group")),
                            row.get("sides").equals("may differ"),
                            row.get("taken").equals("chosen"),
                            row.get("tape path"),
                            row.get("confirmed by")));
        }
        return Map.copyOf(all);
    }
}
