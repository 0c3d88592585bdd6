package trueseam.worktable.cloth;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.CutLength;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.lay.CutForm;
import trueseam.cloth.lay.LaidPiece;
import trueseam.cloth.lay.Lay;
import trueseam.cloth.proof.LayFault;
import trueseam.garment.length.LengthFormat;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.convert.PathData;
import trueseam.output.cloth.LayPlaces;
import trueseam.output.words.ClothWords;
import trueseam.output.words.MeasureWords;
import trueseam.output.words.RulerLength;
import trueseam.worktable.project.ClothPart.Lengths;
import trueseam.worktable.project.ClothPart.Width;

/**
 * The pieces on the cloth as the screen shows them.
 *
 * @param picture the drawing of the cloth
 * @param pieces the pieces
 * @param length how long the cloth must be
 * @param facts more about it, in sentences
 * @param state how the layout came about
 * @param faults what is wrong with it, in sentences
 * @param notes what is doubtful
 * @param held how many pieces lie there by hand
 * @param widths what other widths need; empty until it was worked out
 * @param change the altered pieces beside the original ones; empty until it was worked out
 */
public record LaidView(
        ClothPicture picture,
        List<PieceOnCloth> pieces,
        String length,
        List<String> facts,
        String state,
        List<String> faults,
        List<String> notes,
        int held,
        List<WidthRow> widths,
        List<WidthRow> change) {

    /**
     * A piece on the cloth.
     *
     * @param at its place in the list
     * @param number its number in the picture
     * @param name its name
     * @param lies how it lies, in words
     * @param data its cutting line as path data, y down
     * @param grain its grainline as path data, y down
     * @param x the middle, for its name
     * @param y the middle, down
     * @param wide how wide its name may be, mm
     * @param byHand whether it lies there by hand
     * @param faceDown whether it lies on its face
     * @param atFold whether it lies at the fold and only slides along
     * @param faulty whether something is wrong with it
     * @param ends both ends of its grainline
     */
    public record PieceOnCloth(
            int at,
            int number,
            String name,
            String lies,
            String data,
            String grain,
            double x,
            double y,
            double wide,
            boolean byHand,
            boolean faceDown,
            boolean atFold,
            boolean faulty,
            List<PinnedEnd> ends) {}

    /**
     * One end of a grainline, as it is pinned.
     *
     * @param x where, mm
     * @param y where, down
     * @param footY where the line is that it is measured from, down
     * @param along from the end of the cloth
     * @param across from the line
     * @param from what the line is called
     */
    public record PinnedEnd(double x, double y, double footY, String along, String across, String from) {}

    /**
     * How much one width needs.
     *
     * @param label the width, or which pieces
     * @param needed the length of washed cloth
     * @param buy how much to buy
     * @param garment which part becomes garment
     * @param why why a piece does not fit; else empty
     */
    public record WidthRow(String label, String needed, String buy, String garment, String why) {}

    static LaidView of(Plan plan, LengthFormat show) {
        Lay lay = plan.lay();
        List<LayFault> faults = plan.faults();
        Set<Integer> faulty = new HashSet<>();
        faults.forEach(f -> faulty.addAll(f.pieces()));
        List<PieceOnCloth> pieces = new ArrayList<>();
        for (int i = 0; i < lay.pieces().size(); i++) {
            pieces.add(piece(lay, i, faulty.contains(i), show));
        }
        int held = (int) pieces.stream().filter(PieceOnCloth::byHand).count();
        Lengths lengths = plan.choices().one().lengths();
        boolean known = lengths.task().equals(plan.laying().mark());
        return new LaidView(
                ClothPicture.of(lay, show),
                pieces,
                length(lay, show),
                facts(lay, show),
                state(plan, held),
                TryAnswer.sentences(plan, faults, show),
                ClothWords.notes(lay, show).stream().map(MeasureWords::capital).toList(),
                held,
                known
                        ? lengths.widths().stream()
                                .map(w -> row(ClothWords.sold(w.width()), w, show))
                                .toList()
                        : List.of(),
                known ? change(lengths, show) : List.of());
    }

    private static PieceOnCloth piece(Lay lay, int at, boolean faulty, LengthFormat show) {
        LaidPiece piece = lay.pieces().get(at);
        RulerLength ruler = new RulerLength(show);
        Bounds box = piece.cutting().bounds();
        Point middle = box.centre();
        return new PieceOnCloth(
                at,
                at + 1,
                piece.part().piece().name(),
                LayPlaces.how(piece, lay.cloth().layers()),
                PathData.drawn(piece.cutting()),
                PathData.drawn(Path.through(piece.grainFrom(), piece.grainTo())),
                middle.x(),
                -middle.y(),
                box.width(),
                lay.byHand(piece),
                piece.placed().way().mirrored(),
                piece.part().form() == CutForm.AT_FOLD,
                faulty,
                LayPlaces.ends(lay, piece).stream()
                        .map(e -> new PinnedEnd(
                                e.at().x(),
                                -e.at().y(),
                                -e.foot().y(),
                                ruler.show(e.alongMm()),
                                ruler.show(e.acrossMm()),
                                e.from()))
                        .toList());
    }

    /** Needed and to buy. */
    static String length(Lay lay, LengthFormat show) {
        CutLength shop = ClothWords.shop(show);
        return "Needs " + show.show(lay.neededMm()) + ", buy " + ClothWords.buy(shop.roundUpMm(lay.toBuyMm()), show);
    }

    private static List<String> facts(Lay lay, LengthFormat show) {
        Cloth cloth = lay.cloth();
        List<String> facts = new ArrayList<>();
        facts.add(show.show(cloth.widthMm()) + " wide, " + cloth.layers().words()
                + (cloth.headsUp() ? ", all pieces one way up" : "") + ".");
        if (cloth.layers() == Layers.CROSSWISE) {
            facts.add("The picture shows the upper layer; the cloth is twice as long.");
        }
        if (cloth.shrinkLength() > 0) {
            facts.add("What is bought shrinks to what is needed: wash it before you lay the pieces.");
        }
        facts.add(String.format(Locale.ROOT, "%.0f %% of it becomes garment.", 100 * lay.density()));
        facts.add("Left over: " + show.show(lay.leftOverMm(ClothWords.shop(show)))
                + (cloth.haveMm().isPresent() ? " of the length that you have." : " of what the shop cuts."));
        return facts;
    }

    private static String state(Plan plan, int held) {
        String hand = held == 0
                ? ""
                : " " + held + (held == 1 ? " piece is" : " pieces are") + " held where you put "
                        + (held == 1 ? "it." : "them.");
        if (!plan.kept()) {
            return "A first layout, made at once; search for a shorter one." + hand;
        }
        int rounds = plan.choices().one().rounds();
        return (rounds == 0
                        ? "Laid by hand."
                        : "Found after " + rounds + (rounds == 1 ? " round" : " rounds") + " from seed "
                                + plan.choices().seed() + ".")
                + hand;
    }

    private static WidthRow row(String label, Width w, LengthFormat show) {
        if (!w.why().isEmpty()) {
            return new WidthRow(label, "", "", "", w.why());
        }
        CutLength shop = ClothWords.shop(show);
        return new WidthRow(
                label,
                show.show(w.needed()),
                ClothWords.buy(shop.roundUpMm(w.toBuy()), show),
                String.format(Locale.ROOT, "%.0f %%", 100 * w.density()),
                "");
    }

    private static List<WidthRow> change(Lengths lengths, LengthFormat show) {
        List<WidthRow> rows = new ArrayList<>();
        lengths.original().forEach(w -> rows.add(row("as bought", w, show)));
        lengths.altered().forEach(w -> rows.add(row("as altered", w, show)));
        return rows;
    }
}
