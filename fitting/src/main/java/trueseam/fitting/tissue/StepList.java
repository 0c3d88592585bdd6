package trueseam.fitting.tissue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;

/**
 * Writes down the steps for one piece. What is neither traced nor joined when the list is finished is traced first of all,
 * with the pattern lying where it lies: nobody has to name what stays. Used by one thread, for one list.
 */
public final class StepList {

    private static final double NOTHING_MM = 1e-9;

    private final Piece piece;
    private final List<Step> steps = new ArrayList<>();

    /**
     * Begins a list.
     *
     * @param piece the piece as it lies on the tissue
     */
    public StepList(Piece piece) {
        this.piece = piece;
    }

    /**
     * Adds a step.
     *
     * @param step the step
     * @return this list
     */
    public StepList add(Step step) {
        steps.add(step);
        return this;
    }

    /**
     * Adds the tracing of one stretch where the pattern lies now.
     *
     * @param edge the edge
     * @param fromMm where it begins, mm
     * @param toMm where it ends, mm
     * @return this list
     */
    public StepList trace(String edge, double fromMm, double toMm) {
        return add(new Step.Trace(List.of(new Stretch(edge, fromMm, toMm)), false));
    }

    /**
     * Adds the tracing of an edge between two places of it, in whichever order they come.
     *
     * @param one a place
     * @param other another place of the same edge
     * @return this list
     */
    public StepList trace(Place one, Place other) {
        return trace(one.edge(), Math.min(one.alongMm(), other.alongMm()), Math.max(one.alongMm(), other.alongMm()));
    }

    /**
     * Adds a joined line between two places of an edge, in whichever order they come.
     *
     * @param one a place
     * @param other another place of the same edge
     * @param form the kind of line
     * @return this list
     */
    public StepList join(Place one, Place other, JoinForm form) {
        return join(
                one.edge(), Math.min(one.alongMm(), other.alongMm()), Math.max(one.alongMm(), other.alongMm()), form);
    }

    /**
     * Adds a joined line.
     *
     * @param edge the edge it belongs to
     * @param fromMm where the gap begins, mm
     * @param toMm where the gap ends, mm
     * @param form the kind of line
     * @return this list
     */
    public StepList join(String edge, double fromMm, double toMm, JoinForm form) {
        return add(new Step.Join(new Stretch(edge, fromMm, toMm), form));
    }

    /**
     * Adds the cutting loose of a part: of the two that the scissors leave, the one that holds a place.
     *
     * @param part what the part is called
     * @param one where the scissors begin
     * @param through where they turn; may be empty
     * @param other where they end
     * @param holding a place of the outline on the part that is taken into the hand
     * @return this list
     */
    public StepList cut(String part, Place one, List<Spot> through, Place other, Place holding) {
        double from = along(one);
        double to = along(other);
        double held = along(holding);
        boolean forwards = from < to ? from < held && held < to : held > from || held < to;
        if (forwards) {
            return add(new Step.Cut(part, one, through, other));
        }
        List<Spot> back = new ArrayList<>(through);
        Collections.reverse(back);
        return add(new Step.Cut(part, other, back, one));
    }

    private double along(Place place) {
        double along = 0;
        for (Edge edge : piece.edges()) {
            if (edge.name().equals(place.edge())) {
                return along + Math.min(place.alongMm(), edge.length());
            }
            along += edge.length();
        }
        throw new TissueException(piece.name(), place.edge(), "the piece has no such edge.");
    }

    /**
     * Whether anything was written down.
     *
     * @return true if there is no step
     */
    public boolean isEmpty() {
        return steps.isEmpty();
    }

    /**
     * The finished list: marks first, then the tracing of all that stays, then the rest in order.
     *
     * @return the steps
     */
    public List<Step> finished() {
        List<Step> all = new ArrayList<>(steps.size() + 1);
        for (Step step : steps) {
            if (step instanceof Step.Mark) {
                all.add(step);
            }
        }
        List<Stretch> kept = untouched();
        if (!kept.isEmpty()) {
            all.add(new Step.Trace(kept, true));
        }
        for (Step step : steps) {
            if (!(step instanceof Step.Mark)) {
                all.add(step);
            }
        }
        return List.copyOf(all);
    }

    private List<Stretch> untouched() {
        List<Stretch> kept = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            double reached = 0;
            for (Stretch taken : taken(edge.name())) {
                if (taken.fromMm() - reached > NOTHING_MM) {
                    kept.add(new Stretch(edge.name(), reached, taken.fromMm()));
                }
                reached = Math.max(reached, taken.toMm());
            }
            if (edge.length() - reached > NOTHING_MM) {
                kept.add(new Stretch(edge.name(), reached, edge.length()));
            }
        }
        return kept;
    }

    private List<Stretch> taken(String edge) {
        List<Stretch> taken = new ArrayList<>();
        for (Step step : steps) {
            if (step instanceof Step.Trace trace) {
                for (Stretch stretch : trace.stretches()) {
                    if (stretch.edge().equals(edge)) {
                        taken.add(stretch);
                    }
                }
            } else if (step instanceof Step.Join join && join.gap().edge().equals(edge)) {
                taken.add(join.gap());
            } else if (step instanceof Step.TraceOver over
                    && over.stretch().edge().equals(edge)) {
                taken.add(over.stretch());
            }
        }
        taken.sort(Comparator.comparingDouble(Stretch::fromMm).thenComparingDouble(Stretch::toMm));
        return taken;
    }
}
