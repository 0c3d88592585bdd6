package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.geometry.Bounds;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.DrawingException;

/** Puts the pages of a file together. One file, one thread. */
public final class Tiles {

    /** So much larger than the others, a page is a sheet for the copy shop. */
    private static final double LARGE = 3;

    private static final int MOST_PAGES = 500;

    private final String file;
    private final TileChoices choices;
    private final List<Page> skipped = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private Tiles(String file, TileChoices choices) {
        this.file = file;
        this.choices = choices;
    }

    /**
     * Puts pages together.
     *
     * @param file what the file is called, for messages
     * @param pages all its pages; at least one has lines
     * @param choices what is said about them
     * @return the whole sheet
     * @throws DrawingException if it cannot be known how they go together, or what is said does not go with them
     */
    public static Together of(String file, List<Page> pages, TileChoices choices) {
        return new Tiles(file, choices).together(pages);
    }

    private Together together(List<Page> pages) {
        List<Page> tiles = choices.layout().isPresent() && choices.layout().get() instanceof TileChoices.Rows rows
                ? named(pages, rows)
                : drawn(pages);
        if (tiles.size() == 1) {
            return alone(tiles.get(0));
        }
        if (tiles.size() > MOST_PAGES) {
            throw new DrawingException(
                    file,
                    "",
                    "It has " + tiles.size() + " pages with lines, more than any pattern; choose one with --page.");
        }
        Furniture furniture = Furniture.of(tiles);
        List<Page> without = covers(tiles, furniture);
        if (!without.isEmpty()) {
            skip(without, "without what the other pages have (frame, marks, label): a cover or an overview");
            tiles = tiles.stream().filter(p -> !without.contains(p)).toList();
            if (tiles.size() == 1) {
                return alone(tiles.get(0));
            }
            furniture = Furniture.of(tiles);
        }
        return together(tiles, furniture);
    }

    private Together together(List<Page> tiles, Furniture furniture) {
        List<Leaf> leaves = new ArrayList<>();
        for (Page page : tiles) {
            leaves.add(new Leaf(
                    page,
                    page.lines().stream()
                            .filter(l -> l.isSeen() && !furniture.holds(l))
                            .toList()));
        }
        if (leaves.stream().allMatch(l -> l.lines().isEmpty())) {
            throw new DrawingException(
                    file,
                    "",
                    "Its " + tiles.size()
                            + " pages with lines are all alike, so that nothing on them is taken for the pattern;"
                            + " choose one with --page.");
        }
        Bounds window = Window.of(leaves);
        Edges edges = new Edges(leaves, window);
        Arranger arranger = new Arranger(edges, new Distances(leaves, window, furniture), choices.overlapMm());
        List<Labels.Found> labels = Labels.of(tiles);
        Arrangement laid = choices.layout().isPresent()
                ? said(arranger, tiles, choices.layout().get())
                : arranger.found(labels).orElseThrow(() -> unknown(tiles, arranger.nearest(labels)));
        List<Page> lone = choices.layout().isPresent() ? List.of() : first(laid, tiles, furniture);
        if (!lone.isEmpty()) {
            skip(lone, "first, and meeting no other page: a cover or an overview");
            return without(lone, tiles);
        }
        Set<Caption> words = new HashSet<>(Sheet.edgeWords(leaves));
        labels.forEach(l -> words.addAll(l.captions()));
        Sheet.Laid sheet = Sheet.of(leaves, edges, laid, words, furniture);
        Joints.Joined joined = Joints.of(sheet.parts());
        List<Page> small = choices.layout().isPresent() ? List.of() : overviews(laid, leaves, joined);
        if (!small.isEmpty()) {
            skip(small, "the pattern at a small scale, an overview");
            return without(small, tiles);
        }
        tell(laid, tiles, joined);
        return new Together(joined.strokes(), sheet.captions(), findings, skipped);
    }

    private Together without(List<Page> left, List<Page> tiles) {
        List<Page> rest = tiles.stream().filter(p -> !left.contains(p)).toList();
        return rest.size() == 1 ? alone(rest.get(0)) : together(rest, Furniture.of(rest));
    }

    /** Of the pages that meet no other: those that show all once more, small. */
    private static List<Page> overviews(Arrangement laid, List<Leaf> leaves, Joints.Joined joined) {
        return laid.blocks().stream()
                .filter(block -> block.size() == 1 && laid.blocks().size() > 1)
                .map(block -> leaves.get(block.keySet().iterator().next()))
                .filter(leaf -> Overview.isOne(leaf, joined.strokes()))
                .map(Leaf::page)
                .toList();
    }

