package trueseam.fitting.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.garment.body.Body;
import trueseam.garment.body.BodyValue;
import trueseam.garment.ease.EaseRow;
import trueseam.garment.ease.EaseTable;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.measure.MeasureKind;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.size.SizeRow;

/**
 * Compares a body with a pattern measure by measure and decides.
 *
 * <p>Rules: (1) by the table: need = body - table, for the ease is in the paper already; (2) by the flat pattern: need = body +
 * ease - flat; (3) a need no larger than the rule leaves is left, (4) unless the garment then has less than the minimum wearing
 * ease: wearing ease may not be used up to avoid an alteration (Costume construction text, Central Washington University,
 * chapters 16 and 17); (5) the dressmaker overrules all of it; (6) a chosen trouser length decides over the inside leg.
 */
public final class Comparison {

    private final Body body;
    private final GarmentKind kind;
    private final Optional<SizeRow> size;
    private final Map<Measure, Double> flat;
    private final Map<Measure, Double> statedEase;
    private final FitChoices choices;
    private final Set<PieceKind> inParts;

    /**
     * Sets out what is compared.
     *
     * @param body the body
     * @param kind the garment
     * @param size the chosen size with its body measures, if the table is known
     * @param flat what the tape reads on the flat pattern, mm; empty on paper only
     * @param statedEase ease that the pattern says it has, mm
     * @param choices the dressmaker's choices
     */
    public Comparison(
            Body body,
            GarmentKind kind,
            Optional<SizeRow> size,
            Map<Measure, Double> flat,
            Map<Measure, Double> statedEase,
            FitChoices choices) {
        this(body, kind, Set.of(), size, flat, statedEase, choices);
    }

    /**
     * Sets out what is compared, of a garment some of whose pieces are in parts.
     *
     * @param body the body
     * @param kind the garment
     * @param inParts what it has in parts, for what is written for a whole piece cannot be done there
     * @param size the chosen size with its body measures, if the table is known
     * @param flat what the tape reads on the flat pattern, mm; empty on paper only
     * @param statedEase ease that the pattern says it has, mm
     * @param choices the dressmaker's choices
     */
    public Comparison(
            Body body,
            GarmentKind kind,
            Set<PieceKind> inParts,
            Optional<SizeRow> size,
            Map<Measure, Double> flat,
            Map<Measure, Double> statedEase,
            FitChoices choices) {
        this.body = body;
        this.inParts = Set.copyOf(inParts);
        this.kind = kind;
        this.size = size;
        this.flat = Map.copyOf(flat);
        this.statedEase = Map.copyOf(statedEase);
        this.choices = choices;
    }

    /**
     * The fitting chart.
     *
     * @return a line for every measure that the garment is fitted by and that body and paper (or table) both have
     */
    public List<Need> needs() {
        List<Need> needs = new ArrayList<>();
        Set<Measure> concerned = Coverage.measuresOf(kind, inParts);
        for (Measure measure : Measure.values()) {
            Optional<BodyValue> value = body.value(measure);
            if (concerned.contains(measure) && value.isPresent()) {
                need(measure, value.get()).ifPresent(needs::add);
            }
        }
        // What the fit before settled has yielded already.
        boolean settled = choices.overrules().values().stream().anyMatch(own -> own instanceof Overrule.Settled);
        return List.copyOf(settled ? needs : chosenLengthFirst(fromTheCentre(needs)));
    }

    /** A kimono is measured from the centre back [ND1921]: where that measure was taken, it decides and the arm length yields. */
    private List<Need> fromTheCentre(List<Need> needs) {
        boolean both = inParts.contains(PieceKind.KIMONO_BACK)
                && needs.stream().anyMatch(n -> n.measure() == Measure.NAPE_TO_WRIST_LENGTH);
        boolean armOverruled = needs.stream()
                .anyMatch(n -> n.measure() == Measure.ARM_LENGTH && n.decision().overruled());
        if (!both) {
            return needs;
        }
        Measure yields = armOverruled ? Measure.NAPE_TO_WRIST_LENGTH : Measure.ARM_LENGTH;
        String reason = armOverruled
                ? "Left alone, for you decided about the arm length."
                : "Left alone, for a kimono is measured from the centre back to the wrist.";
        return needs.stream()
                .map(n -> n.measure() == yields ? n.with(new Decision(Verdict.LEAVE, 0, reason, true)) : n)
                .toList();
    }

