package trueseam.checks;

import java.util.ArrayList;
import java.util.List;
import trueseam.drafting.Allowances;
import trueseam.drafting.Bands;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.PanelledShells;
import trueseam.drafting.Shells;
import trueseam.drafting.SleevedShells;
import trueseam.garment.pattern.Pattern;
import trueseam.intake.size.SizeTables;

/** The drafted garments that the checks alter. */
final class DraftedGarments {

    private static final double COLLAR_MM = 76.2;

    private DraftedGarments() {}

    /** Bodice, dress, skirt and trousers in sizes of the misses' table. */
    static List<Pattern> inSizes(String... sizes) {
        List<Pattern> all = new ArrayList<>();
        for (String size : sizes) {
            DraftFigure figure = DraftFigure.of(SizeTables.named("misses"), size);
            DraftEase ease = DraftEase.fitted();
            all.add(Shells.bodice(figure, ease));
            all.add(Shells.dress(figure, ease));
            all.add(Shells.skirt(figure, ease));
            all.add(Shells.trousers(figure, ease));
        }
        return all;
    }

    /** Garments with what others have in one piece in parts: princess bodice, two-piece sleeve, yoke, gored skirt; kimono and raglan. */
    static List<Pattern> inParts(String... sizes) {
        List<Pattern> all = new ArrayList<>();
        for (String size : sizes) {
            DraftFigure figure = DraftFigure.of(SizeTables.named("misses"), size);
            DraftEase ease = DraftEase.fitted();
            all.add(PanelledShells.princess(figure, ease, Allowances.inches()));
            all.add(PanelledShells.twoPieceSleeve(figure, ease, Allowances.inches()));
            all.add(PanelledShells.yoke(figure, ease, Allowances.inches()));
            all.add(PanelledShells.gored(figure, ease, Allowances.inches()));
            all.addAll(notSetIn(size));
        }
        return all;
    }

    /** Bodices whose sleeves are not set in: kimono and raglan. */
    static List<Pattern> notSetIn(String... sizes) {
        List<Pattern> all = new ArrayList<>();
        for (String size : sizes) {
            DraftFigure figure = DraftFigure.of(SizeTables.named("misses"), size);
            all.add(SleevedShells.kimono(figure, DraftEase.fitted(), Allowances.inches()));
            all.add(SleevedShells.raglan(figure, DraftEase.fitted(), Allowances.inches()));
        }
        return all;
    }

    /** Bodices with a shaped collar. */
    static List<Pattern> withCollar(String... sizes) {
        List<Pattern> all = new ArrayList<>();
        for (String size : sizes) {
            DraftFigure figure = DraftFigure.of(SizeTables.named("misses"), size);
            all.add(Bands.withCollar(Shells.bodice(figure, DraftEase.fitted()), COLLAR_MM));
        }
        return all;
    }
}
