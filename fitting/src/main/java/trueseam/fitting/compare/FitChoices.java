package trueseam.fitting.compare;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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
        return new FitChoices(
                method, rule, looseness, hem, cap, reach, panels, sleeveSeams, own, easeMm, requests, wearing, show);
    }

    /**
     * The same choices for the sleeve done otherwise.
     *
     * @param otherCap what the cap keeps
     * @param otherReach how far it reaches
     * @return the choices
     */
    public FitChoices withSleeve(CapChoice otherCap, SleeveReach otherReach) {
        return new FitChoices(
                method,
                rule,
                looseness,
                hem,
                otherCap,
                otherReach,
                panels,
                sleeveSeams,
                overrules,
                easeMm,
                requests,
                wearing,
                show);
    }

    /**
     * The same choices with another way of comparing.
     *
     * @param other against what to compare
     * @return the choices
     */
    public FitChoices withMethod(Method other) {
        return new FitChoices(
                Optional.of(other),
                rule,
                looseness,
                hem,
                cap,
                reach,
                panels,
                sleeveSeams,
                overrules,
                easeMm,
                requests,
                wearing,
                show);
    }

    /**
     * The same choices with another rule.
     *
     * @param other which differences are left alone
     * @param otherLooseness 1 fitted, 1.5 semi-fitted, 2 loose
     * @return the choices
     */
    public FitChoices withRule(Rule other, double otherLooseness) {
        return new FitChoices(
                method,
                other,
                otherLooseness,
                hem,
                cap,
                reach,
                panels,
                sleeveSeams,
                overrules,
                easeMm,
                requests,
                wearing,
                show);
    }

    /**
     * The same choices with another hem.
     *
     * @param other what happens below the hip
     * @return the choices
     */
    public FitChoices withHem(HemChoice other) {
        return new FitChoices(
                method,
                rule,
                looseness,
                other,
                cap,
                reach,
                panels,
                sleeveSeams,
                overrules,
                easeMm,
                requests,
                wearing,
                show);
    }

    /**
     * The same choices with ease of her own.
     *
     * @param own by measure, mm
     * @return the choices
     */
    public FitChoices withEase(Map<Measure, Double> own) {
        return new FitChoices(
                method, rule, looseness, hem, cap, reach, panels, sleeveSeams, overrules, own, requests, wearing, show);
    }

    /**
     * The same choices with the wearing ease of another handbook.
     *
     * @param other the table of it
     * @return the choices
     */
    public FitChoices withWearing(EaseTable other) {
        return new FitChoices(
                method,
                rule,
                looseness,
                hem,
                cap,
                reach,
                panels,
                sleeveSeams,
                overrules,
                easeMm,
                requests,
                other,
                show);
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
        return new FitChoices(
                method, rule, looseness, hem, cap, reach, panels, sleeveSeams, own, easeMm, asked, wearing, show);
    }

    /**
     * The same choices with girths shared over other seams.
     *
     * @param otherPanels where there are panels or gores
     * @param otherSleeveSeams of a two-piece sleeve
     * @return the choices
     */
    public FitChoices withSeams(PanelChoice otherPanels, SleeveSeams otherSleeveSeams) {
        return new FitChoices(
                method,
                rule,
                looseness,
                hem,
                cap,
                reach,
                otherPanels,
                otherSleeveSeams,
                overrules,
                easeMm,
                requests,
                wearing,
                show);
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
}
