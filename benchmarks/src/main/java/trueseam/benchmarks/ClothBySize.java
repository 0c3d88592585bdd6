package trueseam.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.CutLength;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.goods.Stuff;
import trueseam.cloth.lay.Lay;
import trueseam.cloth.lay.LayWishes;
import trueseam.cloth.lay.Laying;
import trueseam.cloth.need.ClothNeed;
import trueseam.cloth.packing.Patience;
import trueseam.cloth.proof.LayProof;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.size.SizeRow;
import trueseam.intake.size.SizeTables;
import trueseam.output.words.ClothWords;

/**
 * How does the length of cloth that a garment takes grow with its size? A dress with its sleeve and trousers, drafted for every size of the misses'
 * table, laid on plain cloth of the usual widths, folded lengthwise, or in a single layer where half the width is too narrow; every layout is
 * proved. Writes the picture docs/pictures/cloth-by-size.svg and prints the table of docs/cloth.md. Arguments: the picture's file, and the rounds
 * of each search.
 */
public final class ClothBySize {

    private static final long SEED = 1;

    private ClothBySize() {}

    /**
     * The lengths of one garment on cloth of one width.
     *
     * @param widthMm the width, mm
     * @param lengthsMm the length needed in each size, mm
     * @param single the sizes that are laid in a single layer
     */
    record Growth(double widthMm, List<Double> lengthsMm, List<String> single) {}

    /**
     * Runs.
     *
     * @param args the picture's file and the rounds of each search
     * @throws IOException if the picture cannot be written
     */
    public static void main(String[] args) throws IOException {
        int rounds = Integer.parseInt(args[1]);
        List<String> sizes =
                SizeTables.named("misses").rows().stream().map(SizeRow::size).toList();
        List<ClothBySizePicture.Panel> panels = new ArrayList<>();
        for (Garment garment : List.of(Garment.dress, Garment.trousers)) {
            List<Growth> all = new ArrayList<>();
            for (double width : ClothNeed.USUAL_WIDTHS_MM) {
                all.add(growth(garment, width, sizes, rounds));
            }
            panels.add(new ClothBySizePicture.Panel(title(garment), all));
            table(garment, sizes, all);
        }
        Files.writeString(Path.of(args[0]), new ClothBySizePicture(sizes, panels).svg());
    }

    private static String title(Garment garment) {
        return garment == Garment.dress ? "Dress to the hip, with its sleeve" : "Trousers";
    }

    private static Growth growth(Garment garment, double widthMm, List<String> sizes, int rounds) {
        List<Double> lengths = new ArrayList<>();
        List<String> single = new ArrayList<>();
        for (String size : sizes) {
            var figure = DraftFigure.of(SizeTables.named("misses"), size);
            var pattern = garment.draft(figure, Allowances.inches());
            Cloth cloth = Cloth.plain(widthMm, Layers.LENGTHWISE);
            Lay lay = Laying.asItFits(pattern, cloth, Stuff.FASHION, LayWishes.usual())
                    .search(SEED, Patience.rounds(rounds), found -> {});
            if (!LayProof.faults(lay).isEmpty()) {
                throw new IllegalStateException(garment + " " + size + " on " + widthMm + ": " + LayProof.faults(lay));
            }
            lengths.add(lay.neededMm());
            if (lay.cloth().layers() != cloth.layers()) {
                single.add(size);
            }
        }
        return new Growth(widthMm, lengths, single);
    }

    /** In cm as it is needed, and in what is bought. */
    private static void table(Garment garment, List<String> sizes, List<Growth> all) {
        StringBuilder text =
                new StringBuilder("\n| " + title(garment) + ", size | " + String.join(" | ", sizes) + " |\n|---|");
        text.append("---|".repeat(sizes.size())).append('\n');
        for (Growth growth : all) {
            text.append("| ").append(ClothBySizePicture.width(growth.widthMm())).append(" wide | ");
            text.append(row(sizes, growth)).append(" |\n");
        }
        System.out.println(text);
    }

    private static String row(List<String> sizes, Growth growth) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            double mm = growth.lengthsMm().get(i);
            cells.add(ClothWords.buy(CutLength.FIVE_CM.roundUpMm(mm), LengthFormat.centimetres()) + ", "
                    + yards(CutLength.EIGHTH_YARD.roundUpMm(mm))
                    + (growth.single().contains(sizes.get(i)) ? " *" : ""));
        }
        return String.join(" | ", cells);
    }

    static String yards(double mm) {
        return ClothWords.buy(mm, LengthFormat.usual(LengthUnit.INCH));
    }
}
