package trueseam.fitting.repertoire;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;

/**
 * An alteration of the repertoire.
 *
 * @param name what the user calls it, unique, for example {@code sway-back}
 * @param family the part of the wardrobe
 * @param stage when it is done
 * @param on the pieces that must be there
 * @param measures the measures that call for it; the amount is found from the first if {@code solved}
 * @param solved whether the amount is found by measuring the altered pattern at the first measure
 * @param folds what is seen on the trial garment; may be empty
 * @param plus what a positive amount does, for example {@code raises the centre back waist}
 * @param minus what a negative amount does; empty if it cannot be negative
 * @param moves the edges that it moves
 * @param sharing how the amount is shared
 * @param pin the pin or the line
 * @param stays edges whose sewn length must stay
 * @param alsoStays what else must stay, in words; may be empty
 * @param lengthens edges that are meant to change their length, so that what is sewn to them follows
 * @param trued what is trued after
 * @param source who says so
 * @param usualMm a usual amount, mm
 * @param mostMm the largest amount to be taken without a warning, mm
 * @param variants the ways of doing it, the usual one first; one or more
 */
public record Entry(
        String name,
        Family family,
        Stage stage,
        Set<PieceKind> on,
        List<Measure> measures,
        boolean solved,
        List<String> folds,
        String plus,
        String minus,
        String moves,
        String sharing,
        String pin,
        List<Stay> stays,
        String alsoStays,
        Set<EdgeRole> lengthens,
        String trued,
        String source,
        double usualMm,
        double mostMm,
        List<Variant> variants) {

    // Immutable, and complete: an entry that does not say what it does is none.
    public Entry {
        on = Set.copyOf(on);
        measures = List.copyOf(measures);
        folds = List.copyOf(folds);
        stays = List.copyOf(stays);
        lengthens = Set.copyOf(lengthens);
        variants = List.copyOf(variants);
        for (String said : List.of(name, plus, moves, sharing, pin, trued, source)) {
            if (said.isBlank()) {
                throw new IllegalArgumentException("The alteration \"" + name + "\" does not say everything.");
            }
        }
        if (variants.isEmpty() || on.isEmpty() || !(0 < usualMm && usualMm <= mostMm)) {
            throw new IllegalArgumentException(
                    "The alteration \"" + name + "\" needs pieces, amounts and a way of doing it.");
        }
        if (solved && measures.isEmpty()) {
            throw new IllegalArgumentException(
                    "The alteration \"" + name + "\" is solved for a measure and names none.");
        }
    }

    /**
     * Whether it can also make smaller.
     *
     * @return true if a negative amount is possible
     */
    public boolean isBothWays() {
        return !minus.isBlank();
    }

    /**
     * A way of doing it.
     *
     * @param wanted its name; empty for the usual one
     * @return the way, or nothing if there is none of that name
     */
    public Optional<Variant> variant(String wanted) {
        return wanted.isBlank()
                ? Optional.of(variants.get(0))
                : variants.stream().filter(v -> v.name().equals(wanted)).findFirst();
    }

    /**
     * Begins an entry.
     *
     * @param name its name
     * @param family the part of the wardrobe
     * @param stage when it is done
     * @param on the pieces that must be there
     * @return what the entry is written with
     */
    public static EntryBuilder named(String name, Family family, Stage stage, PieceKind... on) {
        return named(name, family, stage, Set.of(on));
    }

    /**
     * Begins an entry.
     *
     * @param name its name
     * @param family the part of the wardrobe
     * @param stage when it is done
     * @param on the pieces that must be there
     * @return what the entry is written with
     */
    public static EntryBuilder named(String name, Family family, Stage stage, Set<PieceKind> on) {
        return new EntryBuilder(name, family, stage, on);
    }
}
