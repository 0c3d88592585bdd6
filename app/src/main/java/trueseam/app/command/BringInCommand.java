package trueseam.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trueseam.app.input.InputException;
import trueseam.app.input.Json;
import trueseam.app.input.NamesOption;
import trueseam.app.input.NestOption;
import trueseam.app.input.OutputFiles;
import trueseam.app.input.Texts;
import trueseam.app.input.UnitsOption;
import trueseam.garment.length.Length;
import trueseam.garment.pattern.PieceKind;
import trueseam.intake.bring.BringChoices;
import trueseam.intake.bring.Brought;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.dxf.RuleTable;
import trueseam.intake.file.DrawingFiles;
import trueseam.intake.file.ReadChoices;
import trueseam.intake.grade.Grading;
import trueseam.intake.patternfile.PatternFile;
import trueseam.intake.tiles.TileChoices;

/** Brings a drawing that somebody made in as a pattern. */
@Command(
        name = "bring-in",
        description =
                "Bring a drawing in as a pattern: its pieces and edges are named as far as can be told, and what was"
                        + " guessed is said.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Examples:",
            "  trueseam bring-in blouse.svg --out blouse-pattern.svg",
            "  trueseam bring-in blouse.svg --write-names --out blouse-pattern.svg",
            "  trueseam bring-in nest.svg --sizes",
            "  trueseam bring-in nest.svg --size 14 --out blouse-pattern.svg",
            "  trueseam bring-in nest.svg --size \"bust 14, waist 16, hip 18\" --out blouse-pattern.svg",
            "  trueseam bring-in blouse.svg --cutting-lines \"5/8 in\" --piece \"2=bodice back\" --out blouse-pattern.svg",
            "",
            "What was guessed comes on standard error. Correct it in the names file, bring the drawing in again, and cut a trial"
                    + " garment first."
        })
public final class BringInCommand implements Callable<Integer> {

