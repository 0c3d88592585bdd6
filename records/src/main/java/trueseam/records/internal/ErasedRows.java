package trueseam.records.internal;

import java.util.List;

/** Everything of one owner, gone for good. What hangs on something goes before it. */
final class ErasedRows {

    private static final List<String> OWNED = List.of(
            "share",
            "print",
            "fit",
            "finding",
            "sitting",
            "reading",
            "measuring_day",
            "project_state",
            "project",
            "pattern_file",
            "pattern",
            "size_table",
            "person",
            "file",
            "access",
            "measure_again",
            "class_member",
            "taught_class");

    /** Where she herself stands, other than as an owner. Trails of others keep her number, which leads nowhere any more. */
    private static final List<String> NAMED = List.of("class_member", "session", "invitation");

    private ErasedRows() {}

    static void erase(Rows one) {
        for (String table : OWNED) {
            one.put("delete from " + table + " where owner_id = :owner", Bound.none());
        }
        for (String table : NAMED) {
            one.put("delete from " + table + " where account_id = :owner", Bound.none());
        }
    }
}
