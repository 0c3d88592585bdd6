package trueseam.fitting.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.fitting.compare.Need;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.measure.MeasureKind;

/**
 * Shares each change over the cut edges: four for a girth at two side seams, two for a sleeve, the full amount on every piece for a
 * length, each piece's own share for a crotch length (common practice).
 */
public final class Sharing {

    /** The most that is simply drawn at an edge: 1/2 in; more wants another size line or an opening inside the piece (CP). */
    public static final double MOST_AT_AN_EDGE_MM = 12.7;

    private Sharing() {}

    /**
     * Over how many cut edges girths are shared.
     *
     * @param body of front and back: four where each has one side edge
     * @param sleeve of the sleeve: two where it has one seam
     */
    public record Edges(int body, int sleeve) {
        String word() {
            return body > SIDE_EDGES ? "edges of the seams from top to bottom" : "side edges";
        }
    }

    private static final int SIDE_EDGES = 4;

    private static final int ONE_SEAM = 2;

    /**
     * The shares of all changes of a chart, of a garment with a sleeve of one seam or none.
     *
     * @param needs the chart
     * @param sideEdges cut edges at the side seams, 4 where front and back have one each
     * @param kind the garment
     * @return the changes in the order of work
     */
    public static List<Change> changes(List<Need> needs, int sideEdges, GarmentKind kind) {
        return changes(needs, new Edges(sideEdges, ONE_SEAM), kind);
    }

    /**
     * The shares of all changes of a chart.
     *
     * @param needs the chart
     * @param edges over how many cut edges girths are shared
     * @param kind the garment
     * @return the changes in the order of work
     */
    public static List<Change> changes(List<Need> needs, Edges edges, GarmentKind kind) {
        Map<Measure, Change> byMeasure = new EnumMap<>(Measure.class);
        for (Need need : needs) {
            if (need.decision().isAltered()) {
                byMeasure.put(need.measure(), change(need, edges, kind));
            }
        }
        List<Change> ordered = new ArrayList<>();
        for (Measure measure : ORDER) {
            if (byMeasure.containsKey(measure)) {
                ordered.add(byMeasure.remove(measure));
            }
        }
        ordered.addAll(byMeasure.values());
        return List.copyOf(ordered);
    }

    static final List<Measure> ORDER = List.of(
            Measure.BACK_WAIST_LENGTH,
            Measure.SKIRT_LENGTH,
            Measure.DRESS_LENGTH,
            Measure.BODY_RISE,
            Measure.INSIDE_LEG_LENGTH,
            Measure.TROUSER_LENGTH,
            Measure.UPPER_ARM_LENGTH,
            Measure.ARM_LENGTH,
            Measure.FRONT_CROTCH_LENGTH,
            Measure.BACK_CROTCH_LENGTH,
            Measure.BUST_GIRTH,
            Measure.WAIST_GIRTH,
            Measure.HIP_GIRTH,
            Measure.UPPER_ARM_GIRTH,
            Measure.WRIST_GIRTH);

    private static Change change(Need need, Edges edges, GarmentKind kind) {
        double total = need.decision().amountMm();
        Measure measure = need.measure();
        if (measure == Measure.UPPER_ARM_GIRTH || measure == Measure.WRIST_GIRTH) {
            return new Change(measure, total, edges.sleeve(), edges.sleeve() + " sleeve edges");
        }
        if (measure == Measure.BUST_GIRTH || measure == Measure.WAIST_GIRTH || measure == Measure.HIP_GIRTH) {
            return new Change(measure, total, edges.body(), edges.body() + " " + edges.word());
        }
        if (measure == Measure.FRONT_CROTCH_LENGTH || measure == Measure.BACK_CROTCH_LENGTH) {
            return new Change(measure, total, 1, "its own piece, left and right alike");
        }
        Optional<Entry> entry =
                WorkOrder.isByRepertoire(kind, measure) ? Repertoire.solving(kind, measure) : Optional.empty();
        return new Change(measure, total, 1, entry.map(Entry::sharing).orElse("the full amount on every piece"));
    }

    /**
     * What to say of shares that are large.
     *
     * @param changes the changes
     * @param show how lengths are written
     * @return a warning for each girth that takes more than half an inch at an edge
     */
    public static List<Finding> warnings(List<Change> changes, LengthFormat show) {
        List<Finding> findings = new ArrayList<>();
        for (Change change : changes) {
            boolean girth = change.measure().kind() == MeasureKind.GIRTH && change.edges() > 1;
            if (girth && Math.abs(change.perEdgeMm()) > MOST_AT_AN_EDGE_MM + 1e-9) {
                findings.add(Finding.warning(
                        change.measure().term(),
                        show.show(Math.abs(change.perEdgeMm())) + " at each edge is more than "
                                + show.show(MOST_AT_AN_EDGE_MM)
                                + " (common practice); consider the next size line at this level, or opening the piece inside,"
                                + " and sew a trial garment in any case."));
            }
        }
        return findings;
    }
}