    /** The usual seam allowance, 5/8 in (common practice). */
    private static final double USUAL_ALLOWANCE_MM = 15.875;

    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "FILE",
            description =
                    "The drawing: an SVG file from any vector editor, a PDF with lines in it, a DXF file, or a plot (HPGL,"
                            + " .plt).")
    private Path file;

    @Option(names = "--out", paramLabel = "PATTERN.svg", description = "The pattern file to write.")
    private Path out;

    @Option(names = "--name", paramLabel = "TEXT", description = "The pattern's name. Default: the file's.")
    private String name = "";

    @Mixin
    private NestOption nest;

    @Option(
            names = "--rules",
            paramLabel = "FILE",
            description = "The table of grade rules that came with a DXF file; with --size it gives that size.")
    private Path rules;

    @Option(names = "--table", paramLabel = "NAME", description = "The size table that the size belongs to.")
    private String table = "";

    @Option(names = "--layer", paramLabel = "TEXT", description = "Only lines of layers whose name has this in it.")
    private String layer;

    @Option(
            names = "--page",
            paramLabel = "N",
            description = "One page of a PDF alone. Default: all that belong to the pattern, put together.")
    private int page;

    @Option(
            names = "--tiles",
            paramLabel = "LAYOUT",
            description =
                    "How the pages of a PDF go together, where that is not found: \"4x3\" (4 across, 3 down), or the numbers of"
                            + " the pages row by row, such as \"2 3 4 / 5 6 -\".")
    private String tiles;

    @Option(
            names = "--test-square",
            paramLabel = "LENGTH",
            description =
                    "What the printed test square is to measure, such as \"5 cm\": the whole drawing is scaled by it, each"
                            + " direction by itself.")
    private String testSquare;

    @Option(
            names = "--overlap",
            paramLabel = "LENGTH",
            description = "How far neighbouring pages show the same, such as \"1 cm\".")
    private String overlap;

    @Option(
            names = "--unit",
            paramLabel = "LENGTH",
            description = "How long one unit of the drawing is, such as 1 mm, where the file does not say or is wrong.")
    private String unit;

    @Option(
            names = "--cutting-lines",
            paramLabel = "LENGTH",
            description = "The lines are cutting lines with this seam allowance; the stitching lines are put inside.")
    private String cuttingLines;

    @Option(
            names = "--allowance",
            paramLabel = "LENGTH",
            description = "The seam allowance that is to be cut outside stitching lines. Default: 5/8 in.")
    private String allowance;

    @Option(
            names = "--piece",
            paramLabel = "N=KIND",
            description =
                    "What the N-th piece is, the largest being the first, such as \"2=bodice back\". May be given several"
                            + " times.")
    private List<String> pieces = List.of();

    @Mixin
    private NamesOption names;

    @Mixin
    private UnitsOption units;

    /** For the command line. */
    public BringInCommand() {}

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        PrintWriter say = spec.commandLine().getOut();
        Drawing drawing = inSize(drawing());
        boolean chosen = rules != null || layer != null;
        if (nest.list(drawing, chosen, say, units.json())) {
            return 0;
        }
        if (out == null) {
            throw new InputException(
                    "--out is missing; say where the pattern is to be written, such as --out pattern.svg.");
        }
        BringChoices choices = new BringChoices(
                name,
                nest.size(),
                table,
                cuttingLines == null ? OptionalDouble.empty() : OptionalDouble.of(length(cuttingLines)),
                allowance == null ? USUAL_ALLOWANCE_MM : length(allowance),
                kinds(),
                Optional.ofNullable(layer));
        Brought brought = nest.bring(drawing, chosen, choices, names.read(file, err));
        OutputFiles files = new OutputFiles().add(out, PatternFile.write(brought.pattern()));
        String written = names.write(files, file, brought);
        files.write();
        if (units.json()) {
            say.println(Json.write(BroughtJson.of(out.toString(), brought)));
            return 0;
        }
        brought.findings().forEach(f -> err.println(f.place() + ": " + f.sentence()));
        brought.pattern()
                .pieces()
                .forEach(p -> say.println(p.name() + ": "
                        + String.join(
                                ", ", p.edges().stream().map(e -> e.name()).toList())));
        if (!written.isEmpty()) {
            say.println("Everything that was proposed is written to " + written + ", to be corrected.");
        }
        say.println("Written to " + out + ". Look at it in a browser, then try: trueseam walk --pattern " + out);
        return 0;
    }

    private Drawing inSize(Drawing drawing) {
        return rules == null
                ? drawing
                : Grading.inSize(
                        drawing, RuleTable.read(rules.getFileName().toString(), Texts.read(rules)), nest.size());
    }

    private Drawing drawing() {
        ReadChoices all = ReadChoices.NONE.withPage(page).withTiles(tiles());
        ReadChoices choices = testSquare == null ? all : all.withTestSquare(length(testSquare));
        return DrawingFiles.read(
                file.getFileName().toString(),
                Texts.bytes(file),
                unit == null ? choices : choices.withUnit(length(unit)));
    }

    private TileChoices tiles() {
        Optional<TileChoices.Layout> layout = Optional.ofNullable(tiles).map(text -> TileChoices.layout(text)
                .orElseThrow(() -> new InputException("--tiles \"" + text
                        + "\" cannot be read; write \"4x3\" (4 across, 3 down), or each page once, row by row, such as"
                        + " \"1 2 3 / 4 5 -\".")));
        return new TileChoices(
                layout,
                overlap == null
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(
                                Length.parse(overlap, units.bareUnit()).mm()));
    }

    private double length(String text) {
        double mm = Length.parse(text, units.bareUnit()).mm();
        if (!(mm > 0)) {
            throw new InputException("A length above zero is needed, and \"" + text + "\" is none.");
        }
        return mm;
    }

    private Map<Integer, PieceKind> kinds() {
        Map<Integer, PieceKind> kinds = new HashMap<>();
        for (String text : pieces) {
            String[] sides = text.split("=", 2);
            Optional<PieceKind> kind = sides.length == 2 ? PieceKind.ofWord(sides[1]) : Optional.empty();
            if (kind.isEmpty() || !sides[0].strip().matches("\\d{1,3}")) {
                throw new InputException(
                        "--piece \"" + text + "\" cannot be read; write the piece's number, = and its kind, such"
                                + " as \"2=bodice back\" (docs/pattern-file.md lists the kinds).");
            }
            kinds.put(Integer.parseInt(sides[0].strip()), kind.get());
        }
        return kinds;
    }
}
