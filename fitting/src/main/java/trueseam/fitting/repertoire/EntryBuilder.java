package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;

/** Writes an entry down line by line. Used by one thread, for one entry. */
public final class EntryBuilder {

    private final String name;
    private final Family family;
    private final Stage stage;
    private final Set<PieceKind> on;
    private List<Measure> measures = List.of();
    private boolean solved;
    private List<String> folds = List.of();
    private String plus = "";
    private String minus = "";
    private String moves = "";
    private String sharing = "";
    private String pin = "";
    private List<Stay> stays = List.of();
    private String alsoStays = "";
    private Set<EdgeRole> lengthens = Set.of();
    private String trued = "";
    private String source = "";
    private double usualMm = 6.35;
    private double mostMm = 12.7;
    private final List<Variant> variants = new ArrayList<>();

    EntryBuilder(String name, Family family, Stage stage, Set<PieceKind> on) {
        this.name = name;
        this.family = family;
        this.stage = stage;
        this.on = on;
    }

    /**
     * The amount is found so that this measure of the altered pattern is right.
     *
     * @param measure the measure
     * @return this
     */
    public EntryBuilder solvedFor(Measure measure) {
        measures = List.of(measure);
        solved = true;
        return this;
    }

    /**
     * Measures that call for it, from which she judges the amount herself.
     *
     * @param calling the measures
     * @return this
     */
    public EntryBuilder calledForBy(Measure... calling) {
        measures = List.of(calling);
        return this;
    }

    /**
     * What is seen on the trial garment.
     *
     * @param seen each in a few words
     * @return this
     */
    public EntryBuilder folds(String... seen) {
        folds = List.of(seen);
        return this;
    }

    /**
     * What an amount does.
     *
     * @param positive a positive one
     * @param negative a negative one; empty if there is none
     * @return this
     */
    public EntryBuilder amount(String positive, String negative) {
        plus = positive;
        minus = negative;
        return this;
    }

    /**
     * The edges that it moves.
     *
     * @param said in words
     * @return this
     */
    public EntryBuilder moves(String said) {
        moves = said;
        return this;
    }

    /**
     * How the amount is shared.
     *
     * @param said in words
     * @return this
     */
    public EntryBuilder sharing(String said) {
        sharing = said;
        return this;
    }

    /**
     * The pin or the line.
     *
     * @param said in words
     * @return this
     */
    public EntryBuilder pin(String said) {
        pin = said;
        return this;
    }

    /**
     * Edges whose sewn length must stay; the tests hold every entry to them.
     *
     * @param edges the edges
     * @return this
     */
    public EntryBuilder stays(Stay... edges) {
        stays = List.of(edges);
        return this;
    }

    /**
     * What else must stay.
     *
     * @param said in words
     * @return this
     */
    public EntryBuilder alsoStays(String said) {
        alsoStays = said;
        return this;
    }

    /**
     * Edges that are meant to change their length; what is sewn to them follows.
     *
     * @param roles the edges
     * @return this
     */
    public EntryBuilder lengthens(EdgeRole... roles) {
        lengthens = Set.of(roles);
        return this;
    }

    /**
     * What is trued after.
     *
     * @param said in words
     * @return this
     */
    public EntryBuilder trued(String said) {
        trued = said;
        return this;
    }

    /**
     * Who says so.
     *
     * @param said a code of docs/sources.md, or common practice
     * @return this
     */
    public EntryBuilder source(String said) {
        source = said;
        return this;
    }

    /**
     * Amounts.
     *
     * @param usual a usual amount, mm
     * @param most the largest without a warning, mm
     * @return this
     */
    public EntryBuilder amounts(double usual, double most) {
        usualMm = usual;
        mostMm = most;
        return this;
    }

    /**
     * A way of doing it, where handbooks differ; the usual one first.
     *
     * @param way its name
     * @param reason when to choose it, and who says so
     * @param maker its steps
     * @param lengthening edges that this way means to lengthen or shorten; the cap if its ease is to change
     * @return this
     */
    public EntryBuilder variant(String way, String reason, Maker maker, EdgeRole... lengthening) {
        variants.add(new Variant(way, reason, maker, Set.of(lengthening)));
        return this;
    }

    /**
     * The entry, where there is one way of doing it.
     *
     * @param maker its steps
     * @return the entry
     */
    public Entry doneBy(Maker maker) {
        variants.add(new Variant("usual", "the only way here", maker, Set.of()));
        return written();
    }

    /**
     * The entry, where its ways were named.
     *
     * @return the entry
     */
    public Entry written() {
        return new Entry(
                name, family, stage, on, measures, solved, folds, plus, minus, moves, sharing, pin, stays, alsoStays,
                lengthens, trued, source, usualMm, mostMm, variants);
    }
}
