package trueseam.app.input;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine.Option;
import trueseam.fitting.alteration.CapChoice;
import trueseam.fitting.alteration.HemChoice;
import trueseam.fitting.alteration.PanelChoice;
import trueseam.fitting.alteration.SleeveReach;
import trueseam.fitting.alteration.SleeveSeams;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Method;
import trueseam.fitting.compare.Overrule;
import trueseam.fitting.compare.Rule;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;

/** What a dressmaker may choose about a fit. */
public final class ChoiceOptions {

    /** How the body is compared. */
    public enum By {
        /** Against the size table. */
        table,
        /** Against the measured flat pattern. */
        flat
    }

    /** Which differences are left. */
    public enum Leave {
        /** Half an inch or less. */
        half_inch,
        /** A quarter or an eighth of an inch. */
        fine
    }

    /** How loose the garment is. */
    public enum Style {
        /** Fitted. */
        fitted,
        /** Semi-fitted. */
        semi_fitted,
        /** Loose. */
        loose
    }

    /** What happens below the hip. */
    public enum Hem {
        /** Carried out with the hip. */
        carried,
        /** Let back to the old sweep. */
        let_back
    }

    /** What the sleeve cap keeps. */
    public enum Cap {
        /** The length of its seam. */
        keep_seam,
        /** Its height. */
        keep_height
    }

    /** How far a change of sleeve girth reaches. */
    public enum Sleeve {
        /** The upper arm alone. */
        upper_arm,
        /** Down to the wrist. */
        whole
    }

    /** Over which seams a girth is shared. */
    public enum Seams {
        /** All that run from top to bottom. */
        all,
        /** Both edges of the side panels. */
        side_panels,
        /** The side seams. */
        side
    }

    /** Which seams of a two-piece sleeve change. */
    public enum SleeveSeam {
        /** Both. */
        both,
        /** The back seam. */
        back
    }

    @Option(
            names = "--by",
            paramLabel = "table|flat",
            description =
                    "Compare the body with the size table (its ease is in the paper already), or body + ease with the"
                            + " measured flat pattern. Default: the table where it has the measure, else the flat pattern.")
    private By by;

    @Option(
            names = "--rule",
            paramLabel = "half_inch|fine",
            defaultValue = "half_inch",
            description =
                    "Which differences are left alone: half an inch or less, or the finer rule (1/4 in, short lengths"
                            + " 1/8 in). Default: ${DEFAULT-VALUE}.")
    private Leave rule;

    @Option(
            names = "--style",
            paramLabel = "fitted|semi_fitted|loose",
            defaultValue = "fitted",
            description = "How loose the garment is; widens the finer rule. Default: ${DEFAULT-VALUE}.")
    private Style style;

    @Option(
            names = "--hem",
            paramLabel = "carried|let_back",
            defaultValue = "carried",
            description = "When the hip changes: carry the hem out with it, or let it back to the old sweep. Default:"
                    + " ${DEFAULT-VALUE}.")
    private Hem hem;

    @Option(
            names = "--cap",
            paramLabel = "keep_seam|keep_height",
            defaultValue = "keep_seam",
            description =
                    "When the upper arm changes: keep the cap seam (the cap gets lower or higher) or the cap height (more"
                            + " or less to ease in). Default: ${DEFAULT-VALUE}.")
    private Cap cap;

    @Option(
            names = "--sleeve",
            paramLabel = "upper_arm|whole",
            defaultValue = "upper_arm",
            description =
                    "Change the upper arm alone, or the whole sleeve down to the wrist. Default: ${DEFAULT-VALUE}.")
    private Sleeve sleeve;

    @Option(
            names = "--seams",
            paramLabel = "all|side_panels|side",
            defaultValue = "all",
            description =
                    "Where front and back are in panels or gores: share a girth over all their seams, over both edges of"
                            + " the side panels (the centre panels are left alone), or over the side seams. Default: ${DEFAULT-VALUE}.")
    private Seams seams;

    @Option(
            names = "--sleeve-seams",
            paramLabel = "both|back",
            defaultValue = "both",
            description = "Change the girth of a two-piece sleeve at both its seams or at the back seam alone. Default:"
                    + " ${DEFAULT-VALUE}.")
    private SleeveSeam sleeveSeams;

