package trueseam.intake.naming;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Vec;

/**
 * Proposes what an outline is. Every known kind of piece is laid on it in every way that makes one of its straight lines upright or
 * level, on both faces, its edges dealt out to the stretches between corners; the least unlike wins. What is written in the piece counts.
 */
public final class Naming {

    /** Directions nearer than this are tried once. */
    private static final double SAME_RAD = Math.toRadians(1.5);

    /** So like a usual piece, when laid by its grainline, that other ways of laying it are not tried. */
    private static final double GOOD = 0.8;

    /** A line is straight if its bulge is below this. */
    private static final double STRAIGHT = 0.02;

    /** A word that names the kind outright, and one that names another. */
    private static final double SAID = 0.8;

    /** How much unlikeness makes the one kind e times as likely as the other: fitted on drafted pieces of every size. */
    private static final double UNLIKENESS_FOR_E = 0.12;

    /** No known piece takes more: six edges of {@value Laid#LONGEST_RUN} stretches each. */
    private static final int MOST_CORNERS = 30;

    private final List<KnownPiece> known;

    private Naming(List<KnownPiece> known) {
        this.known = known;
    }

    /**
     * With what is known of the kinds that can be told by their shape.
     *
     * @return ready to propose; may be used by several threads
     */
    public static Naming usual() {
        return new Naming(KnownPiece.all());
    }

    /**
     * Proposes what an outline is.
     *
     * @param outline the outline
     * @return the likeliest, or nothing where it has too few corners for any kind
     */
    public Optional<Proposal> propose(Outline outline) {
        return propose(outline, known, List.of());
    }

    /**
     * Proposes which edge is which, where the kind is known.
     *
     * @param outline the outline
     * @param kind what it is
     * @return the likeliest naming, or nothing where the kind is not known by its shape or the outline has too few corners for it
     */
    public Optional<Proposal> propose(Outline outline, PieceKind kind) {
        return propose(outline, kind, List.of());
    }

    /**
     * Proposes which edge is which, where the kind is known and some edges are: the others are dealt out beside those.
     *
     * @param outline the outline
     * @param kind what it is
     * @param said which stretches of its line are which edges
     * @return the likeliest naming, or nothing where the kind is not known by its shape or the outline has too few corners for it
     */
    public Optional<Proposal> propose(Outline outline, PieceKind kind, List<SaidStretch> said) {
        return propose(outline, known.stream().filter(k -> k.kind() == kind).toList(), said);
    }

    /**
     * Proposes what an outline is, where it can only be one of some kinds.
     *
     * @param outline the outline
     * @param kinds what it can be
     * @return the likeliest of them, or nothing where none of them is known by its shape or the outline has too few corners
     */
    public Optional<Proposal> propose(Outline outline, Set<PieceKind> kinds) {
        return propose(
                outline, known.stream().filter(k -> kinds.contains(k.kind())).toList(), List.of());
    }

    private static Optional<Proposal> propose(Outline outline, List<KnownPiece> candidates, List<SaidStretch> said) {
        List<InnerDart> darts = outline.darts();
        List<Double> corners = corners(outline, darts, said);
        if (corners.size() < 3 || corners.size() > MOST_CORNERS) {
            return Optional.empty();
        }
        // A grainline or a level says how the piece hangs to the degree; its own straight edges only nearly.
        List<Ranked> byGrain = ranked(outline, corners, darts.size(), candidates, drawn(outline), said);
        boolean good = !byGrain.isEmpty() && byGrain.get(0).fit().unlike() < GOOD;
        List<Ranked> ranked =
                good ? byGrain : ranked(outline, corners, darts.size(), candidates, straight(outline, corners), said);
        if (!byGrain.isEmpty()
                && (ranked.isEmpty() || byGrain.get(0).rank() < ranked.get(0).rank())) {
            ranked = byGrain;
        }
        return ranked.isEmpty() ? Optional.empty() : Optional.of(proposal(ranked));
    }

    /** Where it turns, and where what was said ends; corners inside what was said are no ends of edges. */
    private static List<Double> corners(Outline outline, List<InnerDart> darts, List<SaidStretch> said) {
        List<Double> corners = new ArrayList<>(Corners.of(outline, darts));
        double around = outline.line().length();
        for (SaidStretch stretch : said) {
            corners.removeIf(at -> stretch.holds(at, around));
            for (double end : List.of(stretch.fromMm(), stretch.toMm())) {
                boolean there = corners.stream().anyMatch(at -> {
                    double apart = SaidStretch.ahead(at, end, around);
                    return Math.min(apart, around - apart) < SaidStretch.SAME_MM;
                });
                if (!there) {
                    corners.add(end);
                }
            }
        }
        corners.sort(Comparator.naturalOrder());
        return corners;
    }

    private static List<Ranked> ranked(
            Outline outline,
            List<Double> corners,
            int darts,
            List<KnownPiece> candidates,
            List<Double> directions,
            List<SaidStretch> said) {
        Map<PieceKind, Fit> best = new TreeMap<>();
        for (boolean mirrored : new boolean[] {false, true}) {
            for (double turn : turns(directions, mirrored)) {
                Laid laid = Laid.of(outline.line(), corners, mirrored, turn);
                List<List<EdgeShape>> shapes = laid.shapes();
                List<Optional<SaidStretch>> ofStretch = laid.said(said, corners.get(0));
                for (KnownPiece piece : candidates) {
                    Fit.best(piece, laid, shapes, ofStretch, ofPiece(piece, laid, darts))
                            .ifPresent(
                                    fit -> best.merge(piece.kind(), fit, (a, b) -> a.unlike() <= b.unlike() ? a : b));
                }
            }
        }
        return best.values().stream()
                .map(fit -> new Ranked(
                        fit,
                        fit.unlike()
                                + SAID
                                        * Words.against(
                                                outline.words(), fit.known().kind())))
                .sorted(Comparator.comparingDouble(Ranked::rank))
                .toList();
    }

