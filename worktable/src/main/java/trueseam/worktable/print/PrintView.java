package trueseam.worktable.print;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.geometry.convert.PathData;
import trueseam.geometry.convert.Subpath;
import trueseam.output.drawing.PdfPages;
import trueseam.output.print.FullSizePrint;
import trueseam.output.print.Paper;
import trueseam.output.print.PrintMap;
import trueseam.output.print.PrintedLine;
import trueseam.output.print.Tile;
import trueseam.worktable.page.Visit;
import trueseam.worktable.work.Outcome;

/**
 * What the Print screen shows.
 *
 * @param papers what can be printed on
 * @param strips whether strips are chosen
 * @param roll the width of the roll as it was typed
 * @param lines the lines that can be printed
 * @param label what is printed for the person
 * @param problem what is wrong with the choices; else empty
 * @param rollWrong whether it is the roll's width
 * @param sheet the pages, or why there are none
 * @param cautions what speaks against cutting
 * @param files what can be taken away
 * @param worn whether the garment was worn, or its trial garment tried on, and found right
 */
public record PrintView(
        List<Choice> papers,
        boolean strips,
        String roll,
        List<Choice> lines,
        String label,
        String problem,
        boolean rollWrong,
        Outcome<Pages> sheet,
        List<String> cautions,
        List<File> files,
        boolean worn) {

    /**
     * Something to choose.
     *
     * @param word its word in the form
     * @param label what it is called
     * @param about more of it
     * @param chosen whether it is chosen
     */
    public record Choice(String word, String label, String about, boolean chosen) {}

    /**
     * A file to take away.
     *
     * @param word its word in the address
     * @param name what the file is called
     * @param label what it is
     * @param about more of it
     * @param problem why it cannot be made; else empty
     */
    public record File(String word, String name, String label, String about, String problem) {}

    /**
     * The pages and the one that is looked at.
     *
     * @param count how many
     * @param said how many, of what, in a sentence
     * @param shown which page is looked at, counted from 1
     * @param label what that page is called
     * @param viewBox the map's room
     * @param letterMm how large letters are on the map, mm
     * @param tiles the pages on the map
     * @param pieces the pieces on the map
     */
    public record Pages(
            int count,
            String said,
            int shown,
            String label,
            String viewBox,
            double letterMm,
            List<OnMap> tiles,
            List<Shape> pieces) {}

    /**
     * A page on the map; x to the right and y down, mm.
     *
     * @param page its number in the file
     * @param label what it is called
     * @param x left
     * @param y top
     * @param width width
     * @param height height
     */
    public record OnMap(int page, String label, double x, double y, double width, double height) {}

    /**
     * A piece on the map.
     *
     * @param name its name
     * @param data its outline as path data, y up
     * @param x middle of its name
     * @param y middle of its name, down
     */
    public record Shape(String name, String data, double x, double y) {}

    /** The map is drawn in about this room, in pixels of the style sheet; letters on it are so large that they can be read. */
    private static final double MAP_WIDE_PX = 640;

    private static final double MAP_HIGH_PX = 500;
    private static final double LETTER_PX = 14;

    static PrintView of(Visit visit) {
        Printing printing = new Printing(visit.workings());
        PrintChoices choices = printing.choices();
        Outcome<FullSizePrint> print = printing.pieces();
        Outcome<Pages> sheet = choices.strips() ? strips(printing, visit) : pieces(printing, print, visit);
        return new PrintView(
                papers(choices),
                choices.strips(),
                choices.roll(),
                lines(choices.lines()),
                choices.label(),
                choices.problem(),
                choices.paperWrong(),
                sheet,
                cautions(printing),
                files(printing, print, visit),
                choices.worn());
    }

    private static List<Choice> papers(PrintChoices choices) {
        List<Choice> all = new ArrayList<>();
        all.add(paper("a4", "A4", "210 × 297 mm", choices));
        all.add(paper("letter", "US Letter", "8 1/2 × 11 in", choices));
        all.add(paper("a3", "A3", "297 × 420 mm", choices));
        all.add(paper("a0", "A0", "841 × 1189 mm, from a copy shop", choices));
        all.add(paper("roll", "Off a roll", "one long sheet, from a plotter", choices));
        return all;
    }

    private static Choice paper(String word, String label, String about, PrintChoices choices) {
        return new Choice(word, label, about, word.equals(choices.paper()));
    }

    private static List<Choice> lines(Set<PrintedLine> chosen) {
        return Arrays.stream(PrintedLine.values())
                .map(line -> new Choice(
                        line.name().toLowerCase(Locale.ROOT), label(line), about(line), chosen.contains(line)))
                .toList();
    }

    private static String label(PrintedLine line) {
        return switch (line) {
            case STITCHING -> "Stitching lines";
            case CUTTING -> "Cutting lines";
            case ORIGINAL -> "The pattern as it was";
            case ALTERED -> "The pattern as altered";
        };
    }

    private static String about(PrintedLine line) {
        return switch (line) {
            case STITCHING -> "broken: where it is sewn";
            case CUTTING -> "solid: with the seam allowances";
            case ORIGINAL -> "fine and grey, where it differs";
            case ALTERED -> "what you cut";
        };
    }

    private static List<String> cautions(Printing printing) {
        List<String> all = new ArrayList<>();
        printing.fit().value().ifPresent(fit -> {
            if (fit.schematic()) {
                all.add(
                        "You have a paper pattern: the pieces here only show the steps, do not cut them. Print the step sheet"
                                + " and the chart, and alter your own tissue by them.");
            }
            if (!fit.report().holds()) {
                all.add("Not every proof holds: page one of the print says which. Do not cut yet; see the Chart.");
            }
        });
        if (!printing.fit().isThere() && !printing.fit().missing()) {
            all.add(printing.fit().sentence());
        }
        return all;
    }

    private static Outcome<Pages> pieces(Printing printing, Outcome<FullSizePrint> print, Visit visit) {
        return print.isThere()
                ? Outcome.of(pages(
                        print.get().map(),
                        printing.choices().options().orElseThrow().paper(),
                        visit))
                : print.reason();
    }

    private static Pages pages(PrintMap map, Paper paper, Visit visit) {
        List<OnMap> tiles = new ArrayList<>();
        for (Bounds cover : map.cover()) {
            tiles.add(onMap(1, "test squares", cover));
        }
        for (Tile tile : map.tiles()) {
            boolean first = map.cover().isEmpty() && tile.page() == 1;
            String label = map.tiles().size() == 1 ? "all pieces" : tile.label();
            tiles.add(onMap(tile.page(), first ? label + ", test squares" : label, tile.cell()));
        }
        Bounds all = map.all().grown(0.01 * map.all().width());
        int shown = shown(visit, map.pages());
        return new Pages(
                map.pages(),
                said(map, paper),
                shown,
                tiles.stream()
                        .filter(tile -> tile.page() == shown)
                        .map(OnMap::label)
                        .findFirst()
                        .orElse(""),
                viewBox(all),
                letterMm(all.width(), all.height()),
                tiles,
                map.pieces().stream().map(piece -> shape(piece, map.tiles())).toList());
    }

    private static String said(PrintMap map, Paper paper) {
        int n = map.tiles().size();
        String sheets = paper instanceof Paper.Roll
                ? (n == 1 ? paper.name() : n + " sheets, each " + paper.name())
                : n + (n == 1 ? " sheet of " : " sheets of ") + paper.name();
        long rows = map.tiles().stream().mapToInt(Tile::row).distinct().count();
        long columns = map.tiles().stream().mapToInt(Tile::column).distinct().count();
        String grid =
                n > 1 ? ", put together in " + rows + (rows == 1 ? " row" : " rows") + " of up to " + columns : "";
        return map.cover().isEmpty()
                ? "One file: " + sheets + grid + "."
                : map.pages() + " pages: page 1 with the test squares, then " + sheets + grid + ".";
    }

    private static double letterMm(double wideMm, double highMm) {
        return LETTER_PX / Math.min(MAP_WIDE_PX / wideMm, MAP_HIGH_PX / highMm);
    }

    /** Names stand half way down a page, where no number is. */
    private static Shape shape(PrintMap.Outline outline, List<Tile> tiles) {
        Point middle = outline.path().bounds().centre();
        double y = tiles.stream()
                .map(Tile::cell)
                .filter(cell -> tiles.size() > 1 && cell.minY() <= middle.y() && middle.y() <= cell.maxY())
                .mapToDouble(cell -> cell.centre().y())
                .findFirst()
                .orElse(middle.y());
        return new Shape(outline.piece(), PathData.write(new Subpath(outline.path(), true)), middle.x(), -y);
    }

    private static OnMap onMap(int page, String label, Bounds at) {
        return new OnMap(page, label, at.minX(), -at.maxY(), at.width(), at.height());
    }

    private static String viewBox(Bounds all) {
        return PathData.number(all.minX()) + " " + PathData.number(-all.maxY()) + " " + PathData.number(all.width())
                + " " + PathData.number(all.height());
    }

    /** Strips come page by page, with nothing to put together but the tissue itself. */
    private static Outcome<Pages> strips(Printing printing, Visit visit) {
        Outcome<byte[]> pdf = printing.strips();
        if (!pdf.isThere()) {
            return pdf.reason();
        }
        int count = PdfPages.count(pdf.get());
        double width = printing.choices().sheets().widthMm();
        double height = printing.choices().sheets().heightMm();
        int columns = Math.min(4, count);
        List<OnMap> tiles = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double left = i % columns * 1.1 * width;
            double top = Math.floorDiv(i, columns) * 1.1 * height;
            tiles.add(new OnMap(i + 1, i == 0 ? "test squares" : "strips", left, top, width, height));
        }
        double wide = (columns - 1) * 1.1 * width + width;
        double high = Math.floorDiv(count - 1, columns) * 1.1 * height + height;
        int shown = shown(visit, count);
        String paper = printing.choices().paper().equals("letter") ? "US Letter" : "A4";
        return Outcome.of(new Pages(
                count,
                count + (count == 1 ? " page of " : " pages of ") + paper + ", the first with the test squares.",
                shown,
                tiles.get(shown - 1).label(),
                viewBox(new Bounds(-2, -high - 2, wide + 2, 2)),
                letterMm(wide, high),
                tiles,
                List.of()));
    }

    private static int shown(Visit visit, int count) {
        try {
            int asked = Integer.parseInt(visit.asked("page"));
            return 1 <= asked && asked <= count ? asked : 1;
        } catch (NumberFormatException e) {
            return 1;
        }
    }

    private static List<File> files(Printing printing, Outcome<FullSizePrint> print, Visit visit) {
        return Arrays.stream(Leaf.values())
                .map(leaf -> new File(
                        leaf.word(),
                        leaf.fileName(visit.project().name(), printing.choices().paper()),
                        leaf.label(),
                        leaf.about(),
                        problem(leaf, printing, print)))
                .toList();
    }

    private static String problem(Leaf leaf, Printing printing, Outcome<FullSizePrint> print) {
        if (leaf == Leaf.PRINT) {
            return print.isThere() ? "" : print.sentence();
        }
        if (!printing.fit().isThere()) {
            return printing.fit().sentence();
        }
        return leaf == Leaf.STRIPS ? printing.choices().problem() : "";
    }

    /**
     * Whether it is printed off a roll.
     *
     * @return true if its width matters
     */
    public boolean isRoll() {
        return papers.stream().anyMatch(paper -> paper.chosen() && paper.word().equals("roll"));
    }

    /**
     * Whether no file can be made yet.
     *
     * @return true before there is a pattern
     */
    public boolean isNothingToTake() {
        return sheet.missing()
                && files.stream().noneMatch(file -> file.problem().isEmpty());
    }

    /**
     * Which page is before the shown one.
     *
     * @return the page, if there is one
     */
    public Optional<Integer> before() {
        return sheet.value().map(Pages::shown).filter(page -> page > 1).map(page -> page - 1);
    }

    /**
     * Which page is after the shown one.
     *
     * @return the page, if there is one
     */
    public Optional<Integer> after() {
        return sheet.value().filter(pages -> pages.shown() < pages.count()).map(pages -> pages.shown() + 1);
    }

    /**
     * The names of the pieces, for those who do not see the map.
     *
     * @return in one line
     */
    public String pieceNames() {
        return sheet.value()
                .map(pages -> pages.pieces().stream().map(Shape::name).collect(Collectors.joining(", ")))
                .orElse("");
    }
}