    /**
     * Leg and finished length of trousers are one line: the length that was chosen decides, unless she decided about the leg
     * herself.
     */
    private static List<Need> chosenLengthFirst(List<Need> needs) {
        boolean chosen = needs.stream().anyMatch(n -> n.measure() == Measure.TROUSER_LENGTH);
        boolean legOverruled = needs.stream()
                .anyMatch(n ->
                        n.measure() == Measure.INSIDE_LEG_LENGTH && n.decision().overruled());
        if (!chosen) {
            return needs;
        }
        Measure yields = legOverruled ? Measure.TROUSER_LENGTH : Measure.INSIDE_LEG_LENGTH;
        String reason = legOverruled
                ? "Left alone, for you decided about the inside leg."
                : "Left alone, for the trouser length that was chosen decides.";
        return needs.stream()
                .map(n -> n.measure() == yields ? n.with(new Decision(Verdict.LEAVE, 0, reason, true)) : n)
                .toList();
    }

    private Optional<Need> need(Measure measure, BodyValue value) {
        OptionalDouble table =
                size.flatMap(row -> row.value(measure)).map(OptionalDouble::of).orElse(OptionalDouble.empty());
        OptionalDouble paper =
                flat.containsKey(measure) ? OptionalDouble.of(flat.get(measure)) : OptionalDouble.empty();
        boolean byTable = table.isPresent() && choices.method().orElse(Method.TABLE) == Method.TABLE;
        if (!byTable && paper.isEmpty()) {
            return Optional.empty();
        }
        Optional<EaseRow> wearing = wearing(measure);
        OptionalDouble minimum =
                wearing.map(row -> OptionalDouble.of(row.minimumMm())).orElse(OptionalDouble.empty());
        double ease;
        String source;
        double needMm;
        if (byTable) {
            ease = paper.isPresent() ? paper.getAsDouble() - table.getAsDouble() : usual(measure, wearing);
            source = paper.isPresent() ? "the pattern's own, measured at its size" : "in the paper already";
            needMm = value.mm() - table.getAsDouble();
        } else {
            ease = usual(measure, wearing);
            source = choices.easeMm().containsKey(measure)
                    ? "as you chose"
                    : statedEase.containsKey(measure) && !isBelowChosen(measure, wearing)
                            ? "stated by the pattern"
                            : wearing.map(EaseRow::source).orElse("none known");
            needMm = value.mm() + ease - paper.getAsDouble();
        }
        Need open = new Need(
                measure,
                value,
                table,
                paper,
                ease,
                minimum,
                source,
                byTable ? Method.TABLE : Method.FLAT,
                needMm,
                new Decision(Verdict.LEAVE, 0, "", false));
        return Optional.of(open.with(decide(open)));
    }

    private Optional<EaseRow> wearing(Measure measure) {
        EaseTable table = choices.wearing();
        Optional<EaseRow> any = table.wearing(kind, measure);
        if (any.isPresent() || body.value(Measure.HIP_GIRTH).isEmpty()) {
            return any;
        }
        return table.wearing(kind, measure, body);
    }

    private double usual(Measure measure, Optional<EaseRow> wearing) {
        Double own = choices.easeMm().get(measure);
        if (own != null) {
            return own;
        }
        Double stated = statedEase.get(measure);
        if (stated == null) {
            return wearing.map(EaseRow::usualMm).orElse(0.0);
        }
        return isBelowChosen(measure, wearing) ? wearing.orElseThrow().minimumMm() : stated;
    }

