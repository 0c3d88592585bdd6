package trueseam.worktable.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import trueseam.worktable.page.Visit;
import trueseam.worktable.project.ClothPart.OneCloth;
import trueseam.worktable.project.ClothPart.TypedFlaw;

/** The form of the cloth as it was sent. */
final class ClothForm {

    private ClothForm() {}

    /** The cloth with what was typed; what has the usual text in its field is not kept. */
    static OneCloth read(Visit visit, ClothChoices before) {
        Map<String, String> choices = new TreeMap<>(before.one().choices());
        for (String name : ClothChoices.TYPED) {
            if (visit.context().formParam(name) != null) {
                put(choices, name, visit.field(name).strip(), before);
            }
        }
        put(choices, ClothChoices.LAYERS, visit.field(ClothChoices.LAYERS), before);
        put(choices, ClothChoices.NAP, visit.field(ClothChoices.NAP), before);
        List<String> pieces = before.one().pieces();
        if (!visit.field("pieces").isEmpty()) {
            // The usual ones are not kept by name, so that they follow the pattern; none ticked is the usual ones
            // again.
            List<String> ticked = visit.context().formParams("piece");
            pieces = ticked.equals(lines(visit.field("pieces"))) ? List.of() : ticked;
        }
        List<String> seams = before.one().seams();
        if (!visit.field("seams").isEmpty()) {
            seams = visit.context().formParams("seam");
            boolean all = seams.equals(lines(visit.field("seams")));
            put(choices, ClothChoices.SEAMS, all ? "" : "chosen", before);
        }
        return before.one().chosen(choices, pieces, seams, flaws(visit));
    }

    private static List<String> lines(String text) {
        return text.lines().filter(line -> !line.isEmpty()).toList();
    }

    private static void put(Map<String, String> choices, String name, String text, ClothChoices before) {
        if (text.isEmpty() || before.isUsual(name, text)) {
            choices.remove(name);
        } else {
            choices.put(name, text);
        }
    }

    /** A row with nothing in it is no flaw. */
    private static List<TypedFlaw> flaws(Visit visit) {
        List<String> from = visit.context().formParams("flaw-from");
        List<String> to = visit.context().formParams("flaw-to");
        List<String> low = visit.context().formParams("flaw-low");
        List<String> high = visit.context().formParams("flaw-high");
        List<TypedFlaw> flaws = new ArrayList<>();
        for (int i = 0; i < from.size(); i++) {
            TypedFlaw flaw = new TypedFlaw(at(from, i), at(to, i), at(low, i), at(high, i));
            if (!(flaw.from() + flaw.to() + flaw.low() + flaw.high()).isEmpty()) {
                flaws.add(flaw);
            }
        }
        return flaws;
    }

    private static String at(List<String> texts, int i) {
        return i < texts.size() ? texts.get(i).strip() : "";
    }

    /** What was done, for undoing. */
    static String said(Visit visit, ClothChoices before) {
        String width = visit.field(ClothChoices.WIDTH).strip();
        return width.isEmpty() || width.equals(before.text(ClothChoices.WIDTH)) ? "Cloth" : "Cloth " + width + " wide";
    }
}
