package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Vec;

/**
 * A collar cut across at three places from one of its long edges to hinges on the other, and spread or lapped there.
 *
 * <pre>{@code
 *   still |    / |    / |    / /      Each part swings about its hinge and carries with it
 *         |   /  |   /  |   /  /      all that lies beyond; the end at the fold lies still.
 *         |__h___|__h___|__h__/
 * }</pre>
 */
final class CollarCuts {

    private static final List<String> CUTS = List.of("first", "second", "third");

    /** How much of the opened edge is drawn new on either side of a cut, beside what laps, mm. */
    private static final double BESIDE_MM = 6;

    /** A cut opens no farther than this share of its own length: beyond it the hinge would show as a corner. */
    private static final double MOST_SHARE = 0.2;

    private final StepList list;
    private final Piece piece;
    private final Edge opened;
    private final Edge hinged;
    private final Edge farEnd;

    private CollarCuts(StepList list, Piece piece, boolean outer) {
        if (piece.edges().size() != 4) {
            throw new AlterationException(
                    piece.name(),
                    "outer edge",
                    0,
                    "a collar has a neck edge, an outer edge and two ends, and "
                            + piece.edges().size() + " edges were found; name its edges so.");
        }
        Edge neck = piece.only(EdgeRole.NECK);
        int i = piece.indexOf(neck.name());
        Edge after = piece.edges().get((i + 1) % 4);
        Edge across = piece.edges().get((i + 2) % 4);
        Edge before = piece.edges().get((i + 3) % 4);
        this.list = list;
        this.piece = piece;
        this.opened = outer ? across : neck;
        this.hinged = outer ? neck : across;
        this.farEnd = isStill(piece, after) || !isStill(piece, before) ? before : after;
    }

    static CollarCuts fromOuterEdge(StepList list, Piece piece) {
        return new CollarCuts(list, piece, true);
    }

    static CollarCuts fromNeckEdge(StepList list, Piece piece) {
        return new CollarCuts(list, piece, false);
    }

    /** Of a whole amount, what one piece takes: half where it is a half on the fold. */
    static double share(Piece piece) {
        return piece.fold().isPresent() ? 0.5 : 1;
    }

    /** The end on the fold lies still; without a fold the centre. */
    private static boolean isStill(Piece piece, Edge end) {
        return piece.fold().map(fold -> fold.equals(end.name())).orElse(end.role() == EdgeRole.CENTRE);
    }

    void spread(double mm) {
        double each = share(piece) * mm / CUTS.size();
        double drawn = Math.abs(each) / 2 + BESIDE_MM;
        List<Place> cuts = new ArrayList<>();
        List<Place> hinges = new ArrayList<>();
        double apart = 1.0 / (CUTS.size() + 1);
        for (String which : CUTS) {
            Place cut = fromStill(opened, (cuts.size() + 1) * apart, word(opened) + " at the " + which + " cut");
            Place hinge = opposite(cut, which, mm);
            double across = cut.on(piece).distanceTo(hinge.on(piece));
            if (Math.abs(each) > MOST_SHARE * across || 2 * drawn > apart * opened.length()) {
                throw new AlterationException(
                        piece.name(),
                        opened.name(),
                        mm,
                        "so much would bend the collar in corners at its hinges; take less, or cut the collar new to its neck.");
            }
            cuts.add(cut);
            hinges.add(hinge);
        }
        Place far = new Place(farEnd.name(), farEnd.length() / 2, farEnd.name());
        for (int i = 0; i < cuts.size(); i++) {
            Place cut = cuts.get(i);
            Place hinge = hinges.get(i);
            list.cut(CUTS.get(i) + " part", cut, List.of(), hinge, far);
            list.add(new Step.Spread(Spot.of(piece, hinge), until(cut, each)));
            boolean last = i + 1 == cuts.size();
            list.trace(beyond(cut, drawn), last ? end(opened) : beyond(cuts.get(i + 1), -drawn));
            if (last) {
                list.trace(farEnd.name(), 0, farEnd.length());
            }
            list.trace(hinge, last ? end(hinged) : hinges.get(i + 1));
            list.join(beyond(cut, -drawn), beyond(cut, drawn), JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
        }
    }

    /** Across the collar from a cut, square to its edge. */
    private Place opposite(Place cut, String which, double mm) {
        Vec square = opened.path().tangentAt(cut.alongMm()).left();
        return hinged.path().crossings(cut.on(piece), square).stream()
                .findFirst()
                .map(at -> new Place(hinged.name(), at.alongMm(), which + " hinge"))
                .orElseThrow(() -> new AlterationException(
                        piece.name(),
                        hinged.name(),
                        mm,
                        "it does not lie opposite the " + opened.name() + "; name the edges of the collar."));
    }

    /** Away from the end that lies still, along the edge as it runs there. */
    private Until until(Place cut, double mm) {
        Vec away = opened.path().tangentAt(cut.alongMm()).times(runsFromStill(opened) ? 1 : -1);
        Spot spot = Spot.of(piece, cut);
        return Math.abs(away.x()) >= Math.abs(away.y())
                ? new Until.MovesAcross(spot, mm * away.x())
                : new Until.MovesAlong(spot, mm * away.y());
    }

    private static String word(Edge edge) {
        return edge.name().endsWith("edge") ? edge.name() : edge.name() + " edge";
    }

    private boolean runsFromStill(Edge edge) {
        return edge.path().end().isNear(farEnd.path().start(), 1e-6)
                || edge.path().end().isNear(farEnd.path().end(), 1e-6);
    }

    private Place fromStill(Edge edge, double share, String word) {
        return new Place(edge.name(), (runsFromStill(edge) ? share : 1 - share) * edge.length(), word);
    }

    private Place beyond(Place place, double mm) {
        return new Place(place.edge(), place.alongMm() + (runsFromStill(opened) ? mm : -mm), place.word());
    }

    private Place end(Edge edge) {
        return fromStill(edge, 1, edge.name() + " at the " + farEnd.name());
    }
}