    @Option(
            names = "--decide",
            paramLabel = "MEASURE=leave|alter|LENGTH",
            description =
                    "Your own decision for a measure, such as \"waist girth=leave\" or \"bust girth=1 1/2 in\" (total,"
                            + " minus to take in). May be given several times.")
    private List<String> decide = List.of();

    @Option(
            names = "--ease",
            paramLabel = "MEASURE=LENGTH",
            description =
                    "Your own ease for a measure, for comparing with the flat pattern. May be given several times.")
    private List<String> ease = List.of();

    @Option(
            names = "--alter",
            paramLabel = "NAME[/WAY][=LENGTH][, left|right]",
            description = "An alteration by its name (trueseam alterations lists them), such as \"sway-back=3/8 in\","
                    + " \"square shoulder=1/2 in, left\"; without a length where it is found from a measure."
                    + " May be given several times.")
    private List<String> alter = List.of();

    /** For the command line. */
    public ChoiceOptions() {}

    /**
     * The choices.
     *
     * @param units how lengths are shown and read
     * @return the choices
     * @throws InputException naming a decision that cannot be read
     */
    public FitChoices choices(UnitsOption units) {
        FitChoices choices = FitChoices.usual(units.format())
                .withRule(
                        rule == Leave.fine ? Rule.FINE : Rule.HALF_INCH,
                        switch (style) {
                            case fitted -> 1;
                            case semi_fitted -> 1.5;
                            case loose -> 2;
                        })
                .withHem(hem == Hem.carried ? HemChoice.CARRIED : HemChoice.LET_BACK)
                .withSleeve(
                        cap == Cap.keep_seam ? CapChoice.KEEP_CAP_SEAM : CapChoice.KEEP_CAP_HEIGHT,
                        sleeve == Sleeve.whole ? SleeveReach.WHOLE : SleeveReach.UPPER_ARM)
                .withSeams(
                        switch (seams) {
                            case all -> PanelChoice.ALL_SEAMS;
                            case side_panels -> PanelChoice.SIDE_PANELS;
                            case side -> PanelChoice.SIDE_SEAMS;
                        },
                        sleeveSeams == SleeveSeam.back ? SleeveSeams.BACK : SleeveSeams.BOTH)
                .withOverrules(overrules(units.bareUnit()))
                .withEase(lengths("--ease", ease, units.bareUnit()))
                .withRequests(alter.stream()
                        .map(text -> Requests.read(text, units.bareUnit()))
                        .toList());
        return by == null ? choices : choices.withMethod(by == By.table ? Method.TABLE : Method.FLAT);
    }

    private Map<Measure, Overrule> overrules(LengthUnit unit) {
        Map<Measure, Overrule> own = new EnumMap<>(Measure.class);
        for (String text : decide) {
            String[] sides = split("--decide", text, "leave, alter or a length");
            String what = sides[1].strip().toLowerCase(Locale.ROOT);
            own.put(
                    Measure.named(sides[0]),
                    what.equals("leave")
                            ? new Overrule.Leave()
                            : what.equals("alter")
                                    ? new Overrule.Alter()
                                    : new Overrule.Amount(
                                            Length.parse(sides[1], unit).mm()));
        }
        return own;
    }

    /**
     * Reads {@code MEASURE=LENGTH} options.
     *
     * @param option what the option is called
     * @param texts what was given
     * @param unit the unit of bare numbers
     * @return mm by measure
     */
    public static Map<Measure, Double> lengths(String option, List<String> texts, LengthUnit unit) {
        Map<Measure, Double> mm = new EnumMap<>(Measure.class);
        for (String text : texts) {
            String[] sides = split(option, text, "a length");
            mm.put(Measure.named(sides[0]), Length.parse(sides[1], unit).mm());
        }
        return mm;
    }

    private static String[] split(String option, String text, String wanted) {
        int at = text.indexOf('=');
        if (at < 1 || at == text.length() - 1) {
            throw new InputException(option + " \"" + text + "\" cannot be read; write a measure, =, and " + wanted
                    + ", such as \"waist girth=1 in\".");
        }
        return new String[] {
            text.substring(0, at).strip(), text.substring(at + 1).strip()
        };
    }
}
