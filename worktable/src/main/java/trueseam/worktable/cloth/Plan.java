package trueseam.worktable.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.cloth.lay.Lay;
import trueseam.cloth.lay.LayException;
import trueseam.cloth.lay.Laying;
import trueseam.cloth.lay.Spot;
import trueseam.cloth.packing.Way;
import trueseam.cloth.proof.LayFault;
import trueseam.cloth.proof.LayProof;
import trueseam.fitting.plan.FitResult;
import trueseam.garment.pattern.Pattern;
import trueseam.worktable.project.ClothPart.OneCloth;
import trueseam.worktable.project.ClothPart.Place;
import trueseam.worktable.work.Outcome;
import trueseam.worktable.work.Taken;
import trueseam.worktable.work.Workings;

/**
 * The pieces of a project on one of its cloths, as kept, or laid at once where nothing is kept.
 *
 * @param pattern the pieces: altered, or as taken up where nobody was measured yet
 * @param original the pieces before they were altered, if they were
 * @param choices what was chosen about the cloth
 * @param laying the task, with what lies there by hand
 * @param lay the layout
 * @param kept whether it is the layout that was kept, and not one made at once
 */
record Plan(Pattern pattern, Optional<Pattern> original, ClothChoices choices, Laying laying, Lay lay, boolean kept) {

    static Outcome<Plan> of(Workings workings, ClothChoices choices) {
        Outcome<Pattern> pieces = pieces(workings);
        if (!pieces.isThere()) {
            return pieces.reason();
        }
        Outcome<Laying> laying = choices.laying(pieces.get());
        if (!laying.isThere()) {
            return laying.reason();
        }
        Optional<Pattern> original =
                workings.fit().value().map(fit -> fit.worked().original());
        return Outcome.orSentence(() -> Outcome.of(laid(pieces.get(), original, choices, laying.get())));
    }

    /** The pieces that are cut: none that cannot take the plan. */
    private static Outcome<Pattern> pieces(Workings workings) {
        Outcome<FitResult> fit = workings.fit();
        if (fit.isThere()) {
            return Outcome.of(fit.get().worked().altered());
        }
        if (!fit.missing()) {
            return fit.reason();
        }
        Outcome<Taken> taken = workings.taken();
        return taken.isThere() ? Outcome.of(taken.get().pattern()) : taken.reason();
    }

    /** On another cloth, or with other pieces, only what lies there by hand stays; the rest is laid anew around it. */
    private static Plan laid(Pattern pattern, Optional<Pattern> original, ClothChoices choices, Laying bare) {
        OneCloth one = choices.one();
        List<Spot> spots = one.laid().stream().map(Plan::spot).toList();
        Laying around = bare.around(spots);
        Optional<Lay> kept = one.task().equals(bare.mark()) ? bare.laid(spots) : Optional.empty();
        Lay lay = kept.orElseGet(() -> first(around, choices));
        return new Plan(pattern, original, choices, around, lay, kept.isPresent());
    }

    private static Lay first(Laying laying, ClothChoices choices) {
        try {
            return laying.first(choices.seed());
        } catch (LayException e) {
            // The sentence of the room has its place apart.
            throw new ClothException(e.place() + ": " + e.getMessage(), e);
        }
    }

    static Spot spot(Place place) {
        return new Spot(
                place.piece(), new Way(place.turn(), place.faceDown()), place.along(), place.across(), place.byHand());
    }

    static List<Place> places(List<Spot> spots) {
        return spots.stream()
                .map(s -> new Place(
                        s.piece(), s.way().turnDegrees(), s.way().mirrored(), s.alongMm(), s.acrossMm(), s.byHand()))
                .toList();
    }

    List<LayFault> faults() {
        return LayProof.look(lay);
    }

    List<Spot> spots() {
        return laying.spots(lay);
    }

    /** With another layout of the same task, such as one that the search found. */
    Plan on(Lay other) {
        return new Plan(pattern, original, choices, laying, other, kept);
    }

    /** With one piece elsewhere; nothing if the task has no such piece. */
    Optional<Plan> with(int piece, Spot spot) {
        List<Spot> spots = new ArrayList<>(spots());
        spots.set(piece, spot);
        return laying.laid(spots).map(this::on);
    }
}