    private Together alone(Page page) {
        findings.add(Finding.note(
                "page " + page.number(),
                String.format(
                        Locale.ROOT,
                        "The sheet is %.0f by %.0f mm; check a printed dimension before you cut.",
                        page.widthMm(),
                        page.heightMm())));
        List<Caption> captions = new ArrayList<>(page.captions());
        captions.addAll(page.unseen());
        return new Together(page.lines().stream().map(Inked::stroke).toList(), captions, findings, skipped);
    }

    private List<Page> named(List<Page> pages, TileChoices.Rows rows) {
        List<Page> named = new ArrayList<>();
        for (int number : rows.rows().stream().flatMap(List::stream).toList()) {
            if (number > pages.size()) {
                throw new DrawingException(
                        file, "", "It has " + pages.size() + " pages; --tiles names page " + number + ".");
            }
            if (number > 0) {
                named.add(pages.get(number - 1));
            }
        }
        skip(pages.stream().filter(p -> !named.contains(p)).toList(), "not named by --tiles");
        return named;
    }

    /** Pages with lines, of one size. */
    private List<Page> drawn(List<Page> pages) {
        skip(pages.stream().filter(p -> !p.hasLines() && p.pictures() > 0).toList(), "pictures, which have no lines");
        skip(pages.stream().filter(p -> !p.hasLines() && p.pictures() == 0).toList(), "words only, or nothing");
        Map<String, List<Page>> sizes = new LinkedHashMap<>();
        for (Page page : pages) {
            if (page.hasLines()) {
                sizes.computeIfAbsent(
                                Math.round(page.widthMm()) + " by " + Math.round(page.heightMm()) + " mm",
                                k -> new ArrayList<>())
                        .add(page);
            }
        }
        List<List<Page>> groups = new ArrayList<>(sizes.values());
        groups.sort(Comparator.comparingInt((List<Page> g) -> -g.size()));
        List<Page> most = groups.get(0);
        for (List<Page> group : groups) {
            if (area(group) > LARGE * area(most)) {
                most = group;
            }
        }
        List<Page> chosen = most;
        skip(
                pages.stream().filter(p -> p.hasLines() && !chosen.contains(p)).toList(),
                "another size than the "
                        + (chosen.size() == 1
                                ? "sheet taken, page " + chosen.get(0).number()
                                : "pages of the pattern")
                        + " (" + Math.round(chosen.get(0).widthMm()) + " by "
                        + Math.round(chosen.get(0).heightMm()) + " mm)");
        return chosen;
    }

    private static double area(List<Page> group) {
        return group.get(0).widthMm() * group.get(0).heightMm();
    }

    private void skip(List<Page> pages, String why) {
        if (!pages.isEmpty()) {
            skipped.addAll(pages);
            String which = PageNumbers.words(pages.stream().map(Page::number).toList());
            findings.add(Finding.note(which, "Left out: " + why + "."));
        }
    }

    /** Pages that have nothing of what most pages have: frame, marks, label. */
    private static List<Page> covers(List<Page> tiles, Furniture furniture) {
        List<Page> bare = tiles.stream().filter(p -> !furniture.isOn(p)).toList();
        boolean furnished = !furniture.isEmpty() && bare.size() <= 0.4 * tiles.size();
        Set<Page> covers = new LinkedHashSet<>(furnished ? bare : List.of());
        List<Page> rest = tiles.stream().filter(p -> !covers.contains(p)).toList();
        List<Labels.Found> labels = Labels.of(rest);
        if (!labels.isEmpty()) {
            rest.stream()
                    .filter(page -> labels.stream()
                            .noneMatch(found -> page.captions().stream().anyMatch(found.captions()::contains)))
                    .forEach(covers::add);
        }
        return List.copyOf(covers);
    }

    /** Without frames, marks and labels: what comes first and meets no other page, where others do meet. */
    private static List<Page> first(Arrangement laid, List<Page> tiles, Furniture furniture) {
        if (!furniture.isEmpty() || laid.met().met() == 0) {
            return List.of();
        }
        Set<Integer> single = new HashSet<>();
        laid.blocks().stream().filter(b -> b.size() == 1).forEach(b -> single.addAll(b.keySet()));
        List<Page> lone = new ArrayList<>();
        for (int i = 0; single.contains(i); i++) {
            lone.add(tiles.get(i));
        }
        return lone;
    }