    /** A pattern may state less than the table's least, its maker knows why; not less than a least that she chose herself. */
    private boolean isBelowChosen(Measure measure, Optional<EaseRow> wearing) {
        Double stated = statedEase.get(measure);
        return stated != null
                && wearing.isPresent()
                && stated < wearing.get().minimumMm()
                && !wearing.equals(EaseTable.standard().wearing(kind, measure));
    }

    private Decision decide(Need need) {
        LengthFormat show = choices.show();
        Overrule overrule = choices.overrules().get(need.measure());
        if (overrule instanceof Overrule.Settled settled) {
            return settled.decision();
        }
        if (overrule instanceof Overrule.Leave) {
            return new Decision(Verdict.LEAVE, 0, "Left alone, as you decided.", true);
        }
        if (overrule instanceof Overrule.Amount amount) {
            return altered(need, amount.mm(), "Altered by " + show.showSigned(amount.mm()) + ", as you decided.", true);
        }
        if (overrule instanceof Overrule.Alter) {
            return altered(need, need.needMm(), "Altered by the whole difference, as you decided.", true);
        }
        if (overrule instanceof Overrule.Standing standing) {
            return asBefore(need, standing);
        }
        return byRule(need);
    }

    /** As earlier patterns agree: in place of the rule's amount, never on top of it. */
    private Decision asBefore(Need need, Overrule.Standing standing) {
        if (standing.mm().isEmpty()) {
            Decision rule = byRule(need);
            return new Decision(rule.verdict(), rule.amountMm(), rule.reason() + " " + standing.words(), false);
        }
        double mm = standing.mm().getAsDouble();
        return mm == 0
                ? new Decision(Verdict.LEAVE, 0, standing.words(), true)
                : altered(need, mm, standing.words(), true);
    }

    private Decision byRule(Need need) {
        LengthFormat show = choices.show();
        double leave = choices.rule().leaveMm(need.measure(), choices.looseness());
        double had = need.easeMm() - need.needMm();
        boolean tooTight =
                need.minimumEaseMm().isPresent() && had < need.minimumEaseMm().getAsDouble() - 0.5 && need.needMm() > 0;
        String size = show.show(Math.abs(need.needMm()));
        if (Math.abs(need.needMm()) <= leave + 1e-9) {
            if (!tooTight) {
                return new Decision(
                        Verdict.LEAVE,
                        0,
                        "A difference of " + size + " is left alone by "
                                + choices.rule().word() + " (up to " + show.show(leave) + ").",
                        false);
            }
            return altered(
                    need,
                    need.needMm(),
                    "Only " + size + ", but the ease of " + show.show(had)
                            + " would fall below the least wearing ease of "
                            + show.show(need.minimumEaseMm().getAsDouble()) + ".",
                    false);
        }
        return altered(
                need,
                need.needMm(),
                size + tooMuch(need) + ", more than the " + show.show(leave) + " that "
                        + choices.rule().word() + " leaves.",
                false);
    }

    private static String tooMuch(Need need) {
        boolean along =
                need.measure().kind() != MeasureKind.GIRTH && need.measure().kind() != MeasureKind.WIDTH;
        if (need.needMm() > 0) {
            return along ? " too short" : " too small";
        }
        return along ? " too long" : " too large";
    }

    private Decision altered(Need need, double amountMm, String reason, boolean overruled) {
        if (Coverage.isAltered(kind, inParts, need.measure())) {
            return new Decision(Verdict.ALTER, amountMm, reason, overruled);
        }
        if (Coverage.isAltered(kind, need.measure())) {
            return new Decision(
                    Verdict.TRY_ON,
                    0,
                    reason + " The " + need.measure().term().toLowerCase(Locale.ROOT) + " is altered on "
                            + Repertoire.otherwise(inParts) + "; or judge it on the trial garment.",
                    overruled);
        }
        return new Decision(
                Verdict.TRY_ON,
                0,
                reason + " No alteration of the " + need.measure().term().toLowerCase(Locale.ROOT)
                        + " is in the catalogue yet: judge it on the trial garment.",
                overruled);
    }
}
