package trueseam.output.cloth;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trueseam.cloth.goods.CutLength;
import trueseam.cloth.lay.LaidPiece;
import trueseam.cloth.lay.Lay;
import trueseam.cloth.need.WidthNeed;

/** A layout in figures, all lengths in millimetres. */
public final class LayJson {

    private LayJson() {}

    /**
     * The figures.
     *
     * @param lay the layout
     * @param needs what other widths need
     * @param seed where chance began
     * @param rounds after how many rounds of the search it was found
     * @param shop in what steps the cloth is cut
     * @return names and values in order
     */
    public static Map<String, Object> of(Lay lay, List<WidthNeed> needs, long seed, int rounds, CutLength shop) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("stuff", lay.stuff().word());
        json.put("clothWidthMm", lay.cloth().widthMm());
        json.put("layers", lay.cloth().layers().words());
        json.put("oneWay", lay.cloth().oneWay());
        json.put("neededMm", rounded(lay.neededMm()));
        json.put("buyMm", rounded(shop.roundUpMm(lay.toBuyMm())));
        json.put("leftOverMm", rounded(lay.leftOverMm(shop)));
        json.put("density", Math.round(lay.density() * 1e4) / 1e4);
        json.put("seed", seed);
        json.put("rounds", rounds);
        List<Map<String, Object>> pieces = new ArrayList<>();
        for (LaidPiece piece : lay.pieces()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("piece", piece.part().piece().name());
            one.put(
                    "form",
                    piece.part()
                            .form()
                            .name()
                            .toLowerCase(java.util.Locale.ROOT)
                            .replace('_', ' '));
            one.put("turnDegrees", piece.placed().way().turnDegrees());
            one.put("faceDown", piece.placed().way().mirrored());
            List<Map<String, Object>> ends = new ArrayList<>();
            for (LayPlaces.GrainEnd end : LayPlaces.ends(lay, piece)) {
                Map<String, Object> e = new LinkedHashMap<>();
                e.put("alongMm", rounded(end.alongMm()));
                e.put("acrossMm", rounded(end.acrossMm()));
                e.put("from", end.from());
                ends.add(e);
            }
            one.put("grainEnds", ends);
            pieces.add(one);
        }
        json.put("pieces", pieces);
        List<Map<String, Object>> widths = new ArrayList<>();
        for (WidthNeed need : needs) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("widthMm", rounded(need.widthMm()));
            need.needed().ifPresent(n -> {
                one.put("neededMm", rounded(n.neededMm()));
                one.put("buyMm", rounded(n.toBuyMm(shop)));
                one.put("density", Math.round(n.density() * 1e4) / 1e4);
            });
            if (need.needed().isEmpty()) {
                one.put("why", need.why());
            }
            widths.add(one);
        }
        json.put("widths", widths);
        json.put(
                "findings",
                lay.findings().stream()
                        .map(f -> f.place() + ": " + f.sentence())
                        .toList());
        return json;
    }

    private static double rounded(double mm) {
        return Math.round(mm * 100) / 100.0;
    }
}