    private Arrangement said(Arranger arranger, List<Page> tiles, TileChoices.Layout layout) {
        List<Grid> grids = new ArrayList<>();
        String how = "as you said";
        if (layout instanceof TileChoices.Size size) {
            if (tiles.size() > size.across() * size.down()) {
                throw new DrawingException(
                        file,
                        "",
                        "It has " + tiles.size() + " pages with lines, more than " + size.across() + " x " + size.down()
                                + "; name each page, such as --tiles \"2 3 4 / 5 6 -\".");
            }
            grids.add(new Grid(Grid.inOrder(tiles.size(), size.across(), true).cells(), how));
            grids.add(new Grid(Grid.inOrder(tiles.size(), size.down(), false).cells(), how));
        } else if (layout instanceof TileChoices.Rows rows) {
            Map<Integer, Cell> cells = new HashMap<>();
            for (int r = 0; r < rows.rows().size(); r++) {
                for (int c = 0; c < rows.rows().get(r).size(); c++) {
                    int number = rows.rows().get(r).get(c);
                    for (int i = 0; i < tiles.size(); i++) {
                        if (tiles.get(i).number() == number) {
                            cells.put(i, new Cell(r, c));
                        }
                    }
                }
            }
            grids.add(Grid.of(cells, how));
        }
        return arranger.said(grids).orElseThrow();
    }

    private DrawingException unknown(List<Page> tiles, Met met) {
        return new DrawingException(
                file,
                "",
                String.format(
                        Locale.ROOT,
                        "How its %d pages with lines go together cannot be told: of the lines that run over their edges, %d go on"
                                + " in another page and %d ends meet nothing. Say it with --tiles, such as --tiles \"4x3\" (4"
                                + " across, 3 down) or --tiles \"1 2 3 / 4 5 -\" (page numbers, row by row) and --overlap, or"
                                + " choose one page with --page.",
                        tiles.size(),
                        met.met(),
                        met.missed() + met.loose()));
    }

    private void tell(Arrangement laid, List<Page> tiles, Joints.Joined joined) {
        String which = PageNumbers.words(tiles.stream().map(Page::number).toList());
        boolean sure = laid.holds(0.9);
        Optional<Map<Integer, Cell>> largest = laid.blocks().stream().findFirst();
        Grid grid = Grid.of(largest.orElseThrow(), "");
        int lone = laid.blocks().size() - 1;
        int empty = grid.rows() * grid.columns() - grid.cells().size();
        String lie = grid.cells().size() == 1
                ? tiles.size() + " pages that no line joins lie side by side"
                : grid.cells().size() + " pages are put together as " + count(grid.rows(), "row") + " of "
                        + grid.columns()
                        + (empty > 0 ? ", with " + count(empty, "empty place") : "")
                        + (lone > 0
                                ? "; " + count(tiles.size() - grid.cells().size(), "page")
                                        + " that no line joins to these lie beside them"
                                : "");
        findings.add(new Finding(
                sure ? Severity.NOTE : Severity.WARNING,
                which,
                String.format(
                        Locale.ROOT,
                        "%s, by %s (%.0f in 100 sure), %.1f mm from page to page across and %.1f mm down.%s",
                        lie,
                        laid.how(),
                        100 * laid.met().share(),
                        laid.steps().right(),
                        laid.steps().down(),
                        sure ? "" : " Look at the result; say it better with --tiles and --overlap.")));
        if (laid.steps().doubt()) {
            findings.add(Finding.warning(
                    which,
                    "Lines run so square over the edges between pages, without marks, that it cannot be told how far the pages"
                            + " overlap; look at the paper, and say --overlap with it, or --overlap \"0 mm\"."));
        }
        findings.add(new Finding(
                joined.open() > 1 ? Severity.WARNING : Severity.NOTE,
                which,
                String.format(
                        Locale.ROOT,
                        "Lines go on over the edges between pages at %d places and meet within %.2f mm; %d %s"
                                + " nothing there. Check a printed dimension before you cut.",
                        joined.joins(),
                        Math.ceil(joined.widestMm() * 100) / 100,
                        joined.open(),
                        joined.open() == 1 ? "end meets" : "ends meet")));
    }

    private static String count(int n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }
}
