package trueseam.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trueseam.app.input.BodyOption;
import trueseam.app.input.ChoiceOptions;
import trueseam.app.input.InputException;
import trueseam.app.input.Json;
import trueseam.app.input.LeastEaseOption;
import trueseam.app.input.OutputFiles;
import trueseam.app.input.TableOption;
import trueseam.app.input.TrouserHemOption;
import trueseam.app.input.UnitsOption;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.drafting.garment.SmallPieces;
import trueseam.garment.ease.EaseRow;
import trueseam.garment.ease.EaseShares;
import trueseam.garment.handbook.LeastEase;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.intake.patternfile.PatternFile;

/** Drafts a fitting shell in a size of a table, or straight from a body. */
@Command(
        name = "draft",
        description = "Draft a fitting shell in a size of a table, or straight from a body.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Examples:",
            "  trueseam draft bodice --table misses --size 14 --out bodice.svg",
            "  trueseam draft trousers --body anna.csv --out trousers.svg"
        })
public final class DraftCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "GARMENT",
            description =
                    "bodice (with its sleeve), skirt, trousers or dress; princess (a bodice in panels), gored (a skirt of"
                            + " six gores), two-piece-sleeve (with a bodice), yoke (a bodice with a yoke across its back), kimono (a bodice"
                            + " with the sleeve cut in one) or raglan (a bodice whose sleeve seams run to the neck).")
    private Garment garment;

    @Mixin
    private TableOption table;

    @Option(names = "--size", paramLabel = "SIZE", description = "The size of the table.")
    private String size;

    @Mixin
    private BodyOption body;

    @Option(
            names = "--with",
            paramLabel = "PIECES",
            split = ",",
            description =
                    "Small pieces and marks too: waistband, carriers, channel, pockets, placket, buttons, cuffs, neckband, collar,"
                            + " facings or lining; several parted by commas.")
    private List<SmallPieces> with = List.of();

    @Option(names = "--out", paramLabel = "FILE", required = true, description = "The pattern SVG to write.")
    private Path out;

    @Mixin
    private LeastEaseOption least;

    @Option(
            names = "--ease",
            paramLabel = "MEASURE=LENGTH",
            description = "Your own ease for a measure, such as \"bust girth=8 cm\". May be given several times.")
    private List<String> own = List.of();

    @Option(
            names = "--ease-shares",
            paramLabel = "BACK/ARMHOLE/FRONT",
            description =
                    "How the ease at the bust is divided, in hundredths: 20/80/0 puts a fifth into the width across the back,"
                            + " four fifths at the armholes, none into the width across the front (a drafting school's shares)."
                            + " Default: the usual ease across back and front, the rest at the armholes.")
    private String shares;

    @Option(
            names = "--cap-ease",
            paramLabel = "LENGTH",
            description =
                    "How much longer the sleeve cap is than the armhole; sources say 3/4, 1 or 1 1/2 in. Default: 1 in.")
    private String cap;

    @Mixin
    private TrouserHemOption hem;

    @Mixin
    private UnitsOption units;

    /** For the command line. */
    public DraftCommand() {}

    @Override
    public Integer call() {
        DraftFigure figure = figure();
        Allowances allowances = units.bareUnit() == LengthUnit.INCH ? Allowances.inches() : Allowances.metric();
        Pattern pattern = hem.hem().on(garment.draft(figure, ease(figure), allowances));
        for (SmallPieces small : with) {
            pattern = with(pattern, small);
        }
        new OutputFiles().add(out, PatternFile.write(pattern)).write();
        List<String> pieces = pattern.pieces().stream().map(Piece::name).toList();
        List<String> estimates = figure.estimates().stream()
                .map(f -> f.place() + ": " + f.sentence())
                .toList();
        PrintWriter say = spec.commandLine().getOut();
        if (units.json()) {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("file", out.toString());
            json.put("pieces", pieces);
            json.put("estimates", estimates);
            say.println(Json.write(json));
        } else {
            say.println("Drafted " + pattern.name() + ": " + String.join(", ", pieces) + ".");
            say.println("Written to " + out + "; look at it in any browser, or fit it with trueseam fit.");
            if (!estimates.isEmpty() && body.isGiven()) {
                say.println("Estimated, because it was not given (measure it if you can):");
                estimates.forEach(e -> say.println("  " + e));
            } else if (!estimates.isEmpty()) {
                say.println(
                        estimates.size() + " measures that the table does not have were estimated; --json lists them.");
            }
        }
        return 0;
    }

    private static Pattern with(Pattern shell, SmallPieces small) {
        try {
            return small.addedTo(shell);
        } catch (IllegalArgumentException e) {
            throw new InputException("--with " + small.name() + ": " + e.getMessage());
        }
    }

    /** The usual ease, but the chosen source's at bust, waist and hip, then her own, then divided as she says. */
    private DraftEase ease(DraftFigure figure) {
        DraftEase ease = DraftEase.fitted();
        for (LeastEase.Place place : LeastEase.Place.values()) {
            Optional<EaseRow> row = least.least().chosen(place, garment.kind());
            for (Measure measure : Measure.values()) {
                if (row.isPresent() && LeastEase.Place.of(measure).equals(Optional.of(place))) {
                    ease = ease.with(measure, row.get().usualMm());
                }
            }
        }
        for (Map.Entry<Measure, Double> one :
                ChoiceOptions.lengths("--ease", own, units.bareUnit()).entrySet()) {
            ease = ease.with(one.getKey(), one.getValue());
        }
        if (cap != null) {
            ease = ease.withCap(Length.parse(cap, units.bareUnit()).mm());
        }
        try {
            return shares == null ? ease : ease.divided(EaseShares.parse(shares), garment.kind(), figure);
        } catch (IllegalArgumentException e) {
            throw new InputException("--ease-shares: " + e.getMessage() + ".");
        }
    }

    private DraftFigure figure() {
        if (body.isGiven()) {
            if (size != null) {
                throw new InputException(
                        "Give either --body (a draft for one person) or --table and --size, not both.");
            }
            return DraftFigure.of(body.read(units.bareUnit()).body());
        }
        if (size == null) {
            throw new InputException("Say what to draft from: --table misses --size 14, or --body FILE.");
        }
        return DraftFigure.of(
                table.named().orElseThrow(() -> new InputException("No size table was named; give --table misses.")),
                size);
    }
}
