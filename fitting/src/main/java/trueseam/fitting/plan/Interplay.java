package trueseam.fitting.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.fitting.alteration.Alteration;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.finding.Finding;
import trueseam.garment.flat.FlatMeasure;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Vec;

/**
 * What alterations do to each other: two that move the same line opposite ways, and one that already does part of another's work.
 * Found by carrying each out alone on the original pattern, never from a table of pairs.
 */
final class Interplay {

    /** Where along each edge it is looked at how far it went. */
    private static final double[] SHARES = {0, 0.25, 0.5, 0.75, 1};

    /** Two movements fight if what is common to them is opposite, by at least this share of the smaller one. */
    private static final double FIGHT_SHARE = 0.5;

    /** A smaller movement is no fight: 1 mm on the average of the places looked at. */
    private static final double LEAST_MM = 1;

    private final Pattern pattern;
    private final LengthFormat show;
    private final List<Alone> alone = new ArrayList<>();

    /** An alteration by itself: how far the places of each edge go, and what the measures become. */
    private record Alone(Alteration alteration, Map<String, List<Vec>> moved, Pattern after) {}

    private Interplay(Pattern pattern, LengthFormat show) {
        this.pattern = pattern;
        this.show = show;
    }

    /**
     * What is to be said of a plan.
     *
     * @param pattern the pattern before
     * @param alterations the plan
     * @param targets the measures whose amount was found by measuring, with what each is to be, mm
     * @param show how lengths are written
     * @return warnings of fights, notes of what was counted once; none where no alteration was asked for by name
     */
    static List<Finding> findings(
            Pattern pattern, List<Alteration> alterations, Map<Measure, Double> targets, LengthFormat show) {
        if (alterations.stream().noneMatch(alteration -> alteration instanceof Applied)) {
            return List.of();
        }
        Interplay interplay = new Interplay(pattern, show);
        for (Alteration alteration : alterations) {
            Pattern after = WorkedPattern.of(pattern)
                    .then(alteration.title(), alteration.work(pattern), false)
                    .altered();
            interplay.alone.add(new Alone(alteration, moved(pattern, after), after));
        }
        List<Finding> findings = new ArrayList<>(interplay.fights());
        findings.addAll(interplay.countedOnce(targets));
        return findings;
    }

    private static Map<String, List<Vec>> moved(Pattern before, Pattern after) {
        Map<String, List<Vec>> moved = new LinkedHashMap<>();
        for (Piece piece : before.pieces()) {
            Piece other = after.piece(piece.name());
            for (Edge edge : piece.edges()) {
                Edge now = other.edge(edge.name());
                List<Vec> all = new ArrayList<>();
                for (double share : SHARES) {
                    all.add(now.path()
                            .pointAt(share * now.length())
                            .minus(edge.path().pointAt(share * edge.length())));
                }
                moved.put(piece.name() + ", " + edge.name(), all);
            }
        }
        return moved;
    }

    private List<Finding> fights() {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < alone.size(); i++) {
            for (int j = i + 1; j < alone.size(); j++) {
                boolean named = alone.get(i).alteration() instanceof Applied
                        || alone.get(j).alteration() instanceof Applied;
                if (named) {
                    fight(alone.get(i), alone.get(j)).ifPresent(findings::add);
                }
            }
        }
        return findings;
    }

    private static Optional<Finding> fight(Alone one, Alone other) {
        double common = 0;
        double ofOne = 0;
        double ofOther = 0;
        double worst = 0;
        String where = "";
        int looked = 0;
        for (Map.Entry<String, List<Vec>> edge : one.moved().entrySet()) {
            double here = 0;
            for (int k = 0; k < SHARES.length; k++) {
                Vec a = edge.getValue().get(k);
                Vec b = other.moved().get(edge.getKey()).get(k);
                if (a.length() > LEAST_MM && b.length() > LEAST_MM) {
                    here += a.dot(b);
                    ofOne += a.dot(a);
                    ofOther += b.dot(b);
                    looked++;
                }
            }
            common += here;
            if (here < worst) {
                worst = here;
                where = edge.getKey();
            }
        }
        if (looked == 0 || common > -FIGHT_SHARE * Math.min(ofOne, ofOther)) {
            return Optional.empty();
        }
        return Optional.of(
                Finding.warning(
                        where,
                        "\"" + one.alteration().title() + "\" and \""
                                + other.alteration().title()
                                + "\" move this line opposite ways; keep one of them, or see on the trial garment which is needed."));
    }

    /** What a named alteration gives a measure that another one is solved for. */
    private List<Finding> countedOnce(Map<Measure, Double> targets) {
        List<Finding> findings = new ArrayList<>();
        Map<Measure, Double> before = new EnumMap<>(Measure.class);
        for (Measure measure : targets.keySet()) {
            FlatPattern.measure(pattern, measure).ifPresent(flat -> before.put(measure, flat.mm()));
        }
        for (Alone one : alone) {
            boolean named = one.alteration() instanceof Applied applied
                    && !applied.entry().solved();
            for (Map.Entry<Measure, Double> measure : before.entrySet()) {
                Optional<FlatMeasure> after = FlatPattern.measure(one.after(), measure.getKey());
                double given = after.map(FlatMeasure::mm).orElse(measure.getValue()) - measure.getValue();
                if (named && Math.abs(given) > LEAST_MM) {
                    findings.add(
                            Finding.note(
                                    measure.getKey().term(),
                                    "\"" + one.alteration().title() + "\" already gives " + show.showSigned(given)
                                            + " of the "
                                            + show.showSigned(targets.get(measure.getKey()) - measure.getValue())
                                            + " that is wanted; it is counted once, and the rest comes from the other change."));
                }
            }
        }
        return findings;
    }
}