    private static double ofPiece(KnownPiece piece, Laid laid, int darts) {
        Bounds bounds = laid.line().bounds();
        return (piece.aspect().off(Math.log(bounds.width() / Math.max(1e-6, bounds.height())))
                        + piece.around().off(Math.log(laid.line().length()))
                        + piece.darts().off(darts))
                / 3;
    }

    /** Directions of long straight lines drawn inside. */
    private static List<Double> drawn(Outline outline) {
        List<Double> directions = new ArrayList<>();
        for (Path inside : outline.inside()) {
            Vec chord = inside.end().minus(inside.start());
            if (chord.length() > 80 && inside.length() < 1.001 * chord.length()) {
                directions.add(chord.angle());
            }
        }
        return directions;
    }

    /** Directions of its straight edges. */
    private static List<Double> straight(Outline outline, List<Double> corners) {
        List<Double> directions = new ArrayList<>();
        Laid plain = Laid.of(outline.line(), corners, false, 0);
        for (int i = 0; i < plain.stretches(); i++) {
            Path run = plain.run(i, 1);
            Vec chord = run.end().minus(run.start());
            if (run.length() > 40 && run.length() < (1 + STRAIGHT) * chord.length()) {
                directions.add(chord.angle());
            }
        }
        return directions;
    }

    /** Turns that make one of the directions upright or level. */
    private static List<Double> turns(List<Double> directions, boolean mirrored) {
        List<Double> turns = new ArrayList<>();
        for (double direction : directions) {
            double lies = mirrored ? Math.PI - direction : direction;
            for (int quarter = 0; quarter < 4; quarter++) {
                double turn = Math.IEEEremainder(quarter * Math.PI / 2 - lies, 2 * Math.PI);
                if (turns.stream().noneMatch(t -> Math.abs(Math.IEEEremainder(t - turn, 2 * Math.PI)) < SAME_RAD)) {
                    turns.add(turn);
                }
            }
        }
        return turns;
    }

    /** What is written counts for the order, not for how unlike the shape is. */
    private record Ranked(Fit fit, double rank) {

        /** How likely it is against another one. */
        double likelier(Ranked best) {
            return Math.exp((best.rank - rank) / UNLIKENESS_FOR_E);
        }
    }

    private static Proposal proposal(List<Ranked> ranked) {
        Fit fit = ranked.get(0).fit();
        double all = 0;
        for (Ranked other : ranked) {
            all += other.likelier(ranked.get(0));
        }
        double sure = 1 / all * Math.exp(-Math.max(0, fit.unlike() - 1.5) / 2);
        List<Proposal.NamedEdge> edges = new ArrayList<>();
        int at = fit.first();
        for (int k = 0; k < fit.counts().size(); k++) {
            KnownPiece.KnownEdge edge = fit.known().edges().get(k);
            Path path = fit.laid().run(at % fit.laid().stretches(), fit.counts().get(k));
            at += fit.counts().get(k);
            // As sure as its shape is usual, and as the kinds that it may be agree about it.
            double agreed = 0;
            for (Ranked other : ranked) {
                agreed += other.likelier(ranked.get(0)) / all * other.fit().agrees(fit, k);
            }
            double edgeSure = agreed * Math.exp(-Math.max(0, fit.each().get(k) - 1) / 3);
            Parting.of(edge, path)
                    .forEach(part -> edges.add(new Proposal.NamedEdge(
                            part.words().name(), part.words().role(), part.path(), edgeSure)));
        }
        List<PieceKind> others = ranked.stream()
                .skip(1)
                .filter(other -> other.rank() < ranked.get(0).rank() + 1)
                .map(other -> other.fit().known().kind())
                .toList();
        return new Proposal(
                fit.known().kind(),
                fit.unlike(),
                sure,
                fit.laid().mirrored(),
                fit.laid().turn(),
                edges,
                others);
    }

    /** What the words in a piece say of its kind. */
    private static final class Words {

        private static final Map<String, List<String>> MEANINGS = Map.of(
                "front", List.of("front"),
                "back", List.of("back"),
                "sleeve", List.of("sleeve"),
                "skirt", List.of("skirt"),
                "trouser", List.of("trouser", "trousers", "pant", "pants", "leg"),
                "bodice", List.of("bodice", "blouse", "top", "shirt"),
                "dress", List.of("dress", "tunic"),
                "yoke", List.of("yoke"),
                "kimono", List.of("kimono"),
                "raglan", List.of("raglan"));

        private Words() {}

        /** 0 where nothing speaks against the kind; 1 for every word of another kind; less than 0 where a word names it. */
        static double against(List<String> words, PieceKind kind) {
            List<String> said = words.stream()
                    .flatMap(text -> java.util.Arrays.stream(
                            text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+")))
                    .toList();
            double against = 0;
            for (Map.Entry<String, List<String>> meaning : MEANINGS.entrySet()) {
                boolean isSaid = meaning.getValue().stream().anyMatch(said::contains);
                boolean isOf = kind.word().contains(meaning.getKey());
                if (isSaid) {
                    against += isOf ? -0.5 : 1;
                }
            }
            return against;
        }
    }
}
