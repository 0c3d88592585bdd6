package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.intake.drawing.Look;

/** How something looks, once its layer and the insert that placed it are looked up. */
final class Looks {

    private static final double USUAL_WIDTH_MM = Look.PLAIN.widthMm();

    private final Sections sections;
    private final double unitMm;
    private final Notes notes;
    private final double scale;
    private final Map<String, List<Double>> dashes = new HashMap<>();

    Looks(Sections sections, double unitMm, Notes notes) {
        this.sections = sections;
        this.unitMm = unitMm;
        this.notes = notes;
        this.scale = headerScale();
    }

    private double headerScale() {
        Group group = sections.header.get("$LTSCALE");
        if (group == null) {
            return 1;
        }
        try {
            double value = RawEntity.number(group);
            return value > 0 ? value : 1;
        } catch (EntityException noNumber) {
            return 1;
        }
    }

    /**
     * The look of something.
     *
     * @param trait its own words
     * @param layer its layer, looked up
     * @param insert the look of the insert that placed it; plain on the sheet itself
     */
    Look of(Trait trait, String layer, Look insert) {
        Optional<RawEntity> entry = Optional.ofNullable(sections.layers.get(Sections.key(layer)));
        return new Look(colour(trait, entry, insert), width(trait, entry, insert), dashes(trait, entry, insert));
    }

    /** Whether a layer is switched off (a colour below 0) or frozen. */
    static boolean isHidden(RawEntity layer) {
        return whole(layer, 62, 7) < 0 || (whole(layer, 70, 0) & 1) != 0;
    }

    private static String colour(Trait trait, Optional<RawEntity> layer, Look insert) {
        if (trait.trueColour() >= 0) {
            return Colours.ofRgb(trait.trueColour());
        }
        if (trait.colour() == Trait.BY_BLOCK) {
            return insert.colour();
        }
        if (trait.colour() != Trait.BY_LAYER) {
            return Colours.of(trait.colour());
        }
        int rgb = layer.map(l -> whole(l, 420, -1)).orElse(-1);
        return rgb >= 0
                ? Colours.ofRgb(rgb)
                : Colours.of(layer.map(l -> whole(l, 62, 7)).orElse(7));
    }

    /** A number of a table: what is no number there is as good as missing, and the layer still shows. */
    private static int whole(RawEntity entry, int code, int otherwise) {
        try {
            return entry.whole(code, otherwise);
        } catch (EntityException noNumber) {
            return otherwise;
        }
    }

    private static double width(Trait trait, Optional<RawEntity> layer, Look insert) {
        int hundredths =
                trait.weight() == -1 ? layer.map(l -> whole(l, 370, -3)).orElse(-3) : trait.weight();
        if (hundredths == -2) {
            return insert.widthMm();
        }
        return 0 <= hundredths && hundredths <= 1000 ? hundredths / 100.0 : USUAL_WIDTH_MM;
    }

    private List<Double> dashes(Trait trait, Optional<RawEntity> layer, Look insert) {
        String name = trait.lineType();
        if (name.equals("BYBLOCK")) {
            return insert.dashMm();
        }
        if (name.equals("BYLAYER")) {
            name = layer.map(l -> Sections.key(l.text(6, "CONTINUOUS"))).orElse("CONTINUOUS");
        }
        if (name.equals("CONTINUOUS") || name.isEmpty()) {
            return List.of();
        }
        double times = scale * (trait.lineTypeScale() > 0 ? trait.lineTypeScale() : 1) * unitMm;
        return dashes.computeIfAbsent(name, this::pattern).stream()
                .map(d -> d * times)
                .toList();
    }

    /** Dash and gap in turn, in the units of the file; a dot is a dash of no length. */
    private List<Double> pattern(String name) {
        RawEntity type = sections.lineTypes.get(name);
        if (type == null) {
            notes.note(
                    "line type \"" + GroupText.shortened(name) + "\" is used and not in the file; it is shown solid.");
            return List.of();
        }
        List<Double> all = new ArrayList<>();
        try {
            for (double length : type.numbers(49)) {
                boolean dash = length >= 0;
                boolean wanted = all.size() % 2 == 0;
                if (dash == wanted) {
                    all.add(Math.abs(length));
                } else if (!all.isEmpty()) {
                    all.set(all.size() - 1, all.get(all.size() - 1) + Math.abs(length));
                }
            }
        } catch (EntityException noNumber) {
            notes.broken(type, noNumber.getMessage());
            return List.of();
        }
        if (all.size() % 2 == 1) {
            all.add(0.0);
        }
        return all;
    }
}
