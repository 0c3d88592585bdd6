package trueseam.fitting.compare;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import trueseam.fitting.alteration.CapChoice;
import trueseam.fitting.alteration.HemChoice;
import trueseam.fitting.alteration.PanelChoice;
import trueseam.fitting.alteration.SleeveReach;
import trueseam.fitting.alteration.SleeveSeams;
import trueseam.fitting.repertoire.Request;
import trueseam.garment.ease.EaseTable;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;

/**
 * Everything that a dressmaker may choose about a fit.
 *
 * @param method against what to compare; where empty, the table where it has the measure, else the flat pattern
 * @param rule which differences are left alone
 * @param looseness 1 fitted, 1.5 semi-fitted, 2 loose; for the finer rule
 * @param hem what happens below the hip
 * @param cap what the sleeve cap keeps
 * @param reach how far a change of sleeve girth reaches
 * @param panels over which seams a girth is shared where there are panels or gores
 * @param sleeveSeams which seams of a two-piece sleeve take a change of its girth
 * @param overrules her own decisions
 * @param easeMm her own ease, mm, for comparing with the flat pattern
 * @param requests alterations that she asks for by name
 * @param wearing the least and the usual wearing ease, as the handbook that she chose has it
 * @param show how lengths are written in reasons
 */
public record FitChoices(
        Optional<Method> method,
        Rule rule,
        double looseness,
        HemChoice hem,
        CapChoice cap,
        SleeveReach reach,
        PanelChoice panels,
        SleeveSeams sleeveSeams,
        Map<Measure, Overrule> overrules,
        Map<Measure, Double> easeMm,
        List<Request> requests,
        EaseTable wearing,
        LengthFormat show) {

    // Immutable.
    public FitChoices {
        overrules = Collections.unmodifiableMap(new TreeMap<>(overrules));
        easeMm = Collections.unmodifiableMap(new TreeMap<>(easeMm));
        requests = List.copyOf(requests);
    }

    /**
     * What is done when nothing is said: the half-inch rule, hem carried, cap seam kept, upper arm alone.
     *
     * @param show how lengths are written
     * @return the usual choices
     */
    public static FitChoices usual(LengthFormat show) {
        return new FitChoices(
                Optional.empty(),
                Rule.HALF_INCH,
                1,
                HemChoice.CARRIED,
                CapChoice.KEEP_CAP_SEAM,
                SleeveReach.UPPER_ARM,
                PanelChoice.ALL_SEAMS,
                SleeveSeams.BOTH,
                Map.of(),
                Map.of(),
                List.of(),
                EaseTable.standard(),
                show);
    }

    /**
     * The same choices with decisions of her own.
     *
     * @param own by measure
     * @return the choices
     */
    public FitChoices withOverrules(Map<Measure, Overrule> own) {
        return with(copy -> copy.overrules = own);
    }

    /**
     * The same choices for the sleeve done otherwise.
     *
     * @param otherCap what the cap keeps
     * @param otherReach how far it reaches
     * @return the choices
     */
    public FitChoices withSleeve(CapChoice otherCap, SleeveReach otherReach) {
        return with(copy -> {
            copy.cap = otherCap;
            copy.reach = otherReach;
        });
    }

    /**
     * The same choices with another way of comparing.
     *
     * @param other against what to compare
     * @return the choices
     */
    public FitChoices withMethod(Method other) {
        return with(copy -> copy.method = Optional.of(other));
    }

    /**
     * The same choices with another rule.
     *
     * @param other which differences are left alone
     * @param otherLooseness 1 fitted, 1.5 semi-fitted, 2 loose
     * @return the choices
     */
    public FitChoices withRule(Rule other, double otherLooseness) {
        return with(copy -> {
            copy.rule = other;
            copy.looseness = otherLooseness;
        });
    }

    /**
     * The same choices with another hem.
     *
     * @param other what happens below the hip
     * @return the choices
     */
    public FitChoices withHem(HemChoice other) {
        return with(copy -> copy.hem = other);
    }

    /**
     * The same choices with ease of her own.
     *
     * @param own by measure, mm
     * @return the choices
     */
    public FitChoices withEase(Map<Measure, Double> own) {
        return with(copy -> copy.easeMm = own);
    }

    /**
     * The same choices with the wearing ease of another handbook.
     *
     * @param other the table of it
     * @return the choices
     */
    public FitChoices withWearing(EaseTable other) {
        return with(copy -> copy.wearing = other);
    }

    /**
     * The same choices with alterations asked for by name. One that is asked for without an amount is decided as "alter" for its
     * measure.
     *
     * @param asked the alterations
     * @return the choices
     */
    public FitChoices withRequests(List<Request> asked) {
        Map<Measure, Overrule> own = new TreeMap<>(overrules);
        for (Request request : asked) {
            if (request.mm().isEmpty()) {
                own.putIfAbsent(request.entry().measures().get(0), new Overrule.Alter());
            }
        }
        return with(copy -> {
            copy.overrules = own;
            copy.requests = asked;
        });
    }

    /**
     * The same choices with girths shared over other seams.
     *
     * @param otherPanels where there are panels or gores
     * @param otherSleeveSeams of a two-piece sleeve
     * @return the choices
     */
    public FitChoices withSeams(PanelChoice otherPanels, SleeveSeams otherSleeveSeams) {
        return with(copy -> {
            copy.panels = otherPanels;
            copy.sleeveSeams = otherSleeveSeams;
        });
    }

    /**
     * Whether a measure is decided as earlier patterns agree.
     *
     * @param measure the measure
     * @return true if standing evidence took the place of the rule
     */
    public boolean isStanding(Measure measure) {
        Overrule own = overrules.get(measure) instanceof Overrule.Settled settled
                ? settled.kept().orElse(settled)
                : overrules.get(measure);
        return own instanceof Overrule.Standing standing && standing.mm().isPresent();
    }

    private FitChoices with(Consumer<Copy> change) {
        Copy copy = new Copy(this);
        change.accept(copy);
        return new FitChoices(
                copy.method,
                copy.rule,
                copy.looseness,
                copy.hem,
                copy.cap,
                copy.reach,
                copy.panels,
                copy.sleeveSeams,
                copy.overrules,
                copy.easeMm,
                copy.requests,
                copy.wearing,
                show);
    }

    /** A copy while it is changed. */
    private static final class Copy {

        private Optional<Method> method;
        private Rule rule;
        private double looseness;
        private HemChoice hem;
        private CapChoice cap;
        private SleeveReach reach;
        private PanelChoice panels;
        private SleeveSeams sleeveSeams;
        private Map<Measure, Overrule> overrules;
        private Map<Measure, Double> easeMm;
        private List<Request> requests;
        private EaseTable wearing;

        Copy(FitChoices of) {
            method = of.method;
            rule = of.rule;
            looseness = of.looseness;
            hem = of.hem;
            cap = of.cap;
            reach = of.reach;
            panels = of.panels;
            sleeveSeams = of.sleeveSeams;
            overrules = of.overrules;
            easeMm = of.easeMm;
            requests = of.requests;
            wearing = of.wearing;
        }
    }
}
