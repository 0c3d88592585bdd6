package trueseam.output.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Packs boxes in shelves, the tallest first, each into the first shelf that has room (first fit by decreasing height: Coffman,
 * Garey, Johnson and Tarjan, SIAM J. Comput. 9, 1980, p. 808). Boxes are not turned.
 */
public final class Shelves {

    /**
     * A box to be packed.
     *
     * @param name tells it again
     * @param width rightwards, mm
     * @param height downwards, mm
     */
    public record Box(String name, double width, double height) {}

    /**
     * Where a box lies.
     *
     * @param box the box
     * @param sheet on which sheet, counted from 0
     * @param right from the sheet's left side to the box's, mm
     * @param down from the sheet's upper side to the box's, mm
     */
    public record Spot(Box box, int sheet, double right, double down) {}

    private static final class Shelf {
        private final int sheet;
        private final double down;
        private final double height;
        private double right;

        Shelf(int sheet, double down, double height) {
            this.sheet = sheet;
            this.down = down;
            this.height = height;
        }
    }

    private Shelves() {}

    /**
     * Packs boxes, none of which is larger than a sheet.
     *
     * @param boxes the boxes
     * @param width width of a sheet, mm
     * @param height height of a sheet, mm
     * @return a spot for each box, the tallest first
     */
    public static List<Spot> pack(List<Box> boxes, double width, double height) {
        List<Box> sorted = new ArrayList<>(boxes);
        sorted.sort(Comparator.comparingDouble(Box::height).reversed());
        List<Shelf> shelves = new ArrayList<>();
        List<Spot> spots = new ArrayList<>();
        for (Box box : sorted) {
            Shelf shelf = null;
            for (Shelf s : shelves) {
                if (s.right + box.width() <= width && box.height() <= s.height) {
                    shelf = s;
                    break;
                }
            }
            if (shelf == null) {
                shelf = open(shelves, box.height(), height);
                shelves.add(shelf);
            }
            spots.add(new Spot(box, shelf.sheet, shelf.right, shelf.down));
            shelf.right += box.width();
        }
        return spots;
    }

    private static Shelf open(List<Shelf> shelves, double needed, double height) {
        double[] used = new double[shelves.size() + 1];
        int sheets = 0;
        for (Shelf s : shelves) {
            used[s.sheet] = Math.max(used[s.sheet], s.down + s.height);
            sheets = Math.max(sheets, s.sheet + 1);
        }
        for (int sheet = 0; sheet < sheets; sheet++) {
            if (used[sheet] + needed <= height) {
                return new Shelf(sheet, used[sheet], needed);
            }
        }
        return new Shelf(sheets, 0, needed);
    }
}
