package trueseam.cloth.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.goods.Stuff;
import trueseam.cloth.packing.Way;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;

/** Which pieces are laid, how often, and how they may lie (rules: common practice). */
final class ClothParts {

    private final Cloth cloth;
    private final LayWishes wishes;
    private final List<Finding> findings;
    private final List<ClothPart> parts = new ArrayList<>();
    private Optional<Matching> matching = Optional.empty();

    private ClothParts(Cloth cloth, LayWishes wishes, List<Finding> findings) {
        this.cloth = cloth;
        this.wishes = wishes;
        this.findings = findings;
    }

    static List<ClothPart> of(Pattern pattern, Cloth cloth, Stuff stuff, LayWishes wishes, List<Finding> findings) {
        if (!cloth.flaws().isEmpty() && cloth.layers() == Layers.CROSSWISE) {
            throw new LayException(
                    "cloth",
                    "Flaws cannot be gone round where the cloth is folded crosswise; lay it in a single layer.");
        }
        List<String> names = pattern.pieces().stream().map(Piece::name).toList();
        for (String name : wishes.only()) {
            if (!names.contains(name)) {
                throw new LayException(
                        name, "The pattern has no such piece; its pieces are " + String.join(", ", names) + ".");
            }
        }
        ClothParts made = new ClothParts(cloth, wishes, findings);
        List<Piece> pieces = pattern.pieces().stream()
                .filter(p ->
                        wishes.only().isEmpty() ? stuff.takes(p) : wishes.only().contains(p.name()))
                .toList();
        List<Seam> matched = matched(pattern, wishes);
        if (cloth.striped()) {
            if (wishes.tiltDegrees() > 0) {
                findings.add(Finding.note("cloth", "Stripes show every tilt: no piece is turned off the grain."));
            }
            made.matching = Optional.of(Matching.of(pieces, matched, findings));
        }
        pieces.forEach(made::add);
        if (made.parts.isEmpty()) {
            throw new LayException(
                    "pattern",
                    "No piece of it is cut from " + stuff.word() + "; its pieces are "
                            + pattern.pieces().stream()
                                    .map(p -> p.name() + " (" + p.kind().word() + ")")
                                    .collect(Collectors.joining(", "))
                            + ". Name the pieces that are.");
        }
        return made.parts;
    }

    /** The seams at which stripes run on: all, or those that were named. */
    private static List<Seam> matched(Pattern pattern, LayWishes wishes) {
        for (String name : wishes.matched().orElse(Set.of())) {
            if (pattern.seams().stream().noneMatch(s -> s.name().equals(name))) {
                throw new LayException(
                        name,
                        "The pattern has no such seam; its seams are "
                                + pattern.seams().stream().map(Seam::name).collect(Collectors.joining(", ")) + ".");
            }
        }
        return pattern.seams().stream()
                .filter(s ->
                        wishes.matched().map(names -> names.contains(s.name())).orElse(true))
                .toList();
    }

    private void add(Piece piece) {
        int count = piece.cutCount();
        boolean fold = piece.fold().isPresent();
        if (FoldLine.withGrain(piece) && cloth.layers() == Layers.LENGTHWISE) {
            parts.add(ClothPart.of(piece, CutForm.AT_FOLD, count, false, atFold(), match(piece)));
            return;
        }
        CutForm form = fold ? CutForm.OPENED : CutForm.DRAWN;
        if (cloth.layers() == Layers.SINGLE) {
            // A whole piece is its own mirror image; of others one half of the copies lies on its face.
            int up = fold ? count : (count + 1) / 2;
            parts.add(ClothPart.of(piece, form, up, false, ways(false, false), match(piece)));
            if (count > up) {
                parts.add(ClothPart.of(piece, form, count - up, false, ways(true, false), match(piece)));
            }
            return;
        }
        if (count >= 2) {
            parts.add(ClothPart.of(piece, form, count / 2, false, ways(false, !fold), match(piece)));
        }
        if (count % 2 == 1) {
            findings.add(
                    Finding.note(
                            piece.name(),
                            "One is cut of cloth that lies double: the other layer under it is left over. A single layer may take less."));
            parts.add(ClothPart.of(piece, form, 1, true, ways(false, !fold), match(piece)));
        }
    }

    private Optional<StripeMatch> match(Piece piece) {
        return matching.flatMap(m -> m.of(piece));
    }

    private List<Way> atFold() {
        // Head to tail at the fold: on its face and turned round.
        return cloth.headsUp() ? List.of(Way.UPRIGHT) : List.of(Way.UPRIGHT, new Way(180, true));
    }

    /** On its face or not or either; head to tail where the cloth has no way up; tilted where it may be. */
    private List<Way> ways(boolean faceDown, boolean either) {
        List<Way> ways = new ArrayList<>();
        double most = tiltDegrees();
        List<Double> tilts = most == 0 ? List.of(0.0) : List.of(0.0, most, -most, most / 2, -most / 2);
        for (double turn : cloth.headsUp() ? List.of(0.0) : List.of(0.0, 180.0)) {
            for (double tilt : tilts) {
                ways.add(new Way(turn + tilt, faceDown));
                if (either) {
                    ways.add(new Way(turn + tilt, !faceDown));
                }
            }
        }
        return ways;
    }

    /** Stripes show every tilt: on them nothing is tilted (common practice). */
    private double tiltDegrees() {
        return cloth.striped() ? 0 : wishes.tiltDegrees();
    }
}
