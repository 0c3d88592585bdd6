package trueseam.fitting;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Shells;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Overrule;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.intake.size.SizeTables;

/** The drafted shells of the misses' sizes, and fits of them by amounts that a test asks for. */
public final class Drafted {

    /** The sizes whose shells are altered in the tests. */
    public static final List<String> SIZES = List.of("8", "10", "12", "14", "16", "18", "20");

    /** The usual choices, in millimetres. */
    public static final FitChoices USUAL = FitChoices.usual(LengthFormat.millimetres());

    private static final Map<String, Pattern> SHELLS = all();

    private Drafted() {}

    private static Map<String, Pattern> all() {
        Map<String, Pattern> shells = new LinkedHashMap<>();
        for (String size : SIZES) {
            for (GarmentKind kind : GarmentKind.values()) {
                shells.put(kind + size, draft(kind, size));
            }
        }
        return Map.copyOf(shells);
    }

    private static Pattern draft(GarmentKind kind, String size) {
        DraftFigure figure = DraftFigure.of(SizeTables.named("misses"), size);
        DraftEase ease = DraftEase.fitted();
        return switch (kind) {
            case BODICE -> Shells.bodice(figure, ease);
            case DRESS -> Shells.dress(figure, ease);
            case SKIRT -> Shells.skirt(figure, ease);
            case TROUSERS -> Shells.trousers(figure, ease);
        };
    }

    /** The shell of a garment in a size of {@link #SIZES}. */
    public static Pattern shell(GarmentKind kind, String size) {
        return SHELLS.get(kind + size);
    }

    /** Alters a pattern by amounts that are asked for, whatever a body needs. */
    public static FitResult altered(Pattern pattern, Map<Measure, Double> byMm, FitChoices choices) {
        Body body = Body.named("whoever");
        Map<Measure, Overrule> own = new EnumMap<>(Measure.class);
        for (Map.Entry<Measure, Double> entry : byMm.entrySet()) {
            body = body.with(Reading.taped(entry.getKey(), mm(pattern, entry.getKey())));
            own.put(entry.getKey(), new Overrule.Amount(entry.getValue()));
        }
        return Fitting.fit(pattern, body, Optional.empty(), choices.withOverrules(own));
    }

    /** What the tape reads on a flat pattern, mm. */
    public static double mm(Pattern pattern, Measure measure) {
        return FlatPattern.measure(pattern, measure).orElseThrow().mm();
    }

    /** By how much a measure of the flat pattern grew, mm. */
    public static double gained(FitResult fit, Measure measure) {
        return mm(fit.worked().altered(), measure) - mm(fit.worked().original(), measure);
    }
}
